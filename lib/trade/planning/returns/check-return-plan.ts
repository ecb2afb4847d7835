import type { ReturnItem, ReturnOrder, ReturnPlan, Stay } from "./return-order.ts";

/** A rule a plan breaks, with where and the numbers. */
export type Breach = { readonly rule: string; readonly where: string; readonly value: number; readonly limit: number };

/** Holds any return plan against the order, whoever made it: the demand met at every date, every lot sent back once and when it may, no truck overloaded, costs as they add up. */
export function checkReturnPlan(order: ReturnOrder, plan: ReturnPlan): Breach[] {
  const onTrips = sum(order.trucks.map(({ tripCost }, truck) => tripCost * sum(plan.trips[truck] ?? [NaN])));
  const handling = sum(plan.stays.map(({ item, lot, count }) => count * ((order.items[item]?.handlingOut ?? NaN) + (lot === null ? order.items[item]?.handlingIn ?? NaN : 0))));
  const hire = sum(plan.stays.map((stay) => stay.count * (chargeEach(order, stay) ?? NaN)));
  return [
    ...plan.stays.flatMap((stay) => checkStay(order, stay)),
    ...order.items.flatMap((item, index) => checkItem(order, item, plan.stays.filter((stay) => stay.item === index))),
    ...order.shared.flatMap(({ items, demand }) => checkDemand(order, items.map((index) => order.items[index]?.id).join("+"), demand, plan.stays.filter((stay) => items.includes(stay.item)))),
    ...order.trucks.flatMap((_, truck) => Array.from({ length: order.dates + 1 }, (__, date) => date).flatMap((date) => checkTrucks(order, plan, truck, date))),
    ...differs("hire", "plan", plan.cost.hire, hire),
    ...differs("handling", "plan", plan.cost.handling, handling),
    ...differs("trips", "plan", plan.cost.trips, onTrips),
    ...differs("total", "plan", plan.cost.total, hire + handling + onTrips),
    ...(plan.bound > plan.cost.total ? [{ rule: "bound", where: "plan", value: plan.bound, limit: plan.cost.total }] : []),
    ...differs("proven", "plan", Number(plan.proven), Number(plan.bound === plan.cost.total)),
  ];
}

function checkStay(order: ReturnOrder, stay: Stay): Breach[] {
  const where = `${order.items[stay.item]?.id ?? stay.item} ${stay.from}-${stay.to}`;
  return [
    ...(chargeEach(order, stay) === null ? [{ rule: "may-stop", where, value: 0, limit: 1 }] : []),
    ...(Number.isInteger(stay.count) && stay.count > 0 ? [] : [{ rule: "whole", where, value: stay.count, limit: 1 }]),
    ...(stay.lot !== null && stay.from !== 0 ? [{ rule: "lot-from-start", where, value: stay.from, limit: 0 }] : []),
    ...(stay.lot === null && stay.to <= stay.from ? [{ rule: "ends-after-start", where, value: stay.to, limit: stay.from + 1 }] : []),
  ];
}

const checkItem = (order: ReturnOrder, item: ReturnItem, stays: readonly Stay[]): Breach[] => [
  ...item.lots.flatMap((lot) => differs("lot-sent-back", `${item.id} ${lot.id}`, sum(stays.filter((stay) => stay.lot === lot.id).map(({ count }) => count)), lot.count)),
  ...checkDemand(order, item.id, item.demand, stays),
];

function checkDemand(order: ReturnOrder, id: string, demand: readonly number[], stays: readonly Stay[]): Breach[] {
  const there = (date: number): number => sum(stays.filter(({ from, to }) => from <= date && date < to).map(({ count }) => count));
  return Array.from({ length: order.dates }, (_, date) => date).flatMap((date) => {
    const [value, limit] = [there(date), demand[date] ?? 0];
    return value < limit ? [{ rule: "demand", where: `${id} ${date}`, value, limit }] : [];
  });
}

function checkTrucks(order: ReturnOrder, plan: ReturnPlan, truck: number, date: number): Breach[] {
  const { truckKg = NaN, mostTrips = null } = order.trucks[truck] ?? {};
  const trips = plan.trips[truck]?.[date] ?? NaN;
  const own = plan.stays.filter(({ item }) => order.items[item]?.truck === truck);
  const kg = (stays: readonly Stay[]): number => sum(stays.map(({ item, count }) => count * (order.items[item]?.unitKg ?? NaN)));
  const loads = { in: kg(own.filter(({ from, lot }) => lot === null && from === date)), out: kg(own.filter(({ to }) => to === date)) };
  const where = `${truck} ${date}`;
  return [
    ...Object.entries(loads).flatMap(([way, load]) => (load <= trips * truckKg ? [] : [{ rule: `truck-${way}`, where, value: load, limit: trips * truckKg }])),
    ...(trips <= (mostTrips ?? Infinity) ? [] : [{ rule: "most-trips", where, value: trips, limit: mostTrips ?? 0 }]),
  ];
}

function chargeEach(order: ReturnOrder, { item, lot, from, to }: Stay): number | null {
  const of = order.items[item];
  const byEnd = lot === null ? of?.hireCharge?.[from] : of?.lots.find(({ id }) => id === lot)?.charge;
  return byEnd?.[to] ?? null;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const differs = (rule: string, where: string, value: number, limit: number): Breach[] => (value === limit ? [] : [{ rule, where, value, limit }]);
