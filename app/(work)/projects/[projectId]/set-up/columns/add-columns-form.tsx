"use client";

import { Link } from "#app/_ui/control/link.tsx";
import { useState } from "react";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { choiceOf, numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { sectionText, type Units } from "#app/_ui/value/format-quantity.ts";
import { paths } from "#app/paths.ts";
import { HEADS } from "../_parts/heads.ts";
import { toShape, type Mark } from "../marks/mark-row.ts";
import { addColumnsAction } from "./actions.ts";
import { CrossingPicker } from "./crossing-picker.tsx";
import { allPlaces, takenFrom, type NamedLine, type TakenPlace } from "./crossings.ts";

export type AddColumnsFormProps = {
  readonly projectId: string; readonly units: Units; readonly marks: readonly Mark[]; readonly gridLines: readonly NamedLine[];
  /** Lowest first. */
  readonly levels: readonly { readonly id: string; readonly name: string }[];
  readonly taken: readonly TakenPlace[];
};

const columnCount = (count: number): string => (count === 1 ? "1 column" : `${count} columns`);

/** The level above the one named, since a lift usually ends at the next floor. */
const nextLevelId = (levels: AddColumnsFormProps["levels"], levelId: string): string =>
  levels[levels.findIndex((level) => level.id === levelId) + 1]?.id ?? "";

export function AddColumnsForm({ projectId, units, marks, levels, gridLines, taken }: AddColumnsFormProps) {
  const [fromId, setFromId] = useState(levels[0]?.id ?? "");
  const [toId, setToId] = useState(levels[1]?.id ?? "");
  const [picked, setPicked] = useState<ReadonlySet<string>>(new Set());
  const [typed, setTyped] = useState("");
  const places = allPlaces(picked, typed);
  const answered = useAnswer(async (data) => {
    const added = await addColumnsAction({
      projectId, markId: textOf(data, "markId"), gridRefs: places, fromLevelId: fromId, toLevelId: toId,
      headedBy: choiceOf(data, "headedBy", ["slab", "beam"]), formHeightMm: numberOrNull(data, "formHeightMm"),
    });
    if (!added.ok) return added;
    setPicked(new Set());
    setTyped("");
    return added;
  });
  const goFrom = (levelId: string) => {
    setFromId(levelId);
    setToId(nextLevelId(levels, levelId));
    setPicked(new Set());
  };
  const above = levels.slice(levels.findIndex((level) => level.id === fromId) + 1);
  const done = <>{columnCount(answered.value?.columnIds.length ?? 0)} added. <Link href={paths.columns(projectId)}>See the columns</Link></>;
  return (
    <SaveForm answered={answered} label={places.length === 0 ? "Add columns" : `Add ${columnCount(places.length)}`} done={done}>
      <div className="grid gap-5 sm:grid-cols-3">
        <SelectField name="markId" label="Mark" choices={marks.map((mark) => ({ value: mark.id, label: mark.name, note: sectionText(toShape(mark.shape), mark.widthMm, mark.depthMm, units) }))} isRequired />
        <SelectField name="fromLevelId" label="From level" choices={levels.slice(0, -1).map(({ id, name }) => ({ value: id, label: name }))} value={fromId} onChange={goFrom} isRequired />
        <SelectField name="toLevelId" label="To level" choices={above.map(({ id, name }) => ({ value: id, label: name }))} value={toId} onChange={setToId} isRequired />
      </div>
      <div className="grid gap-5 lg:grid-cols-2">
        <ChoiceGroup name="headedBy" label="Headed by" choices={HEADS} defaultValue="slab" />
        <LengthField name="formHeightMm" label="Form height" units={units} hint="Empty: storey height less what is over it and the kicker" />
      </div>
      <PositionFields projectId={projectId} gridLines={gridLines} taken={takenFrom(taken, fromId)} picked={picked} onPick={setPicked} typed={typed} onType={setTyped} />
    </SaveForm>
  );
}

type PositionFieldsProps = {
  readonly projectId: string; readonly gridLines: readonly NamedLine[]; readonly taken: ReadonlySet<string>;
  readonly picked: ReadonlySet<string>; readonly onPick: (picked: ReadonlySet<string>) => void;
  readonly typed: string; readonly onType: (typed: string) => void;
};

function PositionFields({ projectId, gridLines, taken, picked, onPick, typed, onType }: PositionFieldsProps) {
  const hasGrid = gridLines.length > 0;
  return (
    <fieldset className="flex min-w-0 flex-col gap-3" data-field="gridRefs">
      <legend className="mb-1 font-semibold">Positions</legend>
      {hasGrid
        ? <CrossingPicker gridLines={gridLines} taken={taken} picked={picked} onChange={onPick} />
        : <p className="text-ink-soft">The project has no grid yet, so positions are typed. <Link href={paths.setUpPart(projectId, "grid")}>Enter the grid</Link></p>}
      <TextField name="typed" label={hasGrid ? "More positions, typed" : "Positions, typed"} hint="With commas between, as A/1, B.5/3, Stair 2" value={typed} onChange={onType} rows={2} />
    </fieldset>
  );
}
