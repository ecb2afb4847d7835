import fc from "fast-check";
import { solve, type Constraint } from "yalps";
import { afterAll, describe, expect, it } from "vitest";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { createSolverPool } from "#lib/solver/solver-pool.ts";
import { checkReturnPlan } from "#lib/trade/planning/returns/check-return-plan.ts";
import { planReturns } from "#lib/trade/planning/returns/plan-returns.ts";
import type { ReturnItem, ReturnOrder, ReturnPlan } from "#lib/trade/planning/returns/return-order.ts";

const pool = createSolverPool(1);
afterAll(() => pool.close());

async function planned(order: ReturnOrder, limitMs = 20_000): Promise<ReturnPlan> {
  const plan = await answerQuestions(planReturns(order), pool.solve, { nowMs: () => performance.now(), limitMs });
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  expect(checkReturnPlan(order, plan.value)).toEqual([]);
  return plan.value;
}

const DATES = 3;
const money = fc.integer({ min: 0, max: 30 });
const ladder = fc.record({ step: fc.integer({ min: 1, max: 9 }), most: fc.integer({ min: 5, max: 14 }), least: fc.integer({ min: 1, max: 3 }), held: fc.boolean() });
/** A charge by length: so much a date up to a most for two dates, for a least number of dates; before that it may not go back, or goes at the full charge. */
const chargeOver = ({ step, most, least, held }: { step: number; most: number; least: number; held: boolean }, from: number, to: number): number | null => {
  const length = Math.max(Math.min(least, DATES - from), to - from);
  if (to <= from || (held && to - from < Math.min(least, DATES - from))) return null;
  return Math.floor(length / 2) * most + Math.min(most, (length % 2) * step);
};

const item = fc.record({
  unitKg: fc.integer({ min: 0, max: 6 }), handlingIn: money, handlingOut: money, terms: ladder,
  demand: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: DATES, maxLength: DATES }),
  onHand: fc.integer({ min: 0, max: 2 }), notice: fc.integer({ min: 0, max: 2 }), lotStep: fc.integer({ min: 0, max: 9 }),
}).map(({ terms, onHand, notice, lotStep, ...rest }): ReturnItem => ({
  ...rest, id: "", truck: 0,
  lots: onHand === 0 ? [] : [{ id: "here", count: onHand, charge: Array.from({ length: DATES + 1 }, (_, to) => (to < notice ? null : lotStep * to)) }],
  hireCharge: Array.from({ length: DATES }, (_, from) => Array.from({ length: DATES + 1 }, (_, to) => chargeOver(terms, from, to))),
}));
const orders = fc.record({ truckKg: fc.integer({ min: 6, max: 12 }), tripCost: fc.integer({ min: 0, max: 40 }), items: fc.array(item, { minLength: 1, maxLength: 2 }) })
  .map(({ items, ...rest }): ReturnOrder => ({ dates: DATES, trucks: [{ ...rest, mostTrips: null }], shared: [], items: items.map((each, index) => ({ ...each, id: `i${index}` })) }));

type Way = { readonly cost: number; readonly kgIn: readonly number[]; readonly kgOut: readonly number[] };

/** Every way to hold one item: each unit on hand ends at some date, up to two more come and go. */
function everyWay(of: ReturnItem): Way[] {
  const ends = of.lots.flatMap((lot) => Array.from({ length: lot.count }, () => lot.charge.flatMap((cost, to) => (cost === null ? [] : [{ from: -1, to, cost: cost + of.handlingOut }]))));
  const hires = (of.hireCharge ?? []).flatMap((row, from) => row.flatMap((cost, to) => (cost === null ? [] : [{ from, to, cost: cost + of.handlingIn + of.handlingOut }])));
  const choices = [...ends, [null, ...hires], [null, ...hires]];
  const all = choices.reduce<({ from: number; to: number; cost: number } | null)[][]>((ways, options) => ways.flatMap((way) => options.map((option) => [...way, option])), [[]]);
  return all.flatMap((way): Way[] => {
    const stays = way.flatMap((stay) => (stay ? [stay] : []));
    const short = of.demand.some((count, t) => stays.filter(({ from, to }) => from <= t && t < to).length < count);
    const kg = (fits: (stay: { from: number; to: number }, t: number) => boolean) => Array.from({ length: DATES + 1 }, (_, t) => of.unitKg * stays.filter((stay) => fits(stay, t)).length);
    return short ? [] : [{ cost: stays.reduce((sum, { cost }) => sum + cost, 0), kgIn: kg(({ from }, t) => from === t), kgOut: kg(({ to }, t) => to === t) }];
  });
}

