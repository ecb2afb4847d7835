import type { RandomNumbers } from "#lib/kernel/random-numbers.ts";
import { withinStages } from "../filling/piece.ts";
import { sheetPattern } from "../fitting/guillotine-fit.ts";
import type { SheetPattern, SheetProblem } from "../sheet-problem.ts";
import { parts, pieceOf } from "./branch.ts";
import type { Filled } from "./sheet-set.ts";

const MOST_KEPT = 1_500;
const NUMBERS_TO = 2 ** 40;

/** The fullest sheets a search goes through, each filling once. */
export type SeenSheets = { readonly see: (sheet: Filled) => void; readonly patterns: () => SheetPattern[] };

/** `leastFull`: share of the sheet that parts take; what is emptier is not kept. */
export function seenSheets(problem: SheetProblem, random: RandomNumbers, leastFull: number): SeenSheets {
  const numbers = problem.demand.map(() => Math.floor(random() * NUMBERS_TO));
  const kept = new Map<number, Filled>();
  const fullness = ({ stock, used }: Filled): number => { const { w = 1, h = 1 } = problem.stock[stock] ?? {}; return used / (w * h); };
  const thin = (): void => {
    const fullest = [...kept].sort(([, a], [, b]) => fullness(b) - fullness(a)).slice(0, MOST_KEPT);
    kept.clear();
    for (const [key, sheet] of fullest) kept.set(key, sheet);
  };
  return {
    see: (sheet) => {
      if (fullness(sheet) < leastFull) return;
      const key = parts(sheet.root).reduce((sum, { shape }) => sum + (numbers[shape?.type ?? -1] ?? 0), sheet.stock);
      if (!kept.has(key)) kept.set(key, sheet);
      if (kept.size > 2 * MOST_KEPT) thin();
    },
    patterns: () => {
      thin();
      return [...kept.values()].map((sheet) => asPattern(problem, sheet));
    },
  };
}

export function asPattern(problem: SheetProblem, { stock, root }: Filled): SheetPattern {
  const { w = 0, h = 0 } = problem.stock[stock] ?? {};
  const piece = withinStages(pieceOf(root), w, h, problem.mostStages);
  if (!piece) throw new RangeError(`More than ${problem.mostStages} turns of the saw`);
  return sheetPattern(stock, piece);
}
