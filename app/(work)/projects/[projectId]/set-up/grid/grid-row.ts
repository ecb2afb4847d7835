import type { Units } from "#app/_ui/value/format-quantity.ts";
import { heightText, readHeightMm, readShown, type ShownLength } from "#app/_ui/value/typed-length.ts";
import type { GridRun } from "./grid-entry.ts";

export type Axis = "along-x" | "along-y";
/** How the place of a line is typed: from the line before it, or from the origin. */
export type GridMode = "spacing" | "offset";
export type GridLine = { readonly id: string; readonly axis: string; readonly name: string; readonly offsetMm: number };
export type GridRow = {
  readonly key: string; readonly id: string | undefined; readonly name: string; readonly place: string;
  /** The place before anyone typed, which its text may round. */
  readonly shown?: ShownLength;
};

const at = (row: GridRow | undefined, units: Units): number | undefined => (row ? readShown(row.place, row.shown, (typed) => readHeightMm(typed, units)) : undefined);

function placed(placeMm: number, units: Units): Pick<GridRow, "place" | "shown"> {
  const text = heightText(placeMm, units);
  return { place: text, shown: { text, mm: placeMm } };
}

/** Distance of each line from the origin; undefined from the first unreadable spacing on. */
export function offsetsMm(rows: readonly GridRow[], mode: GridMode, units: Units): (number | undefined)[] {
  if (mode === "offset") return rows.map((row) => at(row, units));
  let sum: number | undefined = 0;
  return rows.map((row) => {
    const spacing = at(row, units);
    sum = sum === undefined || spacing === undefined ? undefined : sum + spacing;
    return sum;
  });
}

/** The same lines with the text of their places in the given mode; an unreadable one keeps what was typed. */
export function inMode(rows: readonly GridRow[], from: GridMode, to: GridMode, units: Units): GridRow[] {
  const offsets = offsetsMm(rows, from, units);
  return rows.map((row, index) => {
    const [here, before] = [offsets[index], index === 0 ? 0 : offsets[index - 1]];
    if (here === undefined || before === undefined) return row;
    return { ...row, ...placed(to === "offset" ? here : here - before, units) };
  });
}

export function toGridRows(lines: readonly GridLine[], axis: Axis, units: Units): GridRow[] {
  const rows = lines.filter((line) => line.axis === axis).sort((a, b) => a.offsetMm - b.offsetMm)
    .map((line) => ({ key: line.id, id: line.id, name: line.name, ...placed(line.offsetMm, units) }));
  return inMode(rows, "offset", "spacing", units);
}

/** Rows for a run typed at once, after those already there; the very first line stands at the origin. */
export function runRows(run: GridRun, rows: readonly GridRow[], mode: GridMode, units: Units, keyFor: (index: number) => string): GridRow[] {
  let offset = rows.length === 0 ? undefined : offsetsMm(rows, mode, units).at(-1) ?? 0;
  return run.map(({ name, spacingMm }, index) => {
    const spacing = offset === undefined ? 0 : spacingMm;
    offset = (offset ?? 0) + spacing;
    return { key: keyFor(index), id: undefined, name, ...placed(mode === "offset" ? offset : spacing, units) };
  });
}

export const toGridLines = (rows: readonly GridRow[], axis: Axis, mode: GridMode, units: Units) => {
  const offsets = offsetsMm(rows, mode, units);
  return rows.map((row, index) => ({
    ...(row.id === undefined ? {} : { id: row.id }), axis, name: row.name, offsetMm: offsets[index] ?? Number.NaN,
  }));
};
