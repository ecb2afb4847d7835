import { readListLayout } from "./list-layout.ts";
import { readMatrixLayout } from "./matrix-layout.ts";
import type { Findings, Table } from "./raw-lift.ts";
import { type CellView, type Sheet, turned, viewOf } from "./sheet.ts";

/** Tried in this order; a new layout is one more line here and one reader that ends in raw lifts. */
const RECOGNISERS: readonly ((view: CellView, findings: Findings) => Table | null)[] = [
  readListLayout,
  readMatrixLayout,
  (view, findings) => {
    const table = readMatrixLayout(turned(view), findings);
    return table && { ...table, layout: "turned matrix" };
  },
];

/** The first layout that finds lifts in a sheet, or failing that one that at least finds its headings. */
export function recogniseLayout(sheet: Sheet, findings: Findings): Table | null {
  const view = viewOf(sheet);
  let empty: { table: Table; found: Findings } | null = null;
  for (const recognise of RECOGNISERS) {
    const found: Findings = { problems: [], warnings: [] };
    const table = recognise(view, found);
    if (table && (table.lifts.length > 0 || found.problems.length > 0)) return adopt(table, found, findings);
    if (table && !empty) empty = { table, found };
  }
  return empty ? adopt(empty.table, empty.found, findings) : null;
}

function adopt(table: Table, found: Findings, findings: Findings): Table {
  for (const problem of found.problems) findings.problems.push(problem);
  for (const warning of found.warnings) findings.warnings.push(warning);
  return table;
}
