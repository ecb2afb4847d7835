import type { ReturnItem, ReturnOrder } from "#lib/trade/planning/returns/return-order.ts";

type Size = { readonly items: number; readonly weeks: number; readonly by: "week" | "ladder" };

/** Gear for a tower: each item is wanted in bursts, as levels come and go; part of it is on hire already. A truck may come once a week. */
export function aTowersGear({ items, weeks, by }: Size): ReturnOrder {
  const next = dice(items * 1000 + weeks);
  const dates = weeks;
  return {
    dates, trucks: [{ truckKg: 6000, tripCost: 24_000, mostTrips: null }], shared: [],
    items: Array.from({ length: items }, (_, index): ReturnItem => {
      const demand = bursts(dates, next);
      const weekly = 120 + next(300);
      const onHand = Math.floor(Math.max(...demand.slice(0, 4)) * 1.2);
      return {
        id: `item ${index}`, truck: 0, unitKg: 6 + next(40), handlingIn: 10, handlingOut: 25, demand,
        lots: onHand === 0 ? [] : [{ id: "here", count: onHand, charge: Array.from({ length: dates + 1 }, (_, to) => (to === 0 ? null : weekly * to)) }],
        hireCharge: demand.map((_, from) => Array.from({ length: dates + 1 }, (_, to) => (to > from ? chargeOf(by, weekly, to - from) : null))),
      };
    }),
  };
}

/** By the week with two at least; or a ladder that turns cheaper after four weeks, as months do. */
function chargeOf(by: Size["by"], weekly: number, weeks: number): number {
  const charged = Math.max(2, weeks);
  return by === "week" ? weekly * charged : Math.floor(charged / 4) * weekly * 3 + Math.min(weekly * 3, (charged % 4) * weekly);
}

function bursts(dates: number, next: (below: number) => number): number[] {
  const demand = new Array<number>(dates).fill(0);
  for (let start = next(4); start < dates - 1; start += 3 + next(9)) {
    const [count, length] = [8 + next(60), 2 + next(6)];
    for (let t = start; t < Math.min(dates - 1, start + length); t += 1) demand[t] = Math.max(demand[t] ?? 0, count);
  }
  return demand;
}

/** Park and Miller's minimal standard generator, Communications of the ACM 31 (1988): the same numbers on every machine. */
function dice(seed: number): (below: number) => number {
  let state = (seed % 2147483646) + 1;
  return (below) => {
    state = (state * 16807) % 2147483647;
    return state % below;
  };
}
