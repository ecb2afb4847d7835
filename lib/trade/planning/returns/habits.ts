import { priceStays } from "./price-stays.ts";
import { onHand, type PricedStays, type ReturnItem, type ReturnOrder, type Stay } from "./return-order.ts";

type Held = { readonly lot: string | null; readonly from: number; readonly mayEnd: (date: number) => boolean; count: number };

/** Order when needed, and return what is idle as soon as the hirer's terms let it go. */
export const justInTime = (order: ReturnOrder): PricedStays | null => followAll(order, (item) => (t) => item.demand[t] ?? 0);

/** Order when needed, and return nothing of an item before its last use. */
export const keepToLast = (order: ReturnOrder): PricedStays | null => followAll(order, (item) => {
  const last = item.demand.findLastIndex((count) => count > 0);
  let most = onHand(item);
  return (t) => {
    most = Math.max(most, item.demand[t] ?? 0);
    return t <= last ? most : 0;
  };
});

function followAll(order: ReturnOrder, wanted: (item: ReturnItem) => (date: number) => number): PricedStays | null {
  const stays = order.items.map((item, index) => follow(item, index, order.dates, wanted(item)));
  return stays.includes(null) ? null : priceStays(order, stays.flatMap((each) => each ?? []));
}

/** Holds at least `wanted` at each date, the oldest going back first; null where some may not go back by the end. */
function follow(item: ReturnItem, index: number, dates: number, wanted: (date: number) => number): Stay[] | null {
  const held: Held[] = item.lots.map((lot) => ({ lot: lot.id, from: 0, mayEnd: (date) => (lot.charge[date] ?? null) !== null, count: lot.count }));
  const stays: Stay[] = [];
  for (let t = 0; t <= dates; t += 1) {
    const have = held.reduce((sum, { count }) => sum + count, 0);
    const want = t < dates ? wanted(t) : 0;
    let spare = have - want;
    for (const lot of held) {
      if (spare <= 0 || lot.count === 0 || !lot.mayEnd(t)) continue;
      const count = Math.min(spare, lot.count);
      stays.push({ item: index, lot: lot.lot, from: lot.from, to: t, count });
      lot.count -= count;
      spare -= count;
    }
    if (spare < 0) held.push({ lot: null, from: t, mayEnd: (date) => (item.hireCharge?.[t]?.[date] ?? null) !== null, count: -spare });
  }
  return held.some(({ count }) => count > 0) ? null : stays;
}
