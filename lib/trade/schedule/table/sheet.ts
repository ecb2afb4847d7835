/** What a spreadsheet holds once it is open: values only, no formulas, no formats. */
export type Cell = string | number | null;
export type Sheet = { readonly name: string; readonly rows: readonly (readonly Cell[])[] };

/** Where a value stood in the file. `row` counts from 1 as spreadsheets do; `cell` is such as `B7`. */
export type Source = { readonly sheet: string; readonly row: number; readonly cell: string };

/** A sheet seen as texts by row and column, both from 0, and able to be turned on its side without losing where a cell stood. */
export type CellView = {
  readonly rowCount: number;
  readonly columnCount: number;
  readonly at: (row: number, column: number) => string;
  readonly source: (row: number, column: number) => Source;
};

const MAX_CELL_TEXT = 1000;
/** Most cells need no cleaning, and a large sheet has hundreds of thousands. */
const CLEAN = /^(?:[\x21-\x7e]| (?! ))*$/;

export function cellName(row: number, column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return `${letters}${row + 1}`;
}

/** Line breaks stay, since schedules stack size and bars in one cell; other control and direction-changing characters go. */
export function cellText(cell: Cell | undefined): string {
  if (cell === null || cell === undefined) return "";
  if (typeof cell === "number") return Number.isFinite(cell) ? String(Number(cell.toPrecision(12))) : "";
  const text = cell.slice(0, MAX_CELL_TEXT);
  if (CLEAN.test(text)) return text.trim();
  return text
    .replace(/\r\n?/g, "\n")
    .replace(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u00a0\u2007\u202f]/g, " ")
    .replace(/[\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g, "")
    .replace(/ {2,}/g, " ")
    .trim();
}

export function viewOf(sheet: Sheet): CellView {
  return {
    rowCount: sheet.rows.length,
    columnCount: sheet.rows.reduce((most, row) => Math.max(most, row.length), 0),
    at: (row, column) => cellText(sheet.rows[row]?.[column]),
    source: (row, column) => ({ sheet: sheet.name, row: row + 1, cell: cellName(row, column) }),
  };
}

export const turned = (view: CellView): CellView => ({
  rowCount: view.columnCount,
  columnCount: view.rowCount,
  at: (row, column) => view.at(column, row),
  source: (row, column) => view.source(column, row),
});
