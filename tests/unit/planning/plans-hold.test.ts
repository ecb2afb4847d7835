import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import type { Asking } from "#lib/kernel/linear-model.ts";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { createSolverPool } from "#lib/solver/solver-pool.ts";
import { checkReusePlan } from "#lib/trade/planning/reuse/check-reuse-plan.ts";
import { planReuse } from "#lib/trade/planning/reuse/plan-reuse.ts";
import { checkSheetPlan } from "#lib/trade/planning/sheets/check-sheet-plan.ts";
import { cutSheets } from "#lib/trade/planning/sheets/cut-sheets.ts";
import { checkTimberPlan } from "#lib/trade/planning/timber/check-timber-plan.ts";
import { cutTimbers } from "#lib/trade/planning/timber/cut-timbers.ts";

const pool = createSolverPool(1);
afterAll(() => pool.close());
const solved = <T>(asking: Asking<T>): Promise<T> => answerQuestions(asking, pool.solve, { nowMs: () => performance.now(), limitMs: 300 });
const RUNS = { numRuns: 25, seed: 7 };

const timbers = fc.record({
  kerfMm: fc.integer({ min: 0, max: 6 }), endTrimMm: fc.integer({ min: 0, max: 30 }), keepFromMm: fc.constant(400),
  stock: fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 4 })).map(([cost, quantity]) => [
    { id: "new", lengthMm: 4800, quantity: null, cost: 40 + cost }, { id: "rack", lengthMm: 1900, quantity, cost },
  ]),
  parts: fc.array(fc.record({ lengthMm: fc.integer({ min: 200, max: 4700 }), quantity: fc.integer({ min: 0, max: 6 }) }), { minLength: 1, maxLength: 7 })
    .map((rows) => rows.map((row, index) => ({ ...row, id: `p${index}` }))),
});

const sheets = fc.record({
  kerfMm: fc.integer({ min: 0, max: 5 }), mostStages: fc.constantFrom(3, 4, null), keepFrom: fc.constant({ longMm: 600, shortMm: 200 }),
  sheets: fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 0, max: 3 })).map(([trimMm, quantity]) => [
    { id: "new", widthMm: 2400, heightMm: 1200, trimMm, quantity: null, cost: 90 }, { id: "rack", widthMm: 1300, heightMm: 700, trimMm: 0, quantity, cost: 5 },
  ]),
  parts: fc.array(fc.record({ widthMm: fc.integer({ min: 150, max: 1150 }), heightMm: fc.integer({ min: 150, max: 1150 }), quantity: fc.integer({ min: 0, max: 4 }), mayTurn: fc.boolean() }), { minLength: 1, maxLength: 6 })
    .map((rows) => rows.map((row, index) => ({ ...row, id: `p${index}` }))),
});

const size = fc.record({ widthMm: fc.integer({ min: 3, max: 6 }).map((n) => n * 100), heightMm: fc.constantFrom(1800, 2400), thicknessMm: fc.constant(17), place: fc.constantFrom("L1", "L2") });
const named = <T extends object>(rows: T[], letter: string) => rows.map((row, index) => ({ ...row, id: `${letter}${index}` }));
const reuse = fc.record({
  newPerM2: fc.constant(4200), recutEach: fc.constant(600), newPanelUses: fc.option(fc.integer({ min: 1, max: 4 })), carry: fc.constant([{ from: "L1", to: "L2", each: 150 }]),
  panels: fc.array(fc.tuple(size, fc.record({ readyDay: fc.integer({ min: 0, max: 10 }), usesLeft: fc.option(fc.integer({ min: 0, max: 4 })) })).map(([a, b]) => ({ ...a, ...b })), { maxLength: 6 }).map((rows) => named(rows, "p")),
  demands: fc.array(fc.tuple(size, fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 5 }), fc.boolean()).map(([a, startDay, days, mayTurn]) => ({ ...a, startDay, backDay: startDay + days, mayTurn })), { minLength: 1, maxLength: 14 }).map((rows) => named(rows, "d")),
});

describe("any order", () => {
  it("gets a timber plan that holds, twice the same", () => fc.assert(fc.asyncProperty(timbers, async (order) => {
    const [plan, again] = [await solved(cutTimbers(order)), await solved(cutTimbers({ ...order, parts: [...order.parts].reverse() }))];
    if (!plan.ok) return expect(plan.failure).toMatchObject({ kind: "rule", code: "part-longer-than-stock" });
    expect(checkTimberPlan(order, plan.value)).toEqual([]);
    if (plan.value.proven && again.ok && again.value.proven) expect(again.value.cost).toBe(plan.value.cost);
  }), RUNS), 60_000);

  it("gets a sheet plan that can be sawn", () => fc.assert(fc.asyncProperty(sheets, async (order) => {
    const plan = await solved(cutSheets(order));
    if (!plan.ok) return expect(plan.failure).toMatchObject({ kind: "rule" });
    expect(checkSheetPlan(order, plan.value)).toEqual([]);
  }), RUNS), 60_000);

  it("gets a reuse plan that holds and is proven", () => fc.assert(fc.asyncProperty(reuse, async (order) => {
    const plan = await solved(planReuse(order));
    expect(plan.ok && checkReusePlan(order, plan.value)).toEqual([]);
    expect(plan.ok && plan.value.bound <= plan.value.cost).toBe(true);
  }), RUNS), 60_000);
});

describe("a wrong order or plan", () => {
  const order = { kerfMm: 3, mostStages: null, keepFrom: { longMm: 600, shortMm: 200 }, sheets: [{ id: "s", widthMm: 2400, heightMm: 1200, trimMm: 0, quantity: null, cost: 1 }], parts: [{ id: "p", widthMm: 700, heightMm: 500, quantity: 2, mayTurn: false }] };

  it("is refused with the reason", async () => {
    const [part] = order.parts;
    expect(await solved(cutSheets({ ...order, parts: [{ id: "p", widthMm: 2500, heightMm: 500, quantity: 1, mayTurn: true }] }))).toMatchObject({ ok: false, failure: { code: "part-larger-than-sheet" } });
    expect(await solved(cutSheets({ ...order, parts: [{ id: "p", widthMm: 700, heightMm: 500, quantity: -1, mayTurn: true }] }))).toMatchObject({ ok: false, failure: { kind: "invalid" } });
    expect(part).toBeDefined();
  });

  it("is found by the checker", async () => {
    const plan = await solved(cutSheets(order));
    if (!plan.ok) throw new Error("No plan");
    const moved = { ...plan.value, layouts: plan.value.layouts.map((layout) => ({ ...layout, parts: layout.parts.map((part) => ({ ...part, x: part.x + 1 })) })) };
    expect(checkSheetPlan(order, moved).map((breach) => breach.rule)).toContain("sawn-out");
    const missing = { ...plan.value, layouts: plan.value.layouts.map((layout) => ({ ...layout, parts: layout.parts.slice(1) })) };
    expect(checkSheetPlan(order, missing).map((breach) => breach.rule)).toContain("parts-cut");
  });
});
