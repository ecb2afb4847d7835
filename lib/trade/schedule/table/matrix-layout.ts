import { isLevelName } from "../level-order.ts";
import { type Field, readHeading } from "./headings.ts";
import { findMatrixFrame, type Head, isLevelLabel, type MatrixFrame } from "./matrix-frame.ts";
import type { LengthUnit } from "./read-length.ts";
import { type Findings, quoted, type RawCell, type RawLift, type RecognisedHeading, type Table } from "./raw-lift.ts";
import { readSize } from "./read-size.ts";
import type { CellView } from "./sheet.ts";
import { isDitto, isNil, looksLikeFormula, splitLevelHeight, splitLevelRun, steelField } from "./shorthand.ts";

/** All rows of one level, since bars and ties may follow the size on rows of their own. */
type LevelBand = { readonly level: RawCell; readonly rows: readonly number[]; readonly elevation: RawCell | null; readonly height: RawCell | null };

/** Marks or grid references across, levels down. Null when the sheet has no such frame. */
export function readMatrixLayout(view: CellView, findings: Findings): Table | null {
  const frame = findMatrixFrame(view);
  if (!frame) return null;
  const bands = bandsOf(view, frame);
  const lifts = frame.heads.flatMap((head) => liftsUnder(view, frame, head, bands, findings));
  return {
    layout: "matrix",
    rowsRead: bands.length,
    headings: headingsOf(view, frame),
    units: unitsOf(view, frame),
    lifts,
    levelRun: bands.flatMap(({ level }) => (isSingle(level) ? [level] : [])),
    levelElevations: bands.flatMap(({ level, elevation }) => (elevation && isSingle(level) ? [{ level, elevation }] : [])),
  };
}

function bandsOf(view: CellView, frame: MatrixFrame): LevelBand[] {
  const cell = (row: number, column: number | null): RawCell | null => {
    const text = column === null ? "" : view.at(row, column);
    return column === null || text === "" ? null : { text, source: view.source(row, column) };
  };
  const bands: { level: RawCell; rows: number[]; elevation: RawCell | null; height: RawCell | null }[] = [];
  for (let row = frame.firstBodyRow; row < view.rowCount; row += 1) {
    const written = cell(row, frame.levelColumn);
    const current = bands.at(-1);
    if (written && !(isDitto(written.text) && current)) {
      const named = levelAndElevation(written, cell(row, frame.elevationColumn));
      const filled = frame.heads.some((head) => view.at(row, head.column) !== "");
      if (filled || named.elevation || isLevelLabel(named.level.text)) bands.push({ ...named, rows: [row], height: cell(row, frame.heightColumn) });
    } else if (current) current.rows.push(row);
  }
  return bands;
}

function levelAndElevation(written: RawCell, elevation: RawCell | null): { level: RawCell; elevation: RawCell | null } {
  const found = elevation ? null : splitLevelHeight(written.text);
  return found ? { level: { ...written, text: found.level }, elevation: { ...written, text: found.elevation } } : { level: written, elevation };
}

const isSingle = (level: RawCell): boolean => splitLevelRun(level.text, isLevelName) === null;

function liftsUnder(view: CellView, frame: MatrixFrame, head: Head, bands: readonly LevelBand[], findings: Findings): RawLift[] {
  const headSource = view.source(frame.headRow, head.column);
  const named = (text: string | null): RawCell | null => (text === null ? null : { text, source: headSource });
  const texts = bands.map((band) => bodyCells(view, frame, head.column, band));
  const filled = texts.map((cells) => cells.size !== undefined);
  const [first, last] = [filled.indexOf(true), filled.lastIndexOf(true)];
  const lifts: RawLift[] = [];
  let above: Partial<Record<Field, RawCell>> | null = null;
  bands.forEach((band, index) => {
    if (index < first || index > last || first < 0) return;
    const cells = texts[index] ?? {};
    const written = cells.size;
    if (written && refused(written, above, findings)) return;
    if (written && isNil(written.text)) {
      above = null;
      return;
    }
    const repeats = !written || isDitto(written.text);
    if (repeats && !above) return;
    if (!written) warnOfBlank(view.source(band.rows[0] ?? 0, head.column), head, band, findings);
    const source = view.source(band.rows[0] ?? 0, head.column);
    const body: Partial<Record<Field, RawCell>> = repeats ? { ...above, ...without(cells, "size") } : cells;
    above = body;
    lifts.push({ source: written?.source ?? source, cells: { ...body, ...liftIdentity(named(head.mark), named(head.grid), band) } });
  });
  return lifts;
}

