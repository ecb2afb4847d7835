import { useMemo, type KeyboardEvent } from "react";
import { PlanMark } from "./plan-mark.tsx";
import type { PlanColumn } from "./plan-model.ts";
import type { Point } from "./plan-view.ts";

export type PlacedColumn = { readonly column: PlanColumn; readonly at: Point };

export type PlanMarksProps = {
  /** Before a column's id it makes the id of its element. */
  readonly base: string;
  readonly label: string;
  readonly placed: readonly PlacedColumn[];
  readonly scale: number;
  readonly selected: ReadonlySet<string>;
  /** The one column in the tab order. */
  readonly current: string | null;
  readonly onKeyDown: (event: KeyboardEvent) => void;
};

/** In pixels: smaller than this a sign is hard to read; only a crowded plan goes below it. */
const LEAST_SIGN = 13;
const LEAST_IN_A_CROWD = 6;
const ROOM_FOR_NAME = 44;

export function PlanMarks({ base, label, placed, scale, selected, current, onKeyDown }: PlanMarksProps) {
  const closest = useMemo(() => closestPair(placed.map(({ column }) => column)), [placed]);
  const apart = closest * scale;
  return (
    <g role="listbox" aria-multiselectable aria-label={label} onKeyDown={onKeyDown}>
      {placed.map(({ column, at }) => (
        <g key={column.id} role="presentation" transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`}>
          <PlanMark
            id={`${base}${column.id}`}
            column={column}
            scale={scale}
            least={Math.min(Math.max(apart * 0.5, LEAST_IN_A_CROWD), LEAST_SIGN)}
            isNamed={apart > ROOM_FOR_NAME}
            isSelected={selected.has(column.id)}
            isInTabOrder={column.id === current}
          />
        </g>
      ))}
    </g>
  );
}

/** Smallest distance between two columns that follow each other along a row, as a measure of how crowded the plan is. */
function closestPair(columns: readonly PlanColumn[]): number {
  const row = [...columns].sort((a, b) => a.y_mm - b.y_mm || a.x_mm - b.x_mm);
  return row.slice(1).reduce((least, column, index) => {
    const before = row[index];
    return before ? Math.min(least, Math.max(Math.hypot(column.x_mm - before.x_mm, column.y_mm - before.y_mm), 1)) : least;
  }, Infinity);
}
