"use client";

import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { Section } from "#app/_ui/page/section.tsx";
import { OutdatedNotice } from "#app/_ui/table/outdated-notice.tsx";
import { useEntries } from "#app/_ui/table/use-entries.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { saveGridLinesAction } from "../_parts/actions.ts";
import { GridAxisTable } from "./grid-axis-table.tsx";
import { inMode, toGridLines, toGridRows, type Axis, type GridLine, type GridMode, type GridRow } from "./grid-row.ts";

export type GridFormProps = {
  readonly projectId: string; readonly units: Units; readonly gridLines: readonly GridLine[]; readonly stamp: string; readonly canEdit: boolean;
};
type Entered = { readonly mode: GridMode; readonly rows: Readonly<Record<Axis, readonly GridRow[]>> };

const AXES = [
  { axis: "along-x", title: "Lines side by side, from the left of the plan", example: "A-D at 6.0 m" },
  { axis: "along-y", title: "Lines one above the other, from the foot of the plan", example: "1-6 at 7.5 m" },
] as const;
const MODES = [
  { value: "spacing", label: "Spacings", note: "from the line before" },
  { value: "offset", label: "Offsets", note: "from the origin" },
] as const;

export function GridForm({ projectId, units, gridLines, stamp, canEdit }: GridFormProps) {
  const { value: { mode, rows }, seen, set, show, saving, isOutdated, startAgain } = useEntries(stamp, (): Entered => ({
    mode: "spacing", rows: { "along-x": toGridRows(gridLines, "along-x", units), "along-y": toGridRows(gridLines, "along-y", units) },
  }));
  const answered = useAnswer(() => saving(saveGridLinesAction({ projectId, seen, gridLines: AXES.flatMap(({ axis }) => toGridLines(rows[axis], axis, mode, units)) })));

  const setMode = (next: GridMode) => show((now) => ({
    mode: next,
    rows: { "along-x": inMode(now.rows["along-x"], now.mode, next, units), "along-y": inMode(now.rows["along-y"], now.mode, next, units) },
  }));
  return (
    <SaveForm answered={answered} label="Save the grid" done="Grid saved." canEdit={canEdit} className="flex flex-col gap-6">
      <OutdatedNotice isOutdated={isOutdated} startAgain={startAgain} />
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
              onChange={(next) => set((now) => ({ ...now, rows: { ...now.rows, [axis]: next } }))}
            />
          </Section>
        ))}
      </div>
    </SaveForm>
  );
}
