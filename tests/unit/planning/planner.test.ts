import { afterEach, describe, expect, it } from "vitest";
import { createPlanner, type Planner } from "#lib/solver/planner.ts";
import { checkTimberPlan } from "#lib/trade/planning/timber/check-timber-plan.ts";

const order = (quantity: number) => ({
  kerfMm: 0, endTrimMm: 0, keepFromMm: 300, stock: [{ id: "s", lengthMm: 1000, quantity: null, cost: 1 }],
  parts: [{ id: "long", lengthMm: 600, quantity }, { id: "short", lengthMm: 400, quantity }],
});
let planner: Planner | null = null;
afterEach(async () => planner?.close());

describe("the planner", () => {
  it("works a plan out in its worker and gives the same order the plan it has", async () => {
    planner = createPlanner({ mostWaiting: 2, mostKept: 4 });
    const [first, again] = await Promise.all([planner.plan("timbers", order(3), 2_000), planner.plan("timbers", order(3), 2_000)]);
    // 600 + 400 = 1000: each pair is one length.
    expect(first).toMatchObject({ kind: "plan", plan: { ok: true, value: { cost: 3, bound: 3, proven: true } } });
    expect(again.kind === "plan" && first.kind === "plan" && again.plan === first.plan).toBe(true);
    expect(first.kind === "plan" && first.plan.ok && checkTimberPlan(order(3), first.plan.value)).toEqual([]);
  }, 30_000);

  it("says so when too many wait", async () => {
    const own = planner = createPlanner({ mostWaiting: 1, mostKept: 4 });
    const kinds = (await Promise.all([3, 4, 5].map((quantity) => own.plan("timbers", order(quantity), 2_000)))).map(({ kind }) => kind);
    expect(kinds).toEqual(["plan", "plan", "busy"]);
  }, 30_000);

  it("passes on what the order breaks", async () => {
    planner = createPlanner({ mostWaiting: 1, mostKept: 4 });
    const planned = await planner.plan("timbers", { ...order(1), parts: [{ id: "p", lengthMm: 1001, quantity: 1 }] }, 2_000);
    expect(planned).toMatchObject({ kind: "plan", plan: { ok: false, failure: { code: "part-longer-than-stock" } } });
  }, 30_000);
});
