import { describe, expect, it } from "vitest";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { randomNumbers } from "#lib/kernel/random-numbers.ts";
import { shapesByType } from "#lib/trade/planning/sheets/fitting/guillotine-fit.ts";
import { countParts } from "#lib/trade/planning/sheets/filling/piece.ts";
import { refit } from "#lib/trade/planning/sheets/refitting/refit.ts";
import { asPattern } from "#lib/trade/planning/sheets/refitting/seen-sheets.ts";
import { emptySet } from "#lib/trade/planning/sheets/refitting/sheet-set.ts";
import { sheetProblem } from "#lib/trade/planning/sheets/sheet-problem.ts";

type Part = readonly [widthMm: number, heightMm: number, quantity: number];
const problemOf = (parts: readonly Part[], kerfMm = 0) => sheetProblem({
  kerfMm, mostStages: null, keepFrom: { longMm: 600, shortMm: 200 },
  sheets: [{ id: "s", widthMm: 2400, heightMm: 1200, trimMm: 0, quantity: null, cost: 1 }],
  parts: parts.map(([widthMm, heightMm, quantity], index) => ({ id: `p${index}`, widthMm, heightMm, quantity, mayTurn: false })),
});
const refitted = (parts: readonly Part[], goal: number, repeats = 0, kerfMm = 0) => {
  const problem = problemOf(parts, kerfMm);
  const task = { problem, shapesOf: shapesByType(problem), random: randomNumbers(5), goal, repeats };
  const unasked = () => Promise.reject(new Error("No model to solve here"));
  return answerQuestions(refit(task, emptySet(problem), 3_000, () => undefined), unasked, { nowMs: () => 0, limitMs: 1 }).then((set) => ({ set, problem }));
};

// Hand arithmetic, no source: sheets of 2400 x 1200 cut into parts that leave nothing.
const NO_WASTE: readonly Part[] = [[1500, 700, 1], [900, 700, 1], [800, 500, 1], [1600, 300, 1], [1000, 200, 1], [600, 200, 1]];

describe("parts taken out and fitted in again", () => {
  it("fill a sheet to the last millimetre", async () => {
    // 700 high: 1500 + 900 = 2400. 500 high: 800 beside 1600, which is 300 high over 1000 + 600 of 200.
    const { set } = await refitted(NO_WASTE, 1);
    expect(set.leftArea).toBe(0);
    expect(set.sheets).toHaveLength(1);
  });

  it("are found on equal sheets cut the same way, where there are so many of each", async () => {
    const { set } = await refitted(NO_WASTE.map(([w, h]) => [w, h, 4]), 4, 1);
    expect(set.leftArea).toBe(0);
    expect(set.sheets.map(({ copies }) => copies)).toEqual([4]);
  });

  it("leave out what the goal has no room for, with the kerf counted", async () => {
    // 1500 + 900 with a kerf of 3 needs 2403: no longer all on one sheet.
    const { set } = await refitted(NO_WASTE, 1, 0, 3);
    expect(set.leftArea).toBeGreaterThan(0);
    expect(set.cost).toBeLessThanOrEqual(1);
  });

  it("are each on a sheet or left, and what is on a sheet can be sawn from it", async () => {
    const parts: Part[] = [[1100, 640, 3], [730, 410, 5], [520, 380, 6], [333, 270, 7]];
    const { set, problem } = await refitted(parts, 3, 0.5, 4);
    const placed = problem.demand.map(() => 0);
    for (const sheet of set.sheets) {
      const { piece } = asPattern(problem, sheet);
      expect([piece.w, piece.h]).toEqual([2404, 1204]);
      for (const [type, count] of countParts(piece)) placed[type] = (placed[type] ?? 0) + count * sheet.copies;
    }
    expect(placed.map((count, type) => count + (set.left[type] ?? 0))).toEqual(problem.demand);
  });
});

describe("numbers at random", () => {
  it("are the same for the same seed, others for another, and spread evenly from 0 to 1", () => {
    const drawn = (seed: number) => { const next = randomNumbers(seed); return Array.from({ length: 10_000 }, next); };
    expect(drawn(7)).toEqual(drawn(7));
    expect(drawn(8)).not.toEqual(drawn(7));
    // Tenths of 10 000 even draws: 1000 each, give or take four times sqrt(10 000 x 0.1 x 0.9) = 30.
    const tenths = drawn(7).reduce((counts, number) => { const tenth = Math.floor(number * 10); return counts.map((count, index) => count + (index === tenth ? 1 : 0)); }, Array.from({ length: 10 }, () => 0));
    expect(Math.max(...tenths.map((count) => Math.abs(count - 1_000)))).toBeLessThan(120);
  });
});
