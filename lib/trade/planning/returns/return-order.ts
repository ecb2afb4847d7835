import { brokenRule, invalid, ok, type Problem, type Result } from "#lib/kernel/result.ts";

/** What one unit costs by the date it stops, `charge[to]`; null where it may not stop. Dates are counted 0 … last, as in the order. */
export type ChargeByEnd = readonly (number | null)[];

/** Units of one item on hire now that came together. `charge` is what one of them still costs, from now to the date it goes back. */
export type HiredLot = { readonly id: string; readonly count: number; readonly charge: ChargeByEnd };

/**
 * Gear of one kind from one supplier, whose trucks `truck` numbers. `demand[t]`: how many of them must be on site from date t
 * up to the next. `hireCharge[from][to]`: one more unit over that time; null: no more can be had.
 */
export type ReturnItem = {
  readonly id: string;
  readonly truck: number;
  readonly unitKg: number;
  readonly handlingIn: number;
  readonly handlingOut: number;
  readonly demand: readonly number[];
  readonly lots: readonly HiredLot[];
  readonly hireCharge: readonly ChargeByEnd[] | null;
};

/** A supplier's trucks: a trip brings and takes away up to `truckKg` each way; no more than `mostTrips` on a date. */
export type Truck = { readonly truckKg: number; readonly tripCost: number; readonly mostTrips: number | null };

/** A need that items of several suppliers meet together: which of them stay is for the plan to say. Numbers of items. */
export type SharedNeed = { readonly items: readonly number[]; readonly demand: readonly number[] };

/**
 * Gear of one or more suppliers over the dates on which a truck may come: `dates` of them after the first, the last being
 * that by which everything is back. Each supplier sends its own trucks. Money in minor units.
 */
export type ReturnOrder = {
  readonly dates: number;
  readonly trucks: readonly Truck[];
  readonly items: readonly ReturnItem[];
  readonly shared: readonly SharedNeed[];
};

/** Units of one item on site from date `from` up to date `to`; those of a lot are there from the start (`from` 0). */
export type Stay = { readonly item: number; readonly lot: string | null; readonly from: number; readonly to: number; readonly count: number };

export type ReturnCost = { readonly hire: number; readonly handling: number; readonly trips: number; readonly total: number };

/** `trips[truck][t]`: how many of a supplier's trucks come on date t. */
export type PricedStays = { readonly stays: readonly Stay[]; readonly trips: readonly (readonly number[])[]; readonly cost: ReturnCost };

/** `bound`: no plan can cost less; `proven` when this one is at it. `gap` is (cost - bound) / cost. The other two are what the habits would cost. */
export type ReturnPlan = PricedStays & {
  readonly bound: number;
  readonly gap: number;
  readonly proven: boolean;
  readonly justInTime: PricedStays | null;
  readonly keepToLast: PricedStays | null;
};

export const onHand = (item: ReturnItem): number => item.lots.reduce((sum, lot) => sum + lot.count, 0);

/** The first date at which one of the lot may go back. */
export const earliestEnd = ({ charge }: HiredLot): number => charge.findIndex((cost) => cost !== null);

export function checkReturnOrder(order: ReturnOrder): Result<ReturnOrder> {
  const problems: Problem[] = [];
  const need = (field: string, fits: boolean, message: string) => { if (!fits) problems.push({ field, message }); };
  const whole = (value: number, least: number) => Number.isSafeInteger(value) && value >= least;
  need("dates", whole(order.dates, 1), "There must be at least one date after the first.");
  order.trucks.forEach(({ truckKg, tripCost }, index) => {
    need(`trucks.${index}.truckKg`, whole(truckKg, 1), "Must be a whole number of at least 1.");
    need(`trucks.${index}.tripCost`, whole(tripCost, 0), "Must be a whole number of at least 0.");
  });
  order.items.forEach((item, index) => {
    const at = `items.${index}`;
    need(`${at}.unitKg`, whole(item.unitKg, 0) && item.unitKg <= (order.trucks[item.truck]?.truckKg ?? -1), "Must be whole kilograms, and fit on the truck.");
    need(`${at}.handling`, whole(item.handlingIn, 0) && whole(item.handlingOut, 0), "Must be a whole number of at least 0.");
    need(`${at}.demand`, item.demand.length === order.dates && item.demand.every((count) => whole(count, 0)), "Must be a whole number of at least 0 for each date but the last.");
    item.lots.forEach((lot, each) => {
      need(`${at}.lots.${each}`, whole(lot.count, 1) && lot.charge.length === order.dates + 1 && lot.charge.every((cost) => cost === null || Number.isSafeInteger(cost)), "Needs a count, and what it costs by each date.");
      need(`${at}.lots.${each}.charge`, (lot.charge[order.dates] ?? null) !== null, "Must be allowed to go back by the last date.");
    });
    need(`${at}.hireCharge`, item.hireCharge === null || item.hireCharge.length === order.dates, "Must be given for each date but the last.");
  });
  order.shared.forEach(({ items, demand }, index) => {
    need(`shared.${index}`, demand.length === order.dates && demand.every((count) => whole(count, 0)), "Must be a whole number of at least 0 for each date but the last.");
    need(`shared.${index}.items`, items.every((each) => order.items[each]?.demand.every((count) => count === 0)), "Must be items that need nothing of their own.");
  });
  if (problems.length > 0) return invalid(...problems);
  const short = shortOf(order);
  return short ? brokenRule("hire-falls-short", short) : ok(order);
}

/** What has to be met together: an item's own demand, or one that several share. */
export const needsOf = (order: ReturnOrder): readonly SharedNeed[] => {
  const sharing = new Set(order.shared.flatMap(({ items }) => items));
  return [...order.items.flatMap(({ demand }, index) => (sharing.has(index) ? [] : [{ items: [index], demand }])), ...order.shared];
};

/** Where demand is above what is on hand while no more can be had. */
function shortOf(order: ReturnOrder): { item: string; date: number; needed: number; there: number } | null {
  for (const { items, demand } of needsOf(order)) {
    const sources = items.flatMap((index) => order.items[index] ?? []);
    const there = sources.reduce((sum, item) => sum + onHand(item), 0);
    const firstHire = Math.min(...sources.map(({ hireCharge }) => hireCharge?.findIndex((row) => row.some((cost) => cost !== null)) ?? -1).map((first) => (first < 0 ? Infinity : first)));
    const date = demand.findIndex((count, t) => count > there && t < firstHire);
    if (date >= 0) return { item: sources[0]?.id ?? "", date, needed: demand[date] ?? 0, there };
  }
  return null;
}
