import { type PricedStays, type ReturnOrder, type Stay } from "./return-order.ts";

/** What these stays cost with as few trucks as carry them; null where a rule of hire or the number of trucks forbids them. */
export function priceStays(order: ReturnOrder, stays: readonly Stay[]): PricedStays | null {
  const kgIn = new Float64Array(order.dates + 1);
  const kgOut = new Float64Array(order.dates + 1);
  let hire = 0;
  let handling = 0;
  for (const stay of stays) {
    const item = order.items[stay.item];
    const each = chargeOf(order, stay);
    if (!item || each === null) return null;
    hire += each * stay.count;
    handling += (item.handlingOut + (stay.lot === null ? item.handlingIn : 0)) * stay.count;
    kgOut[stay.to] = (kgOut[stay.to] ?? 0) + item.unitKg * stay.count;
    if (stay.lot === null) kgIn[stay.from] = (kgIn[stay.from] ?? 0) + item.unitKg * stay.count;
  }
  const trips = Array.from(kgIn, (kg, t) => Math.ceil(Math.max(kg, kgOut[t] ?? 0) / order.truckKg));
  if (trips.some((count) => count > (order.mostTrips ?? Infinity))) return null;
  const onTrips = trips.reduce((sum, count) => sum + count, 0) * order.tripCost;
  return { stays, trips, cost: { hire, handling, trips: onTrips, total: hire + handling + onTrips } };
}

export function chargeOf(order: ReturnOrder, { item, lot, from, to }: Stay): number | null {
  const of = order.items[item];
  const charge = lot === null ? of?.hireCharge?.[from] : of?.lots.find((candidate) => candidate.id === lot)?.charge;
  return charge?.[to] ?? null;
}