function liftIdentity(mark: RawCell | null, grid: RawCell | null, band: LevelBand): Partial<Record<Field, RawCell>> {
  return { ...(mark && { mark }), ...(grid && { grid }), level: band.level, ...(band.height && { height: band.height }) };
}

const without = (cells: Partial<Record<Field, RawCell>>, field: Field): Partial<Record<Field, RawCell>> =>
  Object.fromEntries(Object.entries(cells).filter(([name]) => name !== field));

/** What a column holds at a level: the row's item says which is which; without items the first line that is no steel is the size. */
function bodyCells(view: CellView, frame: MatrixFrame, column: number, band: LevelBand): Partial<Record<Field, RawCell>> {
  const cells: Partial<Record<Field, RawCell>> = {};
  for (const row of band.rows) {
    const item = frame.itemColumn === null ? null : (readHeading(view.at(row, frame.itemColumn))?.field ?? null);
    for (const line of view.at(row, column).split("\n")) {
      const text = line.trim();
      if (text === "") continue;
      const steel = readSize(text, "mm").kind === "bars";
      const field = item ?? (steel ? steelField(text) : "size");
      if (!cells[field]) cells[field] = { text, source: view.source(row, column) };
    }
  }
  return cells;
}

function refused(cell: RawCell, above: object | null, findings: Findings): boolean {
  const say = (message: string, remedy: string) => findings.problems.push({ source: cell.source, message, remedy }) > 0;
  if (looksLikeFormula(cell.text)) {
    return say(`Cell ${cell.source.cell} begins like a formula: ${quoted(cell.text)}.`, "Write the value itself, without =, +, - or @ in front.");
  }
  if (isDitto(cell.text) && !above) return say(`Cell ${cell.source.cell} is a ditto mark with nothing above it.`, "Write the size out.");
  return false;
}

function warnOfBlank(source: RawCell["source"], head: Head, band: LevelBand, findings: Findings): void {
  findings.warnings.push({
    source,
    message: `Cell ${source.cell} is blank between two filled ones: ${head.mark ?? head.grid ?? "column"} at ${band.level.text} read as the cell above.`,
    remedy: "Write - in the cell if no column stands there.",
  });
}

function unitsOf(view: CellView, frame: MatrixFrame): Partial<Record<Field, LengthUnit>> {
  const units: Partial<Record<Field, LengthUnit>> = {};
  for (let row = 0; row < frame.firstBodyRow; row += 1) {
    for (let column = 0; column < view.columnCount; column += 1) {
      const read = readHeading(view.at(row, column));
      if (read?.unit && !units[read.field]) units[read.field] = read.unit;
      const sizes = /\b(?:sizes?|dimensions?)\b.*\b(mm|cm|inches|metres|millimetres)\b/i.exec(view.at(row, column));
      if (sizes?.[1] && !units.size) units.size = /^mm|^mil/i.test(sizes[1]) ? "mm" : /^cm/i.test(sizes[1]) ? "cm" : /^in/i.test(sizes[1]) ? "in" : "m";
    }
  }
  return units;
}

function headingsOf(view: CellView, frame: MatrixFrame): RecognisedHeading[] {
  const at = (column: number | null, field: Field): RecognisedHeading[] => {
    if (column === null) return [];
    const { sheet, cell } = view.source(frame.headRow, column);
    const heading = view.at(frame.headRow, column);
    return [{ sheet, cell, heading, field, unit: readHeading(heading)?.unit ?? null }];
  };
  return [
    ...at(frame.levelColumn, "level"), ...at(frame.elevationColumn, "fromElevation"), ...at(frame.heightColumn, "height"),
    ...frame.heads.flatMap((head) => at(head.column, head.mark === null ? "grid" : "mark")),
  ];
}
