import type { SheetColumn, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { gridOrder } from "../sheet/grid-order.ts";

export type CellAt = { readonly row: number; readonly place: number };
/** What stands in a cell; a column that comes from a lower level only passes through. */
export type MatrixCellState = { readonly id: string } | "passing" | null;

export type Matrix = {
  /** Grid positions in the order of the drawing. */
  readonly places: readonly string[];
  /** Highest first, as a building stands. */
  readonly levels: readonly SheetLevel[];
  readonly at: (cell: CellAt) => MatrixCellState;
};

const key = (levelId: string, gridRef: string): string => `${levelId}\n${gridRef}`;

/** Lays out the columns shown; `all` also tells what stands beside and what passes. Ticks change nothing of it. */
export function layMatrix(all: readonly SheetColumn[], shown: readonly SheetColumn[], levels: readonly SheetLevel[]): Matrix {
  const cells = new Map<string, { readonly id: string } | "passing">();
  const elevation = new Map(levels.map(({ id, elevationMm }) => [id, elevationMm]));
  for (const { id, gridRef, fromLevelId, toLevelId } of all) {
    cells.set(key(fromLevelId, gridRef), { id });
    const [from, to] = [elevation.get(fromLevelId) ?? 0, elevation.get(toLevelId) ?? 0];
    for (const level of levels) {
      const passed = key(level.id, gridRef);
      if (level.elevationMm > from && level.elevationMm < to && !cells.has(passed)) cells.set(passed, "passing");
    }
  }
  const used = new Set(shown.map((column) => column.fromLevelId));
  const places = [...new Set(shown.map((column) => column.gridRef))].sort(gridOrder);
  const rows = levels.filter(({ id }) => used.has(id)).sort((a, b) => b.elevationMm - a.elevationMm);
  return { places, levels: rows, at: ({ row, place }) => cells.get(key(rows[row]?.id ?? "", places[place] ?? "")) ?? null };
}

export const idAt = (matrix: Matrix, cell: CellAt): string | null => {
  const found = matrix.at(cell);
  return found === null || found === "passing" ? null : found.id;
};

/** Every column in the rectangle that has these two cells for corners. */
export function columnsBetween(matrix: Matrix, from: CellAt, to: CellAt): readonly string[] {
  const ids: string[] = [];
  for (let row = Math.min(from.row, to.row); row <= Math.max(from.row, to.row); row += 1) {
    for (let place = Math.min(from.place, to.place); place <= Math.max(from.place, to.place); place += 1) {
      const id = idAt(matrix, { row, place });
      if (id !== null) ids.push(id);
    }
  }
  return ids;
}

export function cellOf(matrix: Matrix, column: Pick<SheetColumn, "fromLevelId" | "gridRef">): CellAt | null {
  const row = matrix.levels.findIndex(({ id }) => id === column.fromLevelId);
  const place = matrix.places.indexOf(column.gridRef);
  return row < 0 || place < 0 ? null : { row, place };
}
