import { isLevelName } from "../level-order.ts";
import { splitGridRef } from "../grid-names.ts";
import { readHeading } from "./headings.ts";
import { readSize } from "./read-size.ts";
import type { CellView } from "./sheet.ts";
import { isDitto, isNil, splitLevelHeight, splitLevelRun, splitList } from "./shorthand.ts";

export type Head = { readonly column: number; readonly mark: string | null; readonly grid: string | null };

/** Where things stand in a matrix: the row or rows naming columns, the column naming levels, and what lies between. */
export type MatrixFrame = {
  readonly headRow: number;
  readonly firstBodyRow: number;
  readonly levelColumn: number;
  readonly elevationColumn: number | null;
  readonly heightColumn: number | null;
  readonly itemColumn: number | null;
  readonly heads: readonly Head[];
  readonly score: number;
};

const ROWS_SEARCHED_FOR_HEADS = 40;
const BODY_ROWS_SAMPLED = 60;
const COLUMNS_SAMPLED = 40;

/** The frame under which most cells read as sizes; null when no frame has more sizes than other things. */
export function findMatrixFrame(view: CellView): MatrixFrame | null {
  let best: MatrixFrame | null = null;
  for (let row = 0; row < Math.min(view.rowCount - 1, ROWS_SEARCHED_FOR_HEADS); row += 1) {
    const frame = frameAt(view, row);
    if (frame && frame.score > (best?.score ?? 0)) best = frame;
  }
  return best;
}

export function isLevelLabel(text: string): boolean {
  const name = splitLevelHeight(text)?.level ?? text;
  return isLevelName(name) || splitLevelRun(name, isLevelName) !== null;
}

function frameAt(view: CellView, headRow: number): MatrixFrame | null {
  const columns = range(view.columnCount).filter((column) => namesColumns(view.at(headRow, column)));
  const first = columns[0];
  if (first === undefined || first === 0) return null;
  const labels = range(first);
  const bodyFrom = lastHeadRow(view, headRow, columns, labels) + 1;
  const sample = range(Math.min(view.rowCount, bodyFrom + BODY_ROWS_SAMPLED)).slice(bodyFrom);
  const titled = (field: string) =>
    labels.find((column) => [headRow - 1, headRow, bodyFrom - 1].some((row) => row >= 0 && readHeading(view.at(row, column))?.field === field)) ?? null;
  const levelColumn = titled("level") ?? titled("fromLevel") ?? levelColumnByLook(view, labels, sample);
  if (levelColumn === null) return null;
  const score = sizesMinusOthers(view, columns.slice(0, COLUMNS_SAMPLED), sample);
  if (score <= 0) return null;
  return {
    headRow, firstBodyRow: bodyFrom, levelColumn, score,
    elevationColumn: titled("fromElevation"),
    heightColumn: titled("height"),
    itemColumn: labels.find((column) => column !== levelColumn && holdsItems(view, column, sample)) ?? null,
    heads: headsOf(view, headRow, bodyFrom, columns, labels),
  };
}

const range = (length: number): number[] => Array.from({ length }, (_, index) => index);

const namesColumns = (text: string): boolean => {
  if (!/\d/.test(text)) return false;
  const names = splitList(text);
  return names.length > 0 && names.every((name) => isMarkLike(name) || splitGridRef(name) !== null);
};

const isMarkLike = (text: string): boolean => /^[A-Za-z]{1,4}[-. ]?\d{1,4}[A-Za-z]?$/.test(text);

/** A second row of names under the first (grid references under marks, or the other way about) belongs to the head. */
function lastHeadRow(view: CellView, headRow: number, columns: readonly number[], labels: readonly number[]): number {
  const next = headRow + 1;
  const titled = labels.some((column) => ["mark", "grid"].includes(readHeading(view.at(next, column))?.field ?? ""));
  const named = columns.filter((column) => namesColumns(view.at(next, column))).length;
  return next < view.rowCount && (titled || named > columns.length / 2) ? next : headRow;
}

function levelColumnByLook(view: CellView, labels: readonly number[], sample: readonly number[]): number | null {
  for (const column of labels) {
    const texts = sample.map((row) => view.at(row, column)).filter((text) => text !== "");
    const levels = texts.filter(isLevelLabel).length;
    if (levels >= 2 && levels >= texts.length / 2) return column;
  }
  return null;
}

function sizesMinusOthers(view: CellView, columns: readonly number[], sample: readonly number[]): number {
  let score = 0;
  for (const row of sample) {
    for (const column of columns) {
      const [line = ""] = view.at(row, column).split("\n");
      if (line === "" || isNil(line) || isDitto(line)) continue;
      const { kind } = readSize(line, "mm");
      if (kind === "section") score += 1;
      else if (kind === "none") score -= 1;
    }
  }
  return score;
}

function holdsItems(view: CellView, column: number, sample: readonly number[]): boolean {
  const texts = sample.map((row) => view.at(row, column)).filter((text) => text !== "");
  const items = texts.filter((text) => ["size", "mainBars", "links", "concrete"].includes(readHeading(text)?.field ?? ""));
  return items.length > 0 && items.length >= texts.length / 2;
}

function headsOf(view: CellView, headRow: number, bodyFrom: number, columns: readonly number[], labels: readonly number[]): Head[] {
  const rows = range(bodyFrom).slice(headRow);
  const grids = rows.find((row) => holdsGrids(view, row, columns, labels)) ?? null;
  const marks = rows.find((row) => row !== grids) ?? null;
  return columns.map((column) => ({
    column,
    mark: marks === null ? null : view.at(marks, column) || null,
    grid: grids === null ? null : view.at(grids, column) || null,
  }));
}

/** The row's own label decides; failing that a stroke between axes, or the same number under several letters (A1, B1), means grids. */
function holdsGrids(view: CellView, row: number, columns: readonly number[], labels: readonly number[]): boolean {
  const titles = labels.map((column) => readHeading(view.at(row, column))?.field);
  if (titles.includes("grid")) return true;
  if (titles.includes("mark")) return false;
  const names = columns.flatMap((column) => splitList(view.at(row, column)));
  if (names.length > 0 && names.every((name) => name.includes("/"))) return true;
  const letters = new Map<string, Set<string>>();
  for (const name of names) {
    const found = /^([A-Za-z])(\d+)$/.exec(name);
    if (!found?.[1] || !found[2]) return false;
    letters.set(found[2], (letters.get(found[2]) ?? new Set()).add(found[1].toUpperCase()));
  }
  return [...letters.values()].some((seen) => seen.size > 1);
}
