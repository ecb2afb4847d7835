import type { SheetColumn, SheetGridLine, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import type { GridAxis, PlanColumn } from "#app/_ui/drawing/level-plan/plan-model.ts";

export const axesOf = (gridLines: readonly SheetGridLine[]): GridAxis[] =>
  gridLines.map(({ axis, name, offsetMm }) => ({ name, direction: axis === "along-y" ? "y" : "x", offset_mm: offsetMm }));

/** Columns that stand on two grid lines, for the plan, and those that do not and can only be listed. */
export function placeColumns(columns: readonly SheetColumn[], gridLines: readonly SheetGridLine[], isShown: (column: SheetColumn) => boolean) {
  const offset = new Map(gridLines.map(({ id, offsetMm }) => [id, offsetMm]));
  const placed: PlanColumn[] = [];
  const unplaced: SheetColumn[] = [];
  for (const column of columns) {
    const x = offset.get(column.gridXId ?? "");
    const y = offset.get(column.gridYId ?? "");
    if (x === undefined || y === undefined) unplaced.push(column);
    else {
      const { id, gridRef, shape, width_mm, depth_mm, done, flagged } = column;
      placed.push({ id, name: gridRef, x_mm: x, y_mm: y, shape, width_mm, depth_mm, done, flagged, isFaint: !isShown(column) });
    }
  }
  return { placed, unplaced };
}

export type Matrix = {
  /** Grid positions in natural order. */
  readonly places: readonly string[];
  /** Highest first, as a building stands. */
  readonly levels: readonly SheetLevel[];
  readonly at: (levelId: string, place: string) => SheetColumn | undefined;
};

export function matrixOf(columns: readonly SheetColumn[], levels: readonly SheetLevel[]): Matrix {
  const cells = new Map(columns.map((column) => [`${column.fromLevelId}\n${column.gridRef}`, column]));
  const used = new Set(columns.map((column) => column.fromLevelId));
  return {
    places: [...new Set(columns.map((column) => column.gridRef))].sort(naturalOrder),
    levels: levels.filter(({ id }) => used.has(id)).sort((a, b) => b.elevationMm - a.elevationMm),
    at: (levelId, place) => cells.get(`${levelId}\n${place}`),
  };
}

/** The ids from one place to another in a list, both ends in, whichever comes first. */
export function rangeOf(ids: readonly string[], from: string, to: string): readonly string[] {
  const [a, b] = [ids.indexOf(from), ids.indexOf(to)];
  if (a < 0 || b < 0) return b < 0 ? [] : [to];
  return ids.slice(Math.min(a, b), Math.max(a, b) + 1);
}

/** Adds what is not selected yet; takes all away when all of it is. */
export function toggleAll(selected: ReadonlySet<string>, ids: readonly string[]): ReadonlySet<string> {
  const after = new Set(selected);
  const isAll = ids.every((id) => selected.has(id));
  for (const id of ids) if (isAll) after.delete(id); else after.add(id);
  return after;
}
