import { afterAll, describe, expect, it } from "vitest";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { createSolverPool } from "#lib/solver/solver-pool.ts";
import type { Asking } from "#lib/kernel/linear-model.ts";
import { assign } from "#lib/trade/planning/reuse/assignment.ts";
import { checkReusePlan } from "#lib/trade/planning/reuse/check-reuse-plan.ts";
import { planReuse } from "#lib/trade/planning/reuse/plan-reuse.ts";
import { checkSheetPlan } from "#lib/trade/planning/sheets/check-sheet-plan.ts";
import { cutSheets } from "#lib/trade/planning/sheets/cut-sheets.ts";
import { fillOneSheet } from "#lib/trade/planning/sheets/fill-one-sheet.ts";
import { checkTimberPlan } from "#lib/trade/planning/timber/check-timber-plan.ts";
import { cutTimbers } from "#lib/trade/planning/timber/cut-timbers.ts";
import { costMatrix, haveBenchmarks, knownValues, rawSheets, reuseInstance, sheetInstance, timberInstance } from "#tests/bench/parts/cutting-benchmarks.ts";

// Best known values: published sets (Falkenauer 1996, Scholl-Klein-Juergens 1997, Cintra et al. 2008, OR-Library and others), listed with their origin in bks.json beside them.
const QUICK_1D = new Set(["falkenauer_t60_00", "falkenauer_t60_11", "falkenauer_u500_09", "timber_1", "timber_3"]);
const pool = createSolverPool(1);
afterAll(() => pool.close());
const solved = <T>(asking: Asking<T>): Promise<T> => answerQuestions(asking, pool.solve, { nowMs: () => performance.now(), limitMs: 10_000 });

if (!haveBenchmarks) {
  it("not run: ../shared/benchmarks absent", () => expect(haveBenchmarks).toBe(false));
} else {
  describe("published cutting and assignment instances, the quick ones", () => {
    it.each(knownValues("cut1d").filter(([name]) => QUICK_1D.has(name)))("timber %s at the best known value", async (_, known) => {
      const order = timberInstance(known.file);
      const plan = await solved(cutTimbers(order));
      expect(plan.ok && checkTimberPlan(order, plan.value)).toEqual([]);
      expect(plan.ok && plan.value.cost).toBeLessThanOrEqual(known.ub);
    }, 20_000);

    it.each(knownValues("cut2d").filter(([, known]) => known.kind === "knap"))("one sheet %s at the optimum", (_, known) => {
      const { sheets, items, kerf } = rawSheets(known.file);
      const parts = items.map((row) => ({ widthMm: row.w, heightMm: row.h, value: row.value, most: row.qty }));
      expect(fillOneSheet(sheets[0]?.w ?? 0, sheets[0]?.h ?? 0, kerf, parts).value).toBe(known.optimum);
    });

    it.each(knownValues("cut2d").filter(([name]) => name === "vscsp_gcut1d"))("sheets %s within 1 %", async (_, known) => {
      const order = sheetInstance(known.file, true);
      const plan = await solved(cutSheets(order));
      expect(plan.ok && checkSheetPlan(order, plan.value)).toEqual([]);
      expect(plan.ok && plan.value.cost / known.freeGuillotineRotation.ub).toBeLessThanOrEqual(1.01);
    }, 20_000);

    // Optimum by construction (fill 0.992) and a best known value of Martello and Vigo 1998.
    it("sheets ply_3 at the optimum, and one of single parts at the best known", async () => {
      for (const [name, known] of knownValues("cut2d").filter(([name]) => ["ply_3", "bpp_c07_n60_i6"].includes(name))) {
        const order = sheetInstance(known.file, true);
        const plan = await solved(cutSheets(order));
        expect(plan.ok && checkSheetPlan(order, plan.value), name).toEqual([]);
        expect(plan.ok && plan.value.cost, name).toBeLessThanOrEqual(known.kind === "ply" ? known.optimum : known.rotation.ub);
      }
    }, 40_000);

    it.each(knownValues("assign"))("assignment %s at the optimum", async (_, known) => {
      if (known.kind === "orlib") {
        const costs = costMatrix(known.file);
        expect(assign(costs, costs.length)?.cost).toBe(known.optimum);
        return;
      }
      const order = reuseInstance(known.file);
      const plan = await solved(planReuse(order));
      expect(plan.ok && checkReusePlan(order, plan.value)).toEqual([]);
      expect(plan.ok && plan.value).toMatchObject({ cost: known.optimum, bound: known.optimum, proven: true });
    });
  });
}
