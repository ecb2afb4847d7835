import { describe, expect, it } from "vitest";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { checkTimberPlan } from "#lib/trade/planning/timber/check-timber-plan.ts";
import { cutTimbers } from "#lib/trade/planning/timber/cut-timbers.ts";

const orderOf = (parts: readonly (readonly [lengthMm: number, quantity: number])[], quantity: number | null = null) => ({
  kerfMm: 0, endTrimMm: 0, keepFromMm: 600,
  stock: [{ id: "new", lengthMm: 4800, quantity, cost: 1 }],
  parts: parts.map(([lengthMm, count], index) => ({ id: `p${index}`, lengthMm, quantity: count })),
});
/** No time for a model: what the first look at the lengths finds. */
const atOnce = (order: ReturnType<typeof orderOf>) =>
  answerQuestions(cutTimbers(order), () => Promise.reject(new Error("No model to solve here")), { nowMs: () => 0, limitMs: 0 });

// Hand arithmetic, no source: 2200 + 1400 + 1200 = 2000 + 1400 + 1400 = 4800; the longest that fits first takes 2200 + 2000, then 3 x 1400, then 1200.
const LEAVES_NOTHING = [[2200, 1], [2000, 1], [1400, 3], [1200, 1]] as const;

describe("timbers cut without time to search", () => {
  it("are filled with what leaves least, not with the longest that fits", async () => {
    const order = orderOf(LEAVES_NOTHING);
    const plan = await atOnce(order);
    expect(plan).toMatchObject({ ok: true, value: { cost: 2, proven: true } });
    expect(plan.ok && checkTimberPlan(order, plan.value)).toEqual([]);
  });

  it("are served from a stock that just holds out, and refused from one that does not", async () => {
    expect(await atOnce(orderOf(LEAVES_NOTHING, 2))).toMatchObject({ ok: true, value: { cost: 2 } });
    expect(await atOnce(orderOf(LEAVES_NOTHING, 1))).toMatchObject({ ok: false, failure: { code: "stock-runs-out" } });
  });
});
