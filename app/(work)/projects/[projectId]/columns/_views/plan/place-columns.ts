import type { SheetColumn, SheetGridLine } from "#lib/contracts/columns-sheet.ts";
import type { GridAxis, PlanColumn } from "#app/_ui/drawing/level-plan/plan-model.ts";

export const axesOf = (gridLines: readonly SheetGridLine[]): GridAxis[] =>
  gridLines.map(({ axis, name, offsetMm }) => ({ name, direction: axis === "along-y" ? "y" : "x", offset_mm: offsetMm }));

/** The drawing of a column is kept while the column stays as it is, so that the plan redraws only what changed. */
const kept = new WeakMap<SheetColumn, PlanColumn>();

function onPlan(column: SheetColumn, x_mm: number, y_mm: number, isFaint: boolean): PlanColumn {
  const before = kept.get(column);
  if (before && before.x_mm === x_mm && before.y_mm === y_mm && before.isFaint === isFaint) return before;
  const { id, gridRef, shape, width_mm, depth_mm, done, flagged } = column;
  const drawn: PlanColumn = { id, name: gridRef, x_mm, y_mm, shape, width_mm, depth_mm, done, flagged, isFaint };
  kept.set(column, drawn);
  return drawn;
}

/** Columns that stand on two grid lines, for the plan, and those that do not and can only be listed. */
export function placeColumns(columns: readonly SheetColumn[], gridLines: readonly SheetGridLine[], isShown: (column: SheetColumn) => boolean) {
  const offset = new Map(gridLines.map(({ id, offsetMm }) => [id, offsetMm]));
  const placed: PlanColumn[] = [];
  const unplaced: SheetColumn[] = [];
  for (const column of columns) {
    const x = offset.get(column.gridXId ?? "");
    const y = offset.get(column.gridYId ?? "");
    if (x === undefined || y === undefined) unplaced.push(column);
    else placed.push(onPlan(column, x, y, !isShown(column)));
  }
  return { placed, unplaced };
}
