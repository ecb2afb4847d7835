import { describe, expect, it } from "vitest";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { checkTimberPlan } from "#lib/trade/planning/timber/check-timber-plan.ts";
import { cutTimbers } from "#lib/trade/planning/timber/cut-timbers.ts";
import type { TimberOrder } from "#lib/trade/planning/timber/timber-order.ts";

/** One offcut of 1203 mm on the rack and new lengths of 2400; 3 mm of kerf, 20 mm off the end of a length nobody trimmed yet. */
const orderOf = (isTrimmed: boolean): TimberOrder => ({
  kerfMm: 3, endTrimMm: 20, keepFromMm: 500,
  stock: [{ id: "new", lengthMm: 2400, quantity: null, cost: 10 }, { id: "offcut", lengthMm: 1203, quantity: 1, cost: 0, isTrimmed }],
  parts: [{ id: "p", lengthMm: 600, quantity: 5 }],
});
const atOnce = (order: TimberOrder) => answerQuestions(cutTimbers(order), () => Promise.reject(new Error("No model to solve here")), { nowMs: () => 0, limitMs: 0 });

// Hand arithmetic, no source. Trimmed: 600 + 3 + 600 = 1203 out of the offcut, 3 x 600 + 2 x 3 = 1806 of 2380 out of one new length, 2380 - 3 x 603 = 571 left.
// Not trimmed: 1183 of the offcut hold one, so the fifth needs a second new length.
describe("an offcut of timber", () => {
  it("is not trimmed again, and saves the length it stands for", async () => {
    const order = orderOf(true);
    const plan = await atOnce(order);
    expect(plan).toMatchObject({ ok: true, value: { cost: 10, bound: 10, proven: true } });
    expect(plan.ok && checkTimberPlan(order, plan.value)).toEqual([]);
    expect(plan.ok && plan.value.layouts.map(({ stockId, count, cuts, offcutMm, kept }) => [stockId, count, cuts.length, offcutMm, kept])).toEqual([["offcut", 1, 2, 0, false], ["new", 1, 3, 571, true]]);
  });

  it("that nobody trimmed yields less", async () => {
    expect(await atOnce(orderOf(false))).toMatchObject({ ok: true, value: { cost: 20 } });
  });

  it("is held to its own length by the checker, which knows no stock but the order's", () => {
    const cut = { partId: "p", lengthMm: 600 };
    const layouts = [{ stockId: "offcut", count: 1, cuts: [cut, cut], offcutMm: 0, kept: false }, { stockId: "new", count: 1, cuts: [cut, cut, cut], offcutMm: 571, kept: true }];
    const plan = { layouts, cost: 10, bound: 0, gap: 0, proven: false, wasteMm: 0 };
    expect(checkTimberPlan(orderOf(true), plan)).toEqual([]);
    expect(checkTimberPlan(orderOf(false), plan).map(({ rule, value, limit }) => [rule, value, limit])).toEqual([["piece-length", 1203, 1183]]);
    expect(checkTimberPlan(orderOf(true), { ...plan, layouts: [{ ...layouts[0], stockId: "found", count: 1, cuts: [cut, cut], offcutMm: 0, kept: false }, ...layouts.slice(1)] }).map(({ rule }) => rule)).toContain("known-stock");
  });
});
