import type { SheetColumn } from "#lib/contracts/columns-sheet.ts";

/** The ids from one place to another in a list, both ends in, whichever comes first. */
export function rangeOf(ids: readonly string[], from: string, to: string): readonly string[] {
  const [a, b] = [ids.indexOf(from), ids.indexOf(to)];
  if (a < 0 || b < 0) return b < 0 ? [] : [to];
  return ids.slice(Math.min(a, b), Math.max(a, b) + 1);
}

/** Adds what is not selected yet; takes all away when all of it is. */
export function toggleAll(selected: ReadonlySet<string>, ids: readonly string[]): ReadonlySet<string> {
  const after = new Set(selected);
  const isAll = ids.every((id) => selected.has(id));
  for (const id of ids) if (isAll) after.delete(id); else after.add(id);
  return after;
}

/**
 * The selection before this one. A crew does on the next level what it did on the last, so with a level in sight on
 * which none of them stands, the columns at the same grid positions are meant.
 */
export function sameAsLast(columns: readonly SheetColumn[], last: ReadonlySet<string>, levelId: string | null): ReadonlySet<string> {
  const before = columns.filter(({ id }) => last.has(id));
  const isHere = levelId === null || before.some(({ fromLevelId }) => fromLevelId === levelId);
  if (isHere) return new Set(before.map(({ id }) => id));
  const places = new Set(before.map(({ gridRef }) => gridRef));
  return new Set(columns.filter(({ fromLevelId, gridRef }) => fromLevelId === levelId && places.has(gridRef)).map(({ id }) => id));
}