function cheapestOfAll(order: ReturnOrder): number {
  const [first = [], second = [{ cost: 0, kgIn: [0, 0, 0, 0], kgOut: [0, 0, 0, 0] }]] = order.items.map(everyWay);
  const { truckKg = 1, tripCost = 0 } = order.trucks[0] ?? {};
  let least = Infinity;
  for (const one of first) {
    for (const other of second) {
      const trips = one.kgIn.map((kg, t) => Math.ceil(Math.max(kg + (other.kgIn[t] ?? 0), (one.kgOut[t] ?? 0) + (other.kgOut[t] ?? 0)) / truckKg));
      least = Math.min(least, one.cost + other.cost + tripCost * trips.reduce((sum, count) => sum + count, 0));
    }
  }
  return least;
}

describe("the return plan", () => {
  it("costs as little as the cheapest of all plans tried one by one", () => fc.assert(fc.asyncProperty(orders, async (order) => {
    const plan = await planned(order);
    expect(plan).toMatchObject({ cost: { total: cheapestOfAll(order) }, proven: true, gap: 0 });
  }), { numRuns: 40, seed: 11 }), 120_000);

  // The stock model of the notes: h brought, r taken away, s on site, n trips; solved by a general-purpose library, written apart from the planner.
  const counted = fc.record({
    truckKg: fc.integer({ min: 20, max: 60 }), tripCost: fc.integer({ min: 0, max: 400 }), handling: fc.integer({ min: 0, max: 5 }),
    items: fc.array(fc.record({ kg: fc.integer({ min: 1, max: 9 }), rate: fc.integer({ min: 1, max: 40 }), least: fc.integer({ min: 1, max: 3 }), demand: fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 5, maxLength: 5 }) }), { minLength: 1, maxLength: 2 }),
  });
  it("costs what another library finds for the stock model", () => fc.assert(fc.asyncProperty(counted, async (given) => {
    const dates = 5;
    const constraints: Record<string, Constraint> = {};
    const variables: Record<string, Record<string, number>> = {};
    const put = (variable: string, row: string, factor: number) => { variables[variable] = { ...variables[variable], [row]: factor }; };
    for (let t = 0; t <= dates; t += 1) {
      put(`n${t}`, "cost", given.tripCost);
      for (const way of ["in", "out"]) { constraints[`${way}${t}`] = { min: 0 }; put(`n${t}`, `${way}${t}`, given.truckKg); }
    }
    given.items.forEach(({ kg, rate, least, demand }, i) => {
      for (let t = 0; t <= dates; t += 1) {
        constraints[`balance${i},${t}`] = { equal: 0 };
        put(`r${i},${t}`, "cost", given.handling);
        put(`r${i},${t}`, `balance${i},${t}`, 1);
        put(`r${i},${t}`, `out${t}`, -kg);
        if (t > 0) put(`s${i},${t - 1}`, `balance${i},${t}`, -1);
        if (t === dates) continue;
        put(`s${i},${t}`, `balance${i},${t}`, 1);
        put(`s${i},${t}`, "cost", rate);
        put(`s${i},${t}`, `need${i},${t}`, 1);
        put(`s${i},${t}`, `least${i},${t}`, 1);
        put(`h${i},${t}`, "cost", given.handling);
        put(`h${i},${t}`, `balance${i},${t}`, -1);
        put(`h${i},${t}`, `in${t}`, -kg);
        constraints[`need${i},${t}`] = { min: demand[t] ?? 0, max: Math.max(...demand) };
        constraints[`least${i},${t}`] = { min: 0 };
        for (let u = Math.max(0, t - least + 1); u <= t; u += 1) put(`h${i},${u}`, `least${i},${t}`, -1);
      }
    });
    const other = solve({ direction: "minimize", objective: "cost", constraints, variables, integers: true }, { maxIterations: Infinity, timeout: 20_000 });
    const plan = await planned({
      dates, trucks: [{ truckKg: given.truckKg, tripCost: given.tripCost, mostTrips: null }], shared: [],
      items: given.items.map(({ kg, rate, least, demand }, i) => ({
        id: `i${i}`, truck: 0, unitKg: kg, handlingIn: given.handling, handlingOut: given.handling, demand, lots: [],
        hireCharge: demand.map((_, from) => Array.from({ length: dates + 1 }, (_, to) => (to >= Math.min(from + least, dates) && to > from ? rate * (to - from) : null))),
      })),
    });
    expect(other.status).toBe("optimal");
    expect(plan).toMatchObject({ cost: { total: Math.round(other.result) }, proven: true });
  }), { numRuns: 25, seed: 5 }), 120_000);
});
