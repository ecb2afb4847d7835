"use client";

import { useState } from "react";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { choiceOf, isTicked, numberOf, numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { HEADS } from "../_parts/heads.ts";
import { changeMarkOnLevelAction } from "../columns/actions.ts";
import { SHAPES, toShape, type Mark, type Shape } from "./mark-row.ts";

export type ChangeSizeFormProps = {
  readonly projectId: string; readonly units: Units; readonly marks: readonly Mark[];
  /** Lowest first. */
  readonly levels: readonly { readonly id: string; readonly name: string }[];
};

const read = (data: FormData, shape: Shape) => {
  const widthMm = numberOf(data, "widthMm");
  return {
    markId: textOf(data, "markId"), fromLevelId: textOf(data, "fromLevelId"), andAbove: isTicked(data, "andAbove"),
    shape, widthMm, depthMm: shape === "circle" ? widthMm : numberOf(data, "depthMm"),
    headedBy: choiceOf(data, "headedBy", ["slab", "beam"]), formHeightMm: numberOrNull(data, "formHeightMm"),
  };
};

/** Columns get smaller as a building goes up: size and head of one mark from a level on. */
export function ChangeSizeForm({ projectId, units, marks, levels }: ChangeSizeFormProps) {
  const [shape, setShape] = useState<Shape>("rectangle");
  const answered = useAnswer((data) => changeMarkOnLevelAction({ projectId, ...read(data, shape) }));
  const done = answered.value ? <ChangedText {...answered.value} /> : null;
  return (
    <SaveForm answered={answered} label="Change the columns" done={done}>
      <div className="grid gap-5 sm:grid-cols-2 lg:grid-cols-3">
        <SelectField name="markId" label="Mark" choices={marks.map(({ id, name }) => ({ value: id, label: name }))} isRequired />
        <SelectField name="fromLevelId" label="Columns standing on" choices={levels.slice(0, -1).map(({ id, name }) => ({ value: id, label: name }))} isRequired />
        <div className="flex items-end"><CheckField name="andAbove" label="and on every level above" defaultSelected /></div>
      </div>
      <ChoiceGroup name="shape" label="Section" choices={SHAPES} value={shape} onChange={(value) => setShape(toShape(value))} />
      <div className="grid gap-5 sm:grid-cols-3">
        <LengthField name="widthMm" label={shape === "circle" ? "Diameter" : "Width"} units={units} places={1} isRequired />
        {shape === "circle" ? null : <LengthField name="depthMm" label="Depth" units={units} places={1} isRequired />}
        <LengthField name="formHeightMm" label="Form height" units={units} hint="Empty: storey height less what is over it and the kicker" />
      </div>
      <ChoiceGroup name="headedBy" label="Headed by" choices={HEADS} defaultValue="slab" />
    </SaveForm>
  );
}

function ChangedText({ changed, left }: { readonly changed: number; readonly left: readonly string[] }) {
  return (
    <>
      {changed === 1 ? "1 column changed." : `${changed} columns changed.`}
      {left.length === 0 ? null : ` Left as they are, because they stand already: ${left.length <= 12 ? left.join(", ") : `${left.slice(0, 12).join(", ")} and ${left.length - 12} more`}.`}
    </>
  );
}
