import { type PricedStays, type ReturnOrder, type Stay } from "./return-order.ts";

/** What these stays cost with as few trucks as carry them; null where a rule of hire or the number of trucks forbids them. */
export function priceStays(order: ReturnOrder, stays: readonly Stay[]): PricedStays | null {
  const kgIn = order.trucks.map(() => new Float64Array(order.dates + 1));
  const kgOut = order.trucks.map(() => new Float64Array(order.dates + 1));
  let hire = 0;
  let handling = 0;
  for (const stay of stays) {
    const item = order.items[stay.item];
    const each = chargeOf(order, stay);
    if (!item || each === null) return null;
    hire += each * stay.count;
    handling += (item.handlingOut + (stay.lot === null ? item.handlingIn : 0)) * stay.count;
    load(kgOut[item.truck], stay.to, item.unitKg * stay.count);
    if (stay.lot === null) load(kgIn[item.truck], stay.from, item.unitKg * stay.count);
  }
  const trips = order.trucks.map(({ truckKg }, truck) => Array.from(kgIn[truck] ?? [], (kg, t) => Math.ceil(Math.max(kg, kgOut[truck]?.[t] ?? 0) / truckKg)));
  if (trips.some((counts, truck) => counts.some((count) => count > (order.trucks[truck]?.mostTrips ?? Infinity)))) return null;
  const onTrips = costOfTrips(order, trips);
  return { stays, trips, cost: { hire, handling, trips: onTrips, total: hire + handling + onTrips } };
}

function load(kg: Float64Array | undefined, date: number, more: number): void {
  if (kg) kg[date] = (kg[date] ?? 0) + more;
}

export const costOfTrips = (order: ReturnOrder, trips: PricedStays["trips"]): number =>
  trips.reduce((sum, counts, truck) => sum + (order.trucks[truck]?.tripCost ?? 0) * counts.reduce((all, count) => all + count, 0), 0);

export function chargeOf(order: ReturnOrder, { item, lot, from, to }: Stay): number | null {
  const of = order.items[item];
  const charge = lot === null ? of?.hireCharge?.[from] : of?.lots.find((candidate) => candidate.id === lot)?.charge;
  return charge?.[to] ?? null;
}
