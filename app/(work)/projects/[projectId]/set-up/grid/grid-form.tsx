"use client";

import { useState } from "react";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { Section } from "#app/_ui/page/section.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { saveGridLinesAction } from "../_parts/actions.ts";
import { GridAxisTable } from "./grid-axis-table.tsx";
import { inMode, toGridLines, toGridRows, type Axis, type GridLine, type GridMode, type GridRow } from "./grid-row.ts";

export type GridFormProps = {
  readonly projectId: string; readonly units: Units; readonly gridLines: readonly GridLine[]; readonly canEdit: boolean;
};
type Rows = Readonly<Record<Axis, readonly GridRow[]>>;

const AXES = [
  { axis: "along-x", title: "Lines side by side, from the left of the plan", example: "A-D at 6.0 m" },
  { axis: "along-y", title: "Lines one above the other, from the foot of the plan", example: "1-6 at 7.5 m" },
] as const;
const MODES = [
  { value: "spacing", label: "Spacings", note: "from the line before" },
  { value: "offset", label: "Offsets", note: "from the origin" },
] as const;

export function GridForm({ projectId, units, gridLines, canEdit }: GridFormProps) {
  const version = JSON.stringify(gridLines);
  const fresh = (): Rows => ({ "along-x": toGridRows(gridLines, "along-x", units), "along-y": toGridRows(gridLines, "along-y", units) });
  const [state, setState] = useState(() => ({ version, mode: "spacing" as GridMode, rows: fresh() }));
  if (state.version !== version) setState({ version, mode: "spacing", rows: fresh() });
  const { mode, rows } = state;
  const answered = useAnswer(() =>
    saveGridLinesAction({ projectId, gridLines: AXES.flatMap(({ axis }) => toGridLines(rows[axis], axis, mode, units)) }));

  const setMode = (next: GridMode) => setState((now) => ({
    ...now, mode: next,
    rows: { "along-x": inMode(now.rows["along-x"], now.mode, next, units), "along-y": inMode(now.rows["along-y"], now.mode, next, units) },
  }));
  return (
    <SaveForm answered={answered} label="Save the grid" done="Grid saved." canEdit={canEdit} className="flex flex-col gap-6">
      {canEdit ? (
        <div className="max-w-md">
          <ChoiceGroup name="mode" label="Type in" choices={MODES} value={mode} onChange={(value) => setMode(value === "offset" ? "offset" : "spacing")} />
        </div>
      ) : null}
      <div className="grid gap-8 lg:grid-cols-2">
        {AXES.map(({ axis, title, example }) => (
          <Section key={axis} title={title}>
            <GridAxisTable
              axis={axis} title={title} example={example} units={units} mode={mode} rows={rows[axis]} canEdit={canEdit} failure={answered.failure}
              firstIndex={axis === "along-x" ? 0 : rows["along-x"].length}
              onChange={(next) => setState((now) => ({ ...now, rows: { ...now.rows, [axis]: next } }))}
            />
          </Section>
        ))}
      </div>
    </SaveForm>
  );
}
