import { describe, expect, it } from "vitest";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { solveModel } from "#lib/solver/solve-model.mjs";
import { checkSheetPlan } from "#lib/trade/planning/sheets/check-sheet-plan.ts";
import { cutSheets } from "#lib/trade/planning/sheets/cut-sheets.ts";
import { cutsByStage } from "#lib/trade/planning/sheets/cut-stages.ts";
import type { SheetOrder } from "#lib/trade/planning/sheets/sheet-order.ts";

const ask = async (order: SheetOrder) => {
  const plan = await answerQuestions(cutSheets(order), (question, limitMs) => Promise.resolve(solveModel(question, limitMs)), { nowMs: () => performance.now(), limitMs: 5_000 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  expect(checkSheetPlan(order, plan.value)).toEqual([]);
  return plan.value;
};
const order = (parts: readonly (readonly [widthMm: number, heightMm: number, quantity: number])[], change: Partial<SheetOrder> = {}): SheetOrder => ({
  kerfMm: 0, mostStages: 3, keepFrom: { longMm: 600, shortMm: 200 },
  sheets: [{ id: "s", widthMm: 2400, heightMm: 1200, trimMm: 0, quantity: null, cost: 1 }],
  parts: parts.map(([widthMm, heightMm, quantity], index) => ({ id: `p${index}`, widthMm, heightMm, quantity, mayTurn: false })),
  ...change,
});

// Hand arithmetic, no source: what fits on a 2400 x 1200 sheet can be counted.
describe("no plan can use fewer", () => {
  it.each([
    // 1300 + 1300 > 2400 and 700 + 700 > 1200: one to a sheet, though by area 5 x 0.91 m2 would go on 2 sheets of 2.88 m2.
    ["large panels", [[1300, 700, 5]], 5],
    // One along 2400, and 500 + 700 = 1200 across it: 4 pairs, and 2 of 700 left that find no partner.
    ["full-length panels", [[2400, 500, 4], [2400, 700, 6]], 6],
    // Three rows of 400 by two of 1000, since 2 x 1000 <= 2400 < 3 x 1000: six to a sheet, 13 panels need 3; by area 2.
    ["panels that leave an end", [[1000, 400, 13]], 3],
  ] as const)("%s", async (_, parts, sheets) => {
    expect(await ask(order(parts))).toMatchObject({ cost: sheets, bound: sheets, proven: true });
  });
});

describe("the order of the saw", () => {
  it("has every piece on the bench when its turn comes, and turns no more than asked", async () => {
    const asked = order([[2000, 350, 2], [900, 420, 3], [610, 300, 5], [450, 180, 4]], { kerfMm: 4, sheets: [{ id: "s", widthMm: 2440, heightMm: 1220, trimMm: 10, quantity: null, cost: 1 }] });
    const plan = await ask(asked);
    for (const layout of plan.layouts) {
      const cuts = cutsByStage(asked.sheets[0] ?? { id: "", widthMm: 0, heightMm: 0, trimMm: 0, quantity: 0, cost: 0 }, layout);
      expect(cuts.map(({ stage }) => stage)).toEqual(cuts.map(({ stage }) => stage).sort());
      expect(cuts.filter(({ stage }) => stage === 0)).toHaveLength(4);
      expect(Math.max(...cuts.map(({ stage }) => stage))).toBeLessThanOrEqual(3);
      expect(checkSheetPlan(asked, { ...plan, layouts: plan.layouts.map((each) => (each === layout ? { ...each, cuts } : each)) })).toEqual([]);
    }
  });

  it("is found to turn too often where it does", async () => {
    // A ring of four strips round a block cannot be sawn at all; cut in two by hand, the inner cuts turn four times.
    const plan = await ask(order([[2400, 600, 1], [1200, 600, 1], [1200, 300, 1], [600, 300, 1], [600, 150, 2]], { mostStages: null }));
    expect(plan.cost).toBe(1);
    const rules = checkSheetPlan({ ...order([[2400, 600, 1], [1200, 600, 1], [1200, 300, 1], [600, 300, 1], [600, 150, 2]]), mostStages: 3 }, plan).map(({ rule }) => rule);
    expect(rules.every((rule) => rule === "stages")).toBe(true);
  });
});
