import type { ColumnsSheet, SheetColumn } from "#lib/contracts/columns-sheet.ts";
import { signWords } from "#app/_ui/drawing/sign/sign-words.ts";
import { sectionText, type Units } from "#app/_ui/value/format-quantity.ts";

export type Names = { readonly level: (id: string) => string; readonly mark: (id: string) => string; readonly units: Units };

export function namesOf({ levels, marks, units }: Pick<ColumnsSheet, "levels" | "marks" | "units">): Names {
  const [level, mark] = [new Map(levels.map(({ id, name }) => [id, name])), new Map(marks.map(({ id, name }) => [id, name]))];
  return { level: (id) => level.get(id) ?? "", mark: (id) => mark.get(id) ?? "", units };
}

/** "C3, 300 × 600". */
export const sizeWords = ({ markId, shape, width_mm, depth_mm }: SheetColumn, names: Names): string =>
  `${names.mark(markId)}, ${sectionText(shape, width_mm, depth_mm, names.units)}`;

/** "B4, Level 2, C3, 300 × 600, clamped, queried or held". */
export const columnWords = (column: SheetColumn, names: Names): string =>
  `${column.gridRef}, ${names.level(column.fromLevelId)}, ${sizeWords(column, names)}, ${signWords(column.done, column.flagged)}`;
