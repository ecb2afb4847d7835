import { naturalOrder } from "#lib/kernel/natural-order.ts";
import type { KnownLevel, Lift, ScheduleReading, UnitSystem } from "./lift.ts";
import { resolveLevels } from "./resolve-levels.ts";
import { resolveLift, withoutTwins } from "./resolve-lifts.ts";
import type { Finding, Findings, RawLift, Table } from "./table/raw-lift.ts";
import { recogniseLayout } from "./table/recognise-layout.ts";
import type { Sheet, Source } from "./table/sheet.ts";

const MAX_LIFTS = 20_000;
/** Beyond this many, more lines help nobody; the counts stay exact. */
const MAX_FINDINGS_LISTED = 500;

/**
 * A column schedule out of the sheets of a file, whatever its layout: cells → layout → raw lifts → lifts.
 * Levels the project has already are used for their order and height where the file gives none.
 */
export function readSchedule(sheets: readonly Sheet[], units: UnitSystem, known: readonly KnownLevel[] = []): ScheduleReading {
  const findings: Findings = { problems: [], warnings: [] };
  const tables = withinLimit(tablesOf(sheets, findings), findings);
  const levels = resolveLevels(tables, units, known, findings);
  const spread = liftsOf(tables, findings, (table, raw) => resolveLift(raw, table, levels, units, findings));
  const lifts = withoutTwins(spread, findings);
  warnOfStandIns(lifts, findings);
  return {
    layout: tables[0]?.layout ?? null,
    levels: levels.names.map((name) => ({ name, elevation_mm: levels.elevationOf(name) })),
    grids: distinct(lifts.filter((lift) => lift.locatedBy === "grid").map((lift) => lift.gridRef)),
    marks: distinct(lifts.map((lift) => lift.mark)),
    lifts,
    problems: listed(findings.problems),
    warnings: listed(findings.warnings),
    counts: {
      rowsRead: tables.reduce((sum, table) => sum + table.rowsRead, 0),
      lifts: lifts.length,
      errors: findings.problems.length,
      warnings: findings.warnings.length,
    },
    columnsRecognised: tables.flatMap((table) => table.headings),
  };
}

function tablesOf(sheets: readonly Sheet[], findings: Findings): Table[] {
  const filled = sheets.filter((sheet) => sheet.rows.some((row) => row.some((cell) => cell !== null && cell !== "")));
  const tables = filled.flatMap((sheet) => {
    const table = recogniseLayout(sheet, findings);
    if (!table && filled.length > 1) {
      findings.warnings.push({ source: { sheet: sheet.name, row: 1, cell: "A1" }, message: `No column schedule was recognised on the sheet ${sheet.name}; it is left out.`, remedy: "Nothing to do if it holds something else." });
    }
    return table ? [table] : [];
  });
  if (tables.length === 0) {
    findings.problems.push({
      source: null,
      message: filled.length === 0 ? "The file is empty." : "No column schedule was recognised in the file.",
      remedy: "Use one row per column and lift with headings such as Mark, Grid, Size, From level, To level; or marks across the top, levels down and sizes between. The template shows the first.",
    });
  }
  return tables;
}

function withinLimit(tables: readonly Table[], findings: Findings): readonly Table[] {
  const count = tables.reduce((sum, table) => sum + table.lifts.length, 0);
  if (count <= MAX_LIFTS) return tables;
  findings.problems.push(overLimit(null));
  return tables.map((table) => ({ ...table, lifts: [] }));
}

const overLimit = (source: Source | null): Finding => ({
  source,
  message: `The file holds more than ${MAX_LIFTS} lifts; no more are read at once.`,
  remedy: "Split the file, for example by block or by level.",
});

/** Counted while rows are spread over their places and levels, since few rows can hide many lifts. */
function liftsOf(tables: readonly Table[], findings: Findings, resolve: (table: Table, raw: RawLift) => Lift[]): Lift[] {
  const lifts: Lift[] = [];
  for (const table of tables) {
    for (const raw of table.lifts) {
      for (const lift of resolve(table, raw)) lifts.push(lift);
      if (lifts.length <= MAX_LIFTS) continue;
      findings.problems.push(overLimit(raw.source));
      return [];
    }
  }
  return lifts;
}

function warnOfStandIns(lifts: readonly Lift[], findings: Findings): void {
  const first = lifts.find((lift) => lift.locatedBy === "mark");
  if (!first) return;
  findings.warnings.push({
    source: first.source,
    message: "Some lifts have no grid reference; their mark is taken as the place of one single column.",
    remedy: "Add a grid column if a mark stands in several places.",
  });
}

const distinct = (names: readonly string[]): string[] => [...new Set(names)].sort(naturalOrder);

function listed(findings: readonly Finding[]): readonly Finding[] {
  if (findings.length <= MAX_FINDINGS_LISTED) return findings;
  const rest = findings.length - MAX_FINDINGS_LISTED;
  return [...findings.slice(0, MAX_FINDINGS_LISTED), { source: null, message: `${rest} more are not listed.`, remedy: "Deal with these first and read the file again." }];
}
