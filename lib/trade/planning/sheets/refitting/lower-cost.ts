import { type Asking, isTimeUp } from "#lib/kernel/linear-model.ts";
import { randomNumbers } from "#lib/kernel/random-numbers.ts";
import { wholeNumbers } from "../../patterns/choose-patterns.ts";
import { addPattern, type PatternPool } from "../../patterns/cutting-problem.ts";
import { isClosed, offer, type Search } from "../../patterns/dive.ts";
import { shapesByType } from "../fitting/guillotine-fit.ts";
import type { SheetPattern, SheetProblem } from "../sheet-problem.ts";
import { refit } from "./refit.ts";
import { asPattern, seenSheets } from "./seen-sheets.ts";
import { emptySet } from "./sheet-set.ts";

const SEED = 1;
const FIRST_ROUNDS = 4_000;
const GROWTH = 1.5;
const LESS_FULL = 0.03;
// Sheets mostly cut more than once the same way, which is soon searched and begun again, and each sheet for itself.
const RUNS = [{ repeats: 0.9, share: 0.25 }, { repeats: 0.9, share: 0.25 }, { repeats: 0.9, share: 0.5 }, { repeats: 0, share: 1 }];

/**
 * Lowers the cost step by step: for a goal below it looks for sheets that hold every part, then for the best mix of all
 * the full sheets seen on the way. Halfway to the bound first, and each time it fails nearer to the cost and for longer,
 * until `mostRounds` were spent at once.
 */
export function* lowerCost(problem: SheetProblem, search: Search<SheetPattern>, mostRounds: number): Asking<void> {
  const random = randomNumbers(SEED);
  const shapesOf = shapesByType(problem);
  let hope = 0.5;
  for (let rounds = FIRST_ROUNDS; rounds <= mostRounds && !isClosed(search) && !(yield* isTimeUp());) {
    const goal = goalOf(search, hope);
    const seen = seenSheets(problem, random, fullAt(problem, goal) - LESS_FULL);
    const before = search.cost;
    const runs = problem.demand.some((count) => count > 1) ? RUNS : RUNS.filter(({ repeats }) => repeats === 0);
    for (const { repeats, share } of runs) {
      if (search.cost < before) break;
      const set = yield* refit({ problem, shapesOf, random, goal, repeats }, emptySet(problem), rounds * share, seen.see);
      if (set.leftArea === 0) offer(search, set.sheets.map((sheet) => ({ pattern: asPattern(problem, sheet), copies: sheet.copies })));
    }
    if (search.cost === before) yield* wholeNumbers(search, poolOf(search, seen.patterns()));
    if (search.cost < before) continue;
    if (goal < search.cost - search.costStep) hope /= 2;
    else rounds *= GROWTH;
  }
}

const goalOf = ({ cost, bound, costStep }: Search<SheetPattern>, hope: number): number =>
  Math.max(bound, cost - costStep * Math.max(1, Math.floor((hope * (cost - bound)) / costStep)));

/** What share of the sheets the parts take where they cost just that much. */
function fullAt({ stock, areas, demand }: SheetProblem, cost: number): number {
  const wanted = areas.reduce((sum, area, type) => sum + area * (demand[type] ?? 0), 0);
  return wanted / (cost * Math.max(...stock.map((sheet) => (sheet.w * sheet.h) / sheet.cost)));
}

function poolOf({ chosen }: Search<SheetPattern>, patterns: readonly SheetPattern[]): PatternPool<SheetPattern> {
  const pool: PatternPool<SheetPattern> = { patterns: [], known: new Set(), basis: null };
  for (const pattern of [...chosen.map((choice) => choice.pattern), ...patterns]) addPattern(pool, pattern);
  return pool;
}
