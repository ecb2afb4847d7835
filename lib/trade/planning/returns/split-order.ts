import type { PricedStays, ReturnOrder, SharedNeed, Stay } from "./return-order.ts";

/** An order that stands for itself, with the numbers its trucks and items have in the whole. */
export type OrderPart = { readonly order: ReturnOrder; readonly trucks: readonly number[]; readonly items: readonly number[] };

/** Suppliers whose gear meets no need together have nothing to do with each other: each of the parts can be planned by itself. */
export function splitOrder(order: ReturnOrder): OrderPart[] {
  const groupOf = order.trucks.map((_, truck) => truck);
  for (const { items } of order.shared) {
    const groups = items.map((item) => groupOf[order.items[item]?.truck ?? 0] ?? 0);
    const first = Math.min(...groups);
    groupOf.forEach((group, truck) => { if (groups.includes(group)) groupOf[truck] = first; });
  }
  return [...new Set(groupOf)].map((group) => partOf(order, groupOf.flatMap((each, truck) => (each === group ? [truck] : [])))).filter(({ items }) => items.length > 0);
}

function partOf(order: ReturnOrder, trucks: readonly number[]): OrderPart {
  const items = order.items.flatMap(({ truck }, index) => (trucks.includes(truck) ? [index] : []));
  const own = (need: SharedNeed): SharedNeed => ({ ...need, items: need.items.map((item) => items.indexOf(item)) });
  return {
    trucks, items,
    order: {
      dates: order.dates,
      trucks: trucks.flatMap((truck) => order.trucks[truck] ?? []),
      items: items.flatMap((index) => (order.items[index] ? [{ ...order.items[index], truck: trucks.indexOf(order.items[index].truck) }] : [])),
      shared: order.shared.filter((need) => need.items.every((item) => items.includes(item))).map(own),
    },
  };
}

/** What is planned for the parts, as one. */
export function joinStays(order: ReturnOrder, parts: readonly (OrderPart & { readonly priced: PricedStays })[]): PricedStays {
  const sum = (of: (cost: PricedStays["cost"]) => number): number => parts.reduce((total, { priced }) => total + of(priced.cost), 0);
  return {
    stays: parts.flatMap(({ items, priced }) => priced.stays.map((stay): Stay => ({ ...stay, item: items[stay.item] ?? stay.item }))),
    trips: order.trucks.map((_, truck) => parts.flatMap(({ trucks, priced }) => (trucks.includes(truck) ? [priced.trips[trucks.indexOf(truck)] ?? []] : []))[0] ?? new Array<number>(order.dates + 1).fill(0)),
    cost: { hire: sum(({ hire }) => hire), handling: sum(({ handling }) => handling), trips: sum(({ trips }) => trips), total: sum(({ total }) => total) },
  };
}
