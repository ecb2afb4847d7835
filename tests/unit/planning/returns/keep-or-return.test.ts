import { afterAll, describe, expect, it } from "vitest";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { createSolverPool } from "#lib/solver/solver-pool.ts";
import { checkReturnPlan } from "#lib/trade/planning/returns/check-return-plan.ts";
import { planReturns } from "#lib/trade/planning/returns/plan-returns.ts";
import { asPeriodRates } from "#lib/trade/planning/returns/model/period-rates.ts";
import type { ReturnOrder } from "#lib/trade/planning/returns/return-order.ts";

const pool = createSolverPool(1);
afterAll(() => pool.close());
const planned = (order: ReturnOrder, limitMs = 10_000) => answerQuestions(planReturns(order), pool.solve, { nowMs: () => performance.now(), limitMs });

/** 40 sets at 0.60 a day, a trip at 180, wanted 5 days, idle for a gap, wanted 5 days more. */
function idleFor(gap: number): ReturnOrder {
  const dates = 10 + gap;
  const demand = Array.from({ length: dates }, (_, day) => (day >= 5 && day < 5 + gap ? 0 : 40));
  return {
    dates, trucks: [{ truckKg: 5000, tripCost: 18_000, mostTrips: null }], shared: [],
    items: [{
      id: "set", truck: 0, unitKg: 40, handlingIn: 0, handlingOut: 0, demand,
      lots: [{ id: "here", count: 40, charge: Array.from({ length: dates + 1 }, (_, day) => 60 * day) }],
      hireCharge: demand.map((_, from) => Array.from({ length: dates + 1 }, (_, to) => (to > from ? 60 * (to - from) : null))),
    }],
  };
}

describe("keep or return", () => {
  // Hand arithmetic: 40 x 0.60 = 24.00 a day; two trips of 180.00 are 360.00; 360 / 24 = 15 idle days.
  it.each([[10, "keeps", 24_00 * 20 + 180_00], [14, "keeps", 24_00 * 24 + 180_00], [16, "returns", 24_00 * 10 + 3 * 180_00], [20, "returns", 24_00 * 10 + 3 * 180_00]] as const)("over %i idle days %s", async (gap, what, cost) => {
    const plan = await planned(idleFor(gap));
    expect(plan.ok && checkReturnPlan(idleFor(gap), plan.value)).toEqual([]);
    expect(plan.ok && plan.value).toMatchObject({ cost: { total: cost }, bound: cost, proven: true });
    expect(plan.ok && plan.value.stays.some((stay) => stay.to === 5)).toBe(what === "returns");
  });

  // 15 idle days: both ways cost 24.00 x 25 + 180.00 = 24.00 x 10 + 540.00 = 780.00.
  it("is the same at 15 idle days", async () => {
    const plan = await planned(idleFor(15));
    expect(plan.ok && plan.value).toMatchObject({ cost: { total: 780_00 }, justInTime: { cost: { total: 780_00 } }, keepToLast: { cost: { total: 780_00 } } });
  });

  it("says with its bound how good a plan is that no solver had time for", async () => {
    const plan = await planned(idleFor(20), 0);
    expect(plan.ok && plan.value).toMatchObject({ cost: { total: 780_00 }, proven: false, bound: 0, gap: 1 });
  });

  it("names the item and the date where what is there falls short and no more can be had", async () => {
    const [item] = idleFor(2).items;
    if (!item) throw new Error("There is one item");
    const plan = await planned({ ...idleFor(2), items: [{ ...item, demand: [...item.demand.slice(0, -1), 41], hireCharge: null }] });
    expect(plan.ok ? null : plan.failure).toEqual({ kind: "rule", code: "hire-falls-short", values: { item: "set", date: 11, needed: 41, there: 40 } });
  });

  it("notices a plan that leaves a column without, overloads a truck or adds up wrongly", async () => {
    const order = idleFor(20);
    const plan = await planned(order);
    if (!plan.ok) throw new Error("There is a plan");
    const rules = (change: Partial<typeof plan.value>) => checkReturnPlan(order, { ...plan.value, ...change }).map(({ rule }) => rule);
    const early = plan.value.stays.map((stay) => (stay.lot === null ? stay : { ...stay, to: 4 }));
    expect(rules({ stays: early })).toEqual(expect.arrayContaining(["demand", "truck-out", "hire"]));
    expect(rules({ trips: plan.value.trips.map((counts) => counts.map(() => 0)) })).toEqual(expect.arrayContaining(["truck-in", "truck-out", "trips"]));
    expect(rules({ stays: plan.value.stays.filter((stay) => stay.lot === null) })).toContain("lot-sent-back");
    expect(rules({ bound: plan.value.cost.total + 1 })).toContain("bound");
  });
});

describe("a charge by the date", () => {
  const table = (dates: number, charge: (from: number, to: number) => number | null) => Array.from({ length: dates }, (_, from) => Array.from({ length: dates + 1 }, (_, to) => (to > from ? charge(from, to) : null)));

  it("is found in a rate with a least hire, whether held or only charged", () => {
    expect(asPeriodRates(table(8, (from, to) => (to - from < Math.min(3, 8 - from) ? null : 7 * (to - from))), 8)).toMatchObject({ held: true });
    expect(asPeriodRates(table(8, (from, to) => 7 * Math.max(3, to - from)), 8)).toMatchObject({ held: false });
  });

  it("is not found in a ladder of days and weeks", () => {
    expect(asPeriodRates(table(10, (from, to) => Math.floor((to - from) / 7) * 40 + Math.min(40, ((to - from) % 7) * 10)), 10)).toBeNull();
  });

  it("is found in the same ladder on weekly dates", () => {
    expect(asPeriodRates(table(10, (from, to) => (to - from) * 40), 10)).toMatchObject({ fixed: expect.anything(), held: true });
  });
});
