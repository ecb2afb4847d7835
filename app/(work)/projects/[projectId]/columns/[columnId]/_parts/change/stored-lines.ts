import { lengthFigure, sectionText } from "#app/_ui/value/format-quantity.ts";
import type { StoredColumn } from "./stored-column.ts";

const heightText = ({ formHeightMm, units }: StoredColumn): string =>
  formHeightMm === null ? "from the levels" : lengthFigure(formHeightMm, units);

/** What somebody else changed since `seen`, as "Section: 400 square is now 450 square". */
export function storedLines(seen: StoredColumn, stored: StoredColumn): readonly string[] {
  const section = (column: StoredColumn): string => sectionText(column.shape, column.widthMm, column.depthMm, column.units);
  const parts: readonly (readonly [string, string, string])[] = [
    ["Section", section(seen), section(stored)],
    ["Headed by", seen.headedBy, stored.headedBy],
    ["Form height", heightText(seen), heightText(stored)],
    ["Concrete", seen.concrete ?? "none", stored.concrete ?? "none"],
    ["Remarks", seen.remarks ?? "none", stored.remarks ?? "none"],
  ];
  return parts.filter(([, was, now]) => was !== now).map(([name, was, now]) => `${name}: ${was} is now ${now}`);
}
