/** So many pieces of an item for every column of a level (null: of any), with its larger side and its form height over and up to the limits, in mm (null: none). */
export type ColumnGearRow = {
  readonly itemId: string;
  readonly count: number;
  readonly levelId: string | null;
  readonly sideOverMm: number | null;
  readonly sideUpToMm: number | null;
  readonly heightOverMm: number | null;
  readonly heightUpToMm: number | null;
};

/** `heightMm`: null where the form height is not known. */
export type SizedColumn = { readonly levelId: string; readonly sideMm: number; readonly heightMm: number | null };

/** What a column holds by these rows, each item once; null where that hangs on a height nobody knows. */
export function gearByRows(column: SizedColumn, rows: readonly ColumnGearRow[]): { readonly itemId: string; readonly count: number }[] | null {
  const sized = rows.filter((row) => (row.levelId ?? column.levelId) === column.levelId && isWithin(column.sideMm, row.sideOverMm, row.sideUpToMm));
  const { heightMm } = column;
  if (heightMm === null && sized.some(({ heightOverMm, heightUpToMm }) => heightOverMm !== null || heightUpToMm !== null)) return null;
  return sized.filter((row) => heightMm === null || isWithin(heightMm, row.heightOverMm, row.heightUpToMm)).map(({ itemId, count }) => ({ itemId, count }));
}

/** The first two rows, by their place, that would both count the same item for one column. */
export function clashOfRows(rows: readonly ColumnGearRow[]): readonly [number, number] | null {
  for (const [index, row] of rows.entries()) {
    const earlier = rows.slice(0, index).findIndex((other) => other.itemId === row.itemId && (other.levelId === null || row.levelId === null || other.levelId === row.levelId)
      && meets([other.sideOverMm, other.sideUpToMm], [row.sideOverMm, row.sideUpToMm]) && meets([other.heightOverMm, other.heightUpToMm], [row.heightOverMm, row.heightUpToMm]));
    if (earlier >= 0) return [earlier, index];
  }
  return null;
}

type Limits = readonly [over: number | null, upTo: number | null];
const isWithin = (value: number, over: number | null, upTo: number | null): boolean => (over === null || value > over) && (upTo === null || value <= upTo);
const meets = (one: Limits, other: Limits): boolean => Math.max(one[0] ?? 0, other[0] ?? 0) < Math.min(one[1] ?? Infinity, other[1] ?? Infinity);
