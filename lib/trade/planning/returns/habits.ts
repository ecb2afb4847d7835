import { priceStays } from "./price-stays.ts";
import { needsOf, onHand, type PricedStays, type ReturnItem, type ReturnOrder, type SharedNeed, type Stay } from "./return-order.ts";

type Held = { readonly item: number; readonly lot: string | null; readonly from: number; readonly mayEnd: (date: number) => boolean; count: number };
type Source = { readonly index: number; readonly item: ReturnItem };

/** Order when needed, and return what is idle as soon as the hirer's terms let it go. */
export const justInTime = (order: ReturnOrder): PricedStays | null => followAll(order, ({ demand }) => (t) => demand[t] ?? 0);

/** Order when needed, and return nothing of an item before its last use. */
export const keepToLast = (order: ReturnOrder): PricedStays | null => followAll(order, ({ items, demand }) => {
  const last = demand.findLastIndex((count) => count > 0);
  let most = items.reduce((sum, index) => sum + (order.items[index] ? onHand(order.items[index]) : 0), 0);
  return (t) => {
    most = Math.max(most, demand[t] ?? 0);
    return t <= last ? most : 0;
  };
});

function followAll(order: ReturnOrder, wanted: (need: SharedNeed) => (date: number) => number): PricedStays | null {
  const stays = needsOf(order).map((need) => follow(order, need.items.flatMap((index): Source[] => (order.items[index] ? [{ index, item: order.items[index] }] : [])), wanted(need)));
  return stays.includes(null) ? null : priceStays(order, stays.flatMap((each) => each ?? []));
}

/** Holds at least `wanted` at each date, the oldest going back first; null where some may not go back by the end. */
function follow({ dates }: ReturnOrder, sources: readonly Source[], wanted: (date: number) => number): Stay[] | null {
  const held: Held[] = sources.flatMap(({ index, item }) => item.lots.map((lot) => ({ item: index, lot: lot.id, from: 0, mayEnd: (date) => (lot.charge[date] ?? null) !== null, count: lot.count })));
  const stays: Stay[] = [];
  for (let t = 0; t <= dates; t += 1) {
    const have = held.reduce((sum, { count }) => sum + count, 0);
    const want = t < dates ? wanted(t) : 0;
    let spare = have - want;
    for (const lot of held) {
      if (spare <= 0 || lot.count === 0 || !lot.mayEnd(t)) continue;
      const count = Math.min(spare, lot.count);
      stays.push({ item: lot.item, lot: lot.lot, from: lot.from, to: t, count });
      lot.count -= count;
      spare -= count;
    }
    if (spare >= 0) continue;
    const from = cheapest(sources, t);
    held.push({ item: from.index, lot: null, from: t, mayEnd: (date) => (from.item.hireCharge?.[t]?.[date] ?? null) !== null, count: -spare });
  }
  return held.some(({ count }) => count > 0) ? null : stays;
}

/** Whose gear costs least when it is hired on date t and kept to the end. */
function cheapest(sources: readonly Source[], t: number): Source {
  const toTheEnd = ({ item }: Source): number => item.hireCharge?.[t]?.findLast((cost) => cost !== null) ?? Infinity;
  return sources.reduce((best, source) => (toTheEnd(source) < toTheEnd(best) ? source : best));
}
