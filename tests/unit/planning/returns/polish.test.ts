import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { createSolverPool } from "#lib/solver/solver-pool.ts";
import { keepToLast } from "#lib/trade/planning/returns/habits.ts";
import { columnValues, readStays } from "#lib/trade/planning/returns/model/read-stays.ts";
import { returnModel } from "#lib/trade/planning/returns/model/return-model.ts";
import { priceStays } from "#lib/trade/planning/returns/price-stays.ts";
import type { ReturnOrder } from "#lib/trade/planning/returns/return-order.ts";
import { whereTheyAgree, windowsOf, within } from "#lib/trade/planning/returns/search/polish.ts";
import { tighten } from "#lib/trade/planning/returns/search/tighten.ts";

const pool = createSolverPool(1);
afterAll(() => pool.close());
const time = { nowMs: () => performance.now(), limitMs: 20_000 };

const DATES = 8;
/** So much a date, as on a plain docket by the day; everything is hired, nothing is here yet. */
const orders = fc.record({
  tripCost: fc.integer({ min: 0, max: 60 }), truckKg: fc.integer({ min: 4, max: 9 }), rate: fc.integer({ min: 1, max: 9 }),
  demands: fc.array(fc.array(fc.integer({ min: 0, max: 3 }), { minLength: DATES, maxLength: DATES }), { minLength: 1, maxLength: 3 }),
}).map(({ tripCost, truckKg, rate, demands }): ReturnOrder => ({
  dates: DATES, shared: [], trucks: [{ tripCost, truckKg, mostTrips: null }],
  items: demands.map((demand, index) => ({
    id: `i${index}`, truck: 0, unitKg: 1 + index, handlingIn: 2, handlingOut: 3, demand, lots: [],
    hireCharge: Array.from({ length: DATES }, (_, from) => Array.from({ length: DATES + 1 }, (_, to) => (to > from ? rate * (to - from) : null))),
  })),
}));

describe("the windows of a polish", () => {
  it("hold every date, all but the ends twice", () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 400 }), (dates) => {
      const windows = windowsOf(dates);
      const count = (date: number) => windows.filter(({ from, to }) => date >= from && date < to).length;
      const step = windows[1]?.from ?? dates;
      for (let date = 0; date < dates; date += 1) expect(count(date)).toBe(date < step ? 1 : 2);
    }));
  });
});

// Own rule, no source: a plan bettered nearby is a plan still, costs no more, and outside the window is what it was.
describe("a plan bettered nearby", () => {
  it("never costs more, and keeps what was to stay", async () => {
    await fc.assert(fc.asyncProperty(orders, fc.integer({ min: 0, max: DATES - 1 }), async (order, from) => {
      const model = returnModel(order);
      const tightened = await answerQuestions(tighten(order, model), pool.solve, time);
      const plan = keepToLast(order);
      fc.pre(plan !== null);
      if (!plan) return;
      const values = columnValues(model, plan);
      const window = { from, to: from + 3 };
      const inWindow = await answerQuestions(within(model, tightened.drafted, values, window, 1), pool.solve, time);
      const agreeing = await answerQuestions(whereTheyAgree(tightened, values, 1), pool.solve, time);
      for (const bettered of [inWindow, agreeing]) {
        const priced = bettered && priceStays(order, readStays(order, model, bettered));
        expect(priced?.cost.total ?? Infinity).toBeLessThanOrEqual(plan.cost.total);
      }
      for (const columns of [...model.trips, ...model.items.map(({ stock }) => stock)]) {
        columns.forEach((column, date) => {
          if (date < window.from || date >= window.to) expect(Math.round(inWindow?.[column] ?? -1)).toBe(Math.round(values[column] ?? 0));
        });
      }
    }), { numRuns: 60 });
  }, 60_000);
});
