import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { createSolverPool } from "#lib/solver/solver-pool.ts";
import { checkReturnPlan } from "#lib/trade/planning/returns/check-return-plan.ts";
import { planReturns } from "#lib/trade/planning/returns/plan-returns.ts";
import type { ReturnItem, ReturnOrder, ReturnPlan } from "#lib/trade/planning/returns/return-order.ts";

const pool = createSolverPool(1);
afterAll(() => pool.close());

async function planned(order: ReturnOrder): Promise<ReturnPlan> {
  const plan = await answerQuestions(planReturns(order), pool.solve, { nowMs: () => performance.now(), limitMs: 20_000 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  expect(checkReturnPlan(order, plan.value)).toEqual([]);
  return plan.value;
}

/** 40 sets of one kind from each of two suppliers, at 0.60 and 0.50 a day, a trip of either at 180; `needed` of both together, over so many days. */
function twoYards(needed: number, days: number): ReturnOrder {
  const none = new Array<number>(days).fill(0);
  const from = (truck: number, rate: number): ReturnItem => ({
    id: "set", truck, unitKg: 40, handlingIn: 0, handlingOut: 0, demand: none, hireCharge: null,
    lots: [{ id: `yard ${truck}`, count: 40, charge: Array.from({ length: days + 1 }, (_, day) => rate * day) }],
  });
  const truck = { truckKg: 5000, tripCost: 180_00, mostTrips: null };
  return { dates: days, trucks: [truck, truck], items: [from(0, 60), from(1, 50)], shared: [{ items: [0, 1], demand: none.map(() => needed) }] };
}

describe("gear of the same kind from two suppliers", () => {
  // By hand: the dearer 40 go back now, 180.00; the others stay, 40 x 0.50 x 10 = 200.00, and go at the end, 180.00.
  it("goes back to the dearer one first", async () => {
    const plan = await planned(twoYards(40, 10));
    expect(plan).toMatchObject({ cost: { hire: 200_00, trips: 360_00, total: 560_00 }, bound: 560_00, proven: true });
    expect(plan.stays).toEqual(expect.arrayContaining([{ item: 0, lot: "yard 0", from: 0, to: 0, count: 40 }, { item: 1, lot: "yard 1", from: 0, to: 10, count: 40 }]));
  });

  // 50 needed for 12 days: 40 x 0.50 x 12 = 240.00 and 10 x 0.60 x 12 = 72.00. The 30 over cost 30 x 0.60 x 12 = 216.00 to keep, a third trip 180.00.
  it("goes back in part where a trip of its own costs less than keeping it", async () => {
    expect(await planned(twoYards(50, 12))).toMatchObject({ cost: { hire: 312_00, trips: 540_00, total: 852_00 }, proven: true });
  });

  // Over 9 days the 30 cost 162.00 to keep, less than the trip: 40 x 0.50 x 9 + 40 x 0.60 x 9 + 360.00 = 756.00.
  it("is kept in whole where it does not", async () => {
    expect(await planned(twoYards(50, 9))).toMatchObject({ cost: { hire: 396_00, trips: 360_00, total: 756_00 }, proven: true });
  });

  it("is told from a plan that leaves the columns short or puts one supplier's gear on the other's truck", async () => {
    const order = twoYards(50, 9);
    const plan = await planned(order);
    const rules = (change: Partial<ReturnPlan>) => checkReturnPlan(order, { ...plan, ...change }).map(({ rule }) => rule);
    expect(rules({ stays: plan.stays.map((stay) => ({ ...stay, to: stay.item === 0 ? 4 : stay.to })) })).toEqual(expect.arrayContaining(["demand", "truck-out"]));
    expect(rules({ trips: [plan.trips[0]?.map(() => 0) ?? [], (plan.trips[1] ?? []).map((count) => 2 * count)] })).toContain("truck-out");
  });
});

const DATES = 3;
const money = fc.integer({ min: 0, max: 30 });
const yard = fc.record({ unitKg: fc.integer({ min: 1, max: 6 }), handling: money, rate: fc.integer({ min: 0, max: 9 }), onHand: fc.integer({ min: 0, max: 2 }), notice: fc.integer({ min: 0, max: 2 }), truckKg: fc.integer({ min: 6, max: 12 }), tripCost: fc.integer({ min: 0, max: 40 }) });
type Yard = { unitKg: number; handling: number; rate: number; onHand: number; notice: number; truckKg: number; tripCost: number };
const orderOf = (yards: readonly Yard[], demand: readonly number[]): ReturnOrder => ({
  dates: DATES,
  trucks: yards.map(({ truckKg, tripCost }) => ({ truckKg, tripCost, mostTrips: null })),
  items: yards.map(({ unitKg, handling, rate, onHand, notice }, truck): ReturnItem => ({
    id: `i${truck}`, truck, unitKg, handlingIn: handling, handlingOut: handling, demand: demand.map(() => 0),
    lots: onHand === 0 ? [] : [{ id: `here ${truck}`, count: onHand, charge: Array.from({ length: DATES + 1 }, (_, to) => (to < notice ? null : rate * to)) }],
    hireCharge: demand.map((_, from) => Array.from({ length: DATES + 1 }, (__, to) => (to > from ? rate * (to - from) + 2 : null))),
  })),
  shared: [{ items: yards.map((_, index) => index), demand }],
});

type Way = { readonly cost: number; readonly there: readonly number[] };
/** Every way to hold one yard's gear with what it costs, trucks and all: units on hand end at some date, up to two more come and go. */
function everyWay({ unitKg, handling, rate, onHand, notice, truckKg, tripCost }: Yard): Way[] {
  const dates = Array.from({ length: DATES + 1 }, (_, t) => t);
  const ends = Array.from({ length: onHand }, () => dates.filter((to) => to >= notice).map((to) => ({ from: -1, to, cost: rate * to + handling })));
  const hires = dates.flatMap((from) => dates.filter((to) => to > from).map((to) => ({ from, to, cost: rate * (to - from) + 2 + 2 * handling })));
  const all = [...ends, [null, ...hires], [null, ...hires]].reduce<({ from: number; to: number; cost: number } | null)[][]>((ways, options) => ways.flatMap((way) => options.map((option) => [...way, option])), [[]]);
  return all.map((way) => {
    const stays = way.flatMap((stay) => (stay ? [stay] : []));
    const trips = dates.map((t) => Math.ceil((unitKg * Math.max(stays.filter(({ from }) => from === t).length, stays.filter(({ to }) => to === t).length)) / truckKg));
    return { cost: stays.reduce((sum, { cost }) => sum + cost, 0) + tripCost * trips.reduce((sum, count) => sum + count, 0), there: dates.slice(0, DATES).map((t) => stays.filter(({ from, to }) => from <= t && t < to).length) };
  });
}

describe("the return plan for several suppliers", () => {
  it("costs as little as the cheapest of all plans tried one by one", () => fc.assert(fc.asyncProperty(yard, yard, fc.array(fc.integer({ min: 0, max: 2 }), { minLength: DATES, maxLength: DATES }), async (one, other, demand) => {
    const [first, second] = [everyWay(one), everyWay(other)];
    let least = Infinity;
    for (const a of first) for (const b of second) if (a.cost + b.cost < least && demand.every((count, t) => (a.there[t] ?? 0) + (b.there[t] ?? 0) >= count)) least = a.cost + b.cost;
    expect(await planned(orderOf([one, other], demand))).toMatchObject({ cost: { total: least }, proven: true, gap: 0 });
  }), { numRuns: 40, seed: 3 }), 120_000);

  it("is the plans for each where nothing ties them", () => fc.assert(fc.asyncProperty(yard, yard, async (one, other) => {
    const alone = (each: Yard): ReturnOrder => ({ ...orderOf([each], [1, 0, 1]), shared: [], items: orderOf([each], [1, 0, 1]).items.map((item) => ({ ...item, demand: [1, 0, 1] })) });
    const [a, b] = [alone(one), alone(other)];
    // A third supplier has nothing to take back.
    const both = await planned({ dates: DATES, trucks: [...a.trucks, ...b.trucks, { truckKg: 10, tripCost: 5, mostTrips: null }], items: [...a.items, ...b.items.map((item) => ({ ...item, truck: 1 }))], shared: [] });
    expect(both.cost.total).toBe((await planned(a)).cost.total + (await planned(b)).cost.total);
    expect(both.trips).toMatchObject([expect.anything(), expect.anything(), [0, 0, 0, 0]]);
  }), { numRuns: 15, seed: 8 }), 60_000);
});
