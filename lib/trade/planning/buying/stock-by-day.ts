import type { Day } from "#lib/kernel/days.ts";

/** `count` equal sheets or lengths and the parts cut from each. */
export type CutStock = { readonly stockId: string; readonly count: number; readonly partIds: readonly string[] };
/** Pieces of a part and the day by which they are wanted; null: no day is known. */
export type WantedPart = { readonly partId: string; readonly on: Day | null; readonly count: number };
export type StockDay = { readonly stockId: string; readonly on: Day | null; readonly count: number };

const byDay = (left: Day | null, right: Day | null): number => (left === right ? 0 : left === null ? 1 : right === null ? -1 : left < right ? -1 : 1);

/**
 * Splits one cutting plan over the days its parts are wanted: a sheet is needed by the first day on which a part of it is.
 * Day by day the sheet that gives most of what is still missing is cut next, and what it gives over serves the days after;
 * parts without a day come last. The counts sum to those of the plan.
 * Example: two sheets alike with 2 A and 2 B each; 2 A on the 3rd, 2 A and 4 B on the 8th: one sheet by the 3rd, one by the 8th.
 */
export function stockByDay(layouts: readonly CutStock[], wanted: readonly WantedPart[]): readonly StockDay[] {
  const left = layouts.map(({ count }) => count);
  const over = new Map<string, number>();
  const needed: StockDay[] = [];
  const take = (index: number, on: Day | null): void => {
    left[index] = (left[index] ?? 0) - 1;
    needed.push({ stockId: layouts[index]?.stockId ?? "", on, count: 1 });
  };
  const days = [...new Set(wanted.map(({ on }) => on))].sort(byDay);
  for (const on of days) {
    const missing = new Map<string, number>();
    for (const { partId, count } of wanted.filter((part) => part.on === on)) {
      const served = Math.min(count, over.get(partId) ?? 0);
      over.set(partId, (over.get(partId) ?? 0) - served);
      missing.set(partId, (missing.get(partId) ?? 0) + count - served);
    }
    for (let next = mostGiven(layouts, left, missing); next >= 0; next = mostGiven(layouts, left, missing)) {
      take(next, on);
      for (const partId of layouts[next]?.partIds ?? []) {
        const open = missing.get(partId) ?? 0;
        if (open > 0) missing.set(partId, open - 1);
        else over.set(partId, (over.get(partId) ?? 0) + 1);
      }
    }
  }
  // What is cut over and above what was asked lies with the last.
  left.forEach((count, index) => { for (let more = count; more > 0; more -= 1) take(index, days.at(-1) ?? null); });
  return summed(needed);
}

/** The layout that gives most of what is missing, the first of equals; -1 where none gives any. */
function mostGiven(layouts: readonly CutStock[], left: readonly number[], missing: ReadonlyMap<string, number>): number {
  let [best, most] = [-1, 0];
  layouts.forEach(({ partIds }, index) => {
    if ((left[index] ?? 0) === 0) return;
    const open = new Map(missing);
    let given = 0;
    for (const partId of partIds) {
      const count = open.get(partId) ?? 0;
      if (count === 0) continue;
      open.set(partId, count - 1);
      given += 1;
    }
    if (given > most) [best, most] = [index, given];
  });
  return best;
}

function summed(rows: readonly StockDay[]): StockDay[] {
  const sums = new Map<string, StockDay>();
  for (const row of rows) {
    const key = `${row.stockId} ${row.on ?? ""}`;
    sums.set(key, { ...row, count: (sums.get(key)?.count ?? 0) + row.count });
  }
  return [...sums.values()].sort((a, b) => byDay(a.on, b.on) || a.stockId.localeCompare(b.stockId));
}
