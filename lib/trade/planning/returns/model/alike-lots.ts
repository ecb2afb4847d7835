import type { PeriodRates } from "./period-rates.ts";
import { type ChargeByEnd, earliestEnd, type HiredLot } from "../return-order.ts";

/** A lot charged like what is hired from now on: `fixed` a unit, then the rates, but at least up to date `leastEnd`. */
export type AlikeLot = { readonly id: string; readonly count: number; readonly fixed: number; readonly leastEnd: number };

/**
 * The lots as the head of the queue of what comes later, the first to go back first; null where one of them is charged
 * otherwise, so that it matters which units go. Counted with the rest, a lot needs no columns of its own.
 */
export function alikeLots(lots: readonly HiredLot[], table: readonly ChargeByEnd[], { rate, fixed, leastEnd, held }: PeriodRates): readonly AlikeLot[] | null {
  const nextEnd = Math.min(...table.map((charge) => charge.findIndex((cost) => cost !== null)).filter((end) => end >= 0));
  const nextLeastEnd = leastEnd[fixed.findIndex((each) => each !== null)] ?? Infinity;
  const alike = lots.map(({ id, count, charge }): AlikeLot | null => {
    const first = earliestEnd({ id, count, charge });
    let least = charge.length - 1;
    while (least > first && follows(charge[least - 1], charge[least], rate[least - 1])) least -= 1;
    const atLeast = charge[least] ?? null;
    const mayGoEarlier = charge.slice(first, least);
    if (atLeast === null || first > nextEnd || least > nextLeastEnd || (held && mayGoEarlier.length > 0) || mayGoEarlier.some((cost) => cost !== atLeast)) return null;
    return { id, count, leastEnd: least, fixed: atLeast - rate.slice(0, least).reduce((sum, each) => sum + each, 0) };
  });
  return alike.some((lot) => lot === null) ? null : alike.flatMap((lot) => lot ?? []).sort((a, b) => a.leastEnd - b.leastEnd || (a.id < b.id ? -1 : 1));
}

const follows = (before: number | null | undefined, after: number | null | undefined, rate: number | undefined): boolean =>
  typeof before === "number" && typeof after === "number" && after - before === rate;
