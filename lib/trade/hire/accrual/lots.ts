import { groupBy } from "#lib/kernel/group-by.ts";
import type { Delivered, HireFacts } from "../facts.ts";
import { numberOf, type DayNumber } from "../day-number.ts";
import { inForceOn, type TermsStretch } from "../terms/terms-in-force.ts";
import { endingsOf, type Ending } from "./endings.ts";

/** Pieces of one delivery that go through their hire together. */
export type Portion = { readonly quantity: number; readonly lastDay: DayNumber | null; readonly missingFrom: DayNumber | null; readonly endedBy: string | null };
export type Lot = { readonly delivery: Delivered; readonly firstDay: DayNumber; readonly portions: readonly Portion[] };

/** First day charged, by the terms in force on the day it came. */
function firstDayOf(delivery: Delivered, laid: readonly TermsStretch[]): DayNumber {
  const on = numberOf(delivery.on);
  const start = inForceOn(laid, on)?.terms.start;
  if (start === "day-after-delivery") return on + 1;
  return start === "day-dispatched" && delivery.dispatchedOn !== null ? numberOf(delivery.dispatchedOn) : on;
}

/** Every delivery with what became of it. What has been on hire longest goes back first. */
export function lotsOf(facts: HireFacts, laid: readonly TermsStretch[]): Lot[] {
  const parts = { calledOff: groupBy(facts.calledOff, itemOf), returned: groupBy(facts.returned, itemOf), missing: groupBy(facts.missing, itemOf) };
  return [...groupBy(facts.delivered, itemOf)].flatMap(([itemId, delivered]) => {
    const own = { calledOff: parts.calledOff.get(itemId) ?? [], returned: parts.returned.get(itemId) ?? [], missing: parts.missing.get(itemId) ?? [] };
    return consume(oldestFirst(delivered), endingsOf(own, itemId, laid), laid);
  });
}

const itemOf = ({ itemId }: { readonly itemId: string }): string => itemId;
const oldestFirst = (delivered: readonly Delivered[]): Delivered[] =>
  [...delivered].sort((a, b) => (a.on !== b.on ? (a.on < b.on ? -1 : 1) : a.docketId < b.docketId ? -1 : a.docketId > b.docketId ? 1 : 0));

function consume(delivered: readonly Delivered[], endings: readonly Ending[], laid: readonly TermsStretch[]): Lot[] {
  const lots = delivered.map((delivery) => ({ delivery, firstDay: firstDayOf(delivery, laid), left: delivery.quantity, portions: [] as Portion[] }));
  let oldest = 0;
  for (const ending of endings) {
    let rest = ending.quantity;
    for (let at = oldest; at < lots.length && rest > 0; at += 1) {
      const lot = lots[at];
      if (!lot || numberOf(lot.delivery.on) > ending.on) break;
      const taken = Math.min(lot.left, rest);
      if (taken > 0) lot.portions.push({ quantity: taken, lastDay: ending.lastDay, missingFrom: ending.missingFrom, endedBy: ending.docketId });
      lot.left -= taken;
      rest -= taken;
      if (lot.left === 0 && at === oldest) oldest += 1;
    }
  }
  return lots.map(({ delivery, firstDay, left, portions }) => ({
    delivery, firstDay,
    portions: left > 0 ? [...portions, { quantity: left, lastDay: null, missingFrom: null, endedBy: null }] : portions,
  }));
}
