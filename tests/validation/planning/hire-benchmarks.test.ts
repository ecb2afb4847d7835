import { afterAll, describe, expect, it } from "vitest";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { createSolverPool } from "#lib/solver/solver-pool.ts";
import { checkReturnPlan } from "#lib/trade/planning/returns/check-return-plan.ts";
import { justInTime } from "#lib/trade/planning/returns/habits.ts";
import { planReturns } from "#lib/trade/planning/returns/plan-returns.ts";
import { haveHireBenchmarks, hireInstance, hireKnown } from "#tests/bench/parts/hire-benchmarks.ts";

// Optima in bks.json beside the instances, each proved by two independent solvers; the larger ones are run by the bench.
const QUICK = new Set(["hire_1"]);
const pool = createSolverPool(1);
afterAll(() => pool.close());

if (!haveHireBenchmarks) {
  it("not run: ../shared/benchmarks/hire absent", () => expect(haveHireBenchmarks).toBe(false));
} else {
  describe("hire instances of known optimum", () => {
    it.each(hireKnown().filter(([name]) => QUICK.has(name)))("%s is solved to it, with proof", async (_, { file, ub }) => {
      const order = hireInstance(file);
      const plan = await answerQuestions(planReturns(order), pool.solve, { nowMs: () => performance.now(), limitMs: 60_000 });
      expect(plan.ok && checkReturnPlan(order, plan.value)).toEqual([]);
      expect(plan.ok && plan.value).toMatchObject({ cost: { total: ub }, bound: ub, proven: true });
    }, 90_000);

    it.each(hireKnown())("%s costs by habit what is noted there", (_, { file, justInTimePolicy }) => expect(justInTime(hireInstance(file))?.cost.total).toBe(justInTimePolicy));
  });
}
