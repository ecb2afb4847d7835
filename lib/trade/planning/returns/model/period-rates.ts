import type { ChargeByEnd } from "../return-order.ts";

/**
 * A charge that runs by the date: `fixed[from]` (null: none can be had then), then `rate[t]` for each date from `from` up to the end, but at least up
 * to `leastEnd[from]`. `held`: it may not go back before then; else it may, at the same charge.
 */
export type PeriodRates = { readonly rate: readonly number[]; readonly fixed: readonly (number | null)[]; readonly leastEnd: readonly number[]; readonly held: boolean };

/**
 * Such a charge, if the table is one: it is then enough to count how many are on site. Rates per day are; ladders of day,
 * week and month are only on dates that fall in their step. In the first least hire the table says nothing of the rate; `others` may.
 */
export function asPeriodRates(table: readonly ChargeByEnd[], dates: number, others: readonly ChargeByEnd[] = []): PeriodRates | null {
  const at = (from: number, to: number): number | null => table[from]?.[to] ?? null;
  const rate = Array.from({ length: dates }, (_, t) => rateOf(table, t) || rateOf(others, t));
  const fixed: (number | null)[] = [];
  const leastEnd: number[] = [];
  const kinds = new Set<boolean>();
  for (let from = 0; from < dates; from += 1) {
    const last = at(from, dates);
    if (last === null) {
      if (table[from]?.some((cost) => cost !== null)) return null;
      fixed.push(null);
      leastEnd.push(Math.max(from + 1, leastEnd.at(-1) ?? 0));
      continue;
    }
    let least = dates;
    for (let sum = last; least > from + 1; least -= 1) {
      const before = at(from, least - 1);
      if (before === null || sum - before !== rate[least - 1]) break;
      sum = before;
    }
    const atLeast = at(from, least) ?? 0;
    const earlier = Array.from({ length: least - 1 - from }, (_, step) => at(from, from + 1 + step));
    if (earlier.length > 0) {
      const held = earlier.every((cost) => cost === null);
      if (!held && !earlier.every((cost) => cost === atLeast)) return null;
      kinds.add(held);
    }
    if (least < (leastEnd.at(-1) ?? 0)) return null;
    leastEnd.push(least);
    fixed.push(atLeast - rate.slice(from, least).reduce((sum, each) => sum + each, 0));
  }
  return kinds.size > 1 ? null : { rate, fixed, leastEnd, held: !kinds.has(false) };
}

/** The most that one date more costs; 0 where nothing tells. */
function rateOf(charges: readonly ChargeByEnd[], t: number): number {
  return charges.reduce((most, charge) => {
    const [before, after] = [charge[t] ?? null, charge[t + 1] ?? null];
    return before !== null && after !== null ? Math.max(most, after - before) : most;
  }, 0);
}
