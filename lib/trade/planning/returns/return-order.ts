import { brokenRule, invalid, ok, type Problem, type Result } from "#lib/kernel/result.ts";

/** What one unit costs by the date it stops, `charge[to]`; null where it may not stop. Dates are counted 0 … last, as in the order. */
export type ChargeByEnd = readonly (number | null)[];

/** Units of one item on hire now that came together. `charge` is what one of them still costs, from now to the date it goes back. */
export type HiredLot = { readonly id: string; readonly count: number; readonly charge: ChargeByEnd };

/** `demand[t]`: how many must be on site from date t up to the next. `hireCharge[from][to]`: one more unit over that time; null: no more can be had. */
export type ReturnItem = {
  readonly id: string;
  readonly unitKg: number;
  readonly handlingIn: number;
  readonly handlingOut: number;
  readonly demand: readonly number[];
  readonly lots: readonly HiredLot[];
  readonly hireCharge: readonly ChargeByEnd[] | null;
};

/**
 * Gear of one supplier over the dates on which a truck may come: `dates` of them after the first, the last being that by
 * which everything is back. Money in minor units. A trip brings and takes away up to `truckKg` each way.
 */
export type ReturnOrder = {
  readonly dates: number;
  readonly truckKg: number;
  readonly tripCost: number;
  readonly mostTrips: number | null;
  readonly items: readonly ReturnItem[];
};

/** Units of one item on site from date `from` up to date `to`; those of a lot are there from the start (`from` 0). */
export type Stay = { readonly item: number; readonly lot: string | null; readonly from: number; readonly to: number; readonly count: number };

export type ReturnCost = { readonly hire: number; readonly handling: number; readonly trips: number; readonly total: number };

/** `trips[t]`: trucks on date t. */
export type PricedStays = { readonly stays: readonly Stay[]; readonly trips: readonly number[]; readonly cost: ReturnCost };

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
  need("truckKg", whole(order.truckKg, 1), "Must be a whole number of at least 1.");
  need("tripCost", whole(order.tripCost, 0), "Must be a whole number of at least 0.");
  order.items.forEach((item, index) => {
    const at = `items.${index}`;
    need(`${at}.unitKg`, whole(item.unitKg, 0) && item.unitKg <= order.truckKg, "Must be whole kilograms, and fit on the truck.");
    need(`${at}.handling`, whole(item.handlingIn, 0) && whole(item.handlingOut, 0), "Must be a whole number of at least 0.");
    need(`${at}.demand`, item.demand.length === order.dates && item.demand.every((count) => whole(count, 0)), "Must be a whole number of at least 0 for each date but the last.");
    item.lots.forEach((lot, each) => {
      need(`${at}.lots.${each}`, whole(lot.count, 1) && lot.charge.length === order.dates + 1 && lot.charge.every((cost) => cost === null || Number.isSafeInteger(cost)), "Needs a count, and what it costs by each date.");
      need(`${at}.lots.${each}.charge`, (lot.charge[order.dates] ?? null) !== null, "Must be allowed to go back by the last date.");
    });
    need(`${at}.hireCharge`, item.hireCharge === null || item.hireCharge.length === order.dates, "Must be given for each date but the last.");
  });
  if (problems.length > 0) return invalid(...problems);
  const short = shortOf(order);
  return short ? brokenRule("hire-falls-short", short) : ok(order);
}

/** Where demand is above what is on hand while no more can be had. */
function shortOf(order: ReturnOrder): { item: string; date: number; needed: number; there: number } | null {
  for (const item of order.items) {
    const firstHire = item.hireCharge?.findIndex((row) => row.some((cost) => cost !== null)) ?? -1;
    const date = item.demand.findIndex((count, t) => count > onHand(item) && (firstHire < 0 || t < firstHire));
    if (date >= 0) return { item: item.id, date, needed: item.demand[date] ?? 0, there: onHand(item) };
  }
  return null;
}
