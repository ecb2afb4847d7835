import { type Field, readHeading } from "./headings.ts";
import type { LengthUnit } from "./read-length.ts";
import { type Findings, quoted, type RawCell, type RawLift, type RecognisedHeading, type Table } from "./raw-lift.ts";
import { readSize } from "./read-size.ts";
import type { CellView } from "./sheet.ts";
import { isDitto, looksLikeFormula, steelField } from "./shorthand.ts";

type Column = { readonly index: number; readonly field: Field; readonly unit: LengthUnit | null; readonly heading: string };
type Row = Partial<Record<Field, RawCell>>;

const ROWS_SEARCHED_FOR_HEADINGS = 60;
const SIZE_FIELDS: readonly Field[] = ["size", "width", "depth", "diameter"];
const LEVEL_FIELDS: readonly Field[] = ["level", "fromLevel", "toLevel"];
const LIFT_FIELDS: readonly Field[] = [...SIZE_FIELDS, ...LEVEL_FIELDS, "fromElevation", "toElevation", "height"];

/** One row per mark and lift under one row of headings. Null when no such row is found. */
export function readListLayout(view: CellView, findings: Findings): Table | null {
  const headingRow = findHeadingRow(view);
  if (headingRow === null) return null;
  const columns = columnsOf(view, headingRow);
  const lifts: RawLift[] = [];
  const filled = new Map<Field, { first: RawCell["source"]; rows: number }>();
  let above: Row = {};
  let rowsRead = 0;
  for (let row = headingRow + 1; row < view.rowCount; row += 1) {
    const written = writtenIn(view, row, columns);
    if (Object.keys(written).length === 0 || repeatsHeadings(written, columns)) continue;
    rowsRead += 1;
    if (!written.grid && !LIFT_FIELDS.some((field) => written[field])) {
      findings.warnings.push({
        source: view.source(row, 0),
        message: `Row ${row + 1} has no size and no level, so it is left out.`,
        remedy: "Nothing to do if it is a note or a sub-heading.",
      });
      continue;
    }
    if (refuseFormulas(written, findings)) continue;
    const whole = fillFromAbove(written, above, findings, (field) => {
      const seen = filled.get(field);
      filled.set(field, { first: seen?.first ?? view.source(row, columnOf(columns, field)), rows: (seen?.rows ?? 0) + 1 });
    });
    if (!whole) continue;
    above = whole;
    lifts.push({ source: anchorOf(written, view.source(row, 0)), cells: whole });
  }
  warnOfFilled(filled, findings);
  const units = Object.fromEntries(columns.flatMap((column) => (column.unit ? [[column.field, column.unit]] : [])));
  return { layout: "list", rowsRead, headings: headingsOf(view, headingRow, columns), units, lifts, levelRun: [], levelElevations: [] };
}

function findHeadingRow(view: CellView): number | null {
  let best: { row: number; score: number } | null = null;
  for (let row = 0; row < Math.min(view.rowCount, ROWS_SEARCHED_FOR_HEADINGS); row += 1) {
    const fields = new Set(columnsOf(view, row).map((column) => column.field));
    const named = fields.has("mark") || fields.has("grid");
    const sized = SIZE_FIELDS.some((field) => fields.has(field));
    if (fields.size >= 3 && named && sized && fields.size > (best?.score ?? 0)) best = { row, score: fields.size };
  }
  return best?.row ?? null;
}

/** The first column of each kind counts, save that one called a mark outdoes a type or name. A lone `h` is a height, beside `b` a depth. */
function columnsOf(view: CellView, row: number): Column[] {
  const columns: Column[] = [];
  for (let index = 0; index < view.columnCount; index += 1) {
    const heading = view.at(row, index);
    const read = readHeading(heading);
    if (!read) continue;
    const earlier = columns.findIndex((column) => column.field === read.field);
    const outdone = read.field === "mark" && /mark/i.test(heading) && !/mark/i.test(columns[earlier]?.heading ?? "mark");
    if (earlier >= 0 && outdone) columns.splice(earlier, 1);
    if (earlier < 0 || outdone) columns.push({ index, ...read, heading });
  }
  const broad = columns.some((column) => column.field === "width");
  return columns.map((column) => (!broad && /^h\b/i.test(column.heading) && column.field === "depth" ? { ...column, field: "height" } : column));
}

const columnOf = (columns: readonly Column[], field: Field): number =>
  columns.find((column) => column.field === field)?.index ?? 0;

function headingsOf(view: CellView, row: number, columns: readonly Column[]): RecognisedHeading[] {
  return Array.from({ length: view.columnCount }, (_, index) => index).flatMap((index) => {
    const heading = view.at(row, index);
    if (heading === "") return [];
    const column = columns.find((known) => known.index === index);
    const { sheet, cell } = view.source(row, index);
    return [{ sheet, cell, heading, field: column?.field ?? null, unit: column?.unit ?? null }];
  });
}

function writtenIn(view: CellView, row: number, columns: readonly Column[]): Row {
  const written: Row = {};
  for (const { index, field } of columns) {
    const text = view.at(row, index);
    if (text !== "") written[field] = { text, source: view.source(row, index) };
  }
  return written.size?.text.includes("\n") ? unstacked(written, written.size) : written;
}

/** Bars on further lines of the size cell. */
function unstacked(written: Row, size: RawCell): Row {
  const lines = size.text.split("\n").map((line) => line.trim()).filter((line) => line !== "");
  const steel = lines.filter((line) => readSize(line, "mm").kind === "bars");
  const [bars] = steel.filter((line) => steelField(line) === "mainBars");
  const rest = lines.filter((line) => !steel.includes(line)).join(" ");
  return { ...(bars && { mainBars: { text: bars, source: size.source } }), ...written, size: { text: rest || size.text, source: size.source } };
}

const repeatsHeadings = (written: Row, columns: readonly Column[]): boolean =>
  columns.filter(({ field, heading }) => written[field]?.text === heading).length >= 3;

function refuseFormulas(written: Row, findings: Findings): boolean {
  const used = (Object.entries(written) as [Field, RawCell][]).filter(([field]) => field !== "links" && field !== "count");
  const bad = used.map(([, cell]) => cell).filter((cell) => looksLikeFormula(cell.text));
  for (const { source, text } of bad) {
    findings.problems.push({
      source,
      message: `Cell ${source.cell} begins like a formula: ${quoted(text)}.`,
      remedy: "Write the value itself, without =, +, - or @ in front.",
    });
  }
  return bad.length > 0;
}

/** Ditto repeats the cell above. A blank repeats it too where schedules mean that: mark and level always, the rest only under the same mark. */
function fillFromAbove(written: Row, above: Row, findings: Findings, onBlank: (field: Field) => void): Row | null {
  const whole: Row = {};
  for (const [field, cell] of Object.entries(written) as [Field, RawCell][]) {
    const repeated = isDitto(cell.text) ? above[field] : cell;
    if (!repeated) {
      findings.problems.push({
        source: cell.source,
        message: `Cell ${cell.source.cell} is a ditto mark with nothing above it.`,
        remedy: "Write the value out.",
      });
      return null;
    }
    whole[field] = { text: repeated.text, source: cell.source };
  }
  const take = (field: Field) => {
    const value = above[field];
    if (whole[field] || !value) return;
    whole[field] = value;
    onBlank(field);
  };
  const sameMark = !whole.mark || whole.mark.text === above.mark?.text;
  take("mark");
  if (!LEVEL_FIELDS.some((field) => whole[field])) LEVEL_FIELDS.forEach(take);
  if (!sameMark) return whole;
  take("grid");
  take("concrete");
  if (!SIZE_FIELDS.some((field) => whole[field])) {
    SIZE_FIELDS.forEach(take);
    take("shape");
  }
  return whole;
}

/** The cell to point at when the lift as a whole is meant. */
const anchorOf = (written: Row, fallback: RawLift["source"]): RawLift["source"] =>
  (written.size ?? written.width ?? written.diameter ?? written.mark ?? written.grid)?.source ?? fallback;

function warnOfFilled(filled: ReadonlyMap<Field, { first: RawCell["source"]; rows: number }>, findings: Findings): void {
  for (const [field, { first, rows }] of filled) {
    findings.warnings.push({
      source: first,
      message: `Blank ${FIELD_NAMES[field]} read as the cell above (${rows} ${rows === 1 ? "row" : "rows"}, the first is row ${first.row}).`,
      remedy: "Check these lifts in the preview; write the value out where this is wrong.",
    });
  }
}

const FIELD_NAMES: Readonly<Partial<Record<Field, string>>> = {
  mark: "mark", grid: "grid reference", shape: "shape", size: "size", width: "width", depth: "depth", diameter: "diameter",
  level: "level", fromLevel: "from level", toLevel: "to level", concrete: "concrete",
};
