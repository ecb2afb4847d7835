import { type Asking, isTimeUp } from "#lib/kernel/linear-model.ts";
import { randomNumbers } from "#lib/kernel/random-numbers.ts";
import { wholeNumbers } from "../../patterns/choose-patterns.ts";
import { addPattern, type PatternPool } from "../../patterns/cutting-problem.ts";
import { isClosed, offer, type Search } from "../../patterns/dive.ts";
import { shapesByType } from "../fitting/guillotine-fit.ts";
import type { SheetPattern, SheetProblem } from "../sheet-problem.ts";
import { refit } from "./refit.ts";
import { asPattern, seenSheets } from "./seen-sheets.ts";
import { eachQuantityApart } from "./quantities-apart.ts";
import { emptySet } from "./sheet-set.ts";

const SEED = 1;
const FIRST_ROUNDS = 4_000;
const GROWTH = 4;
const MOST_IN_ONE = 64_000;
const LESS_FULL = 0.03;
// How often a new sheet is one of several cut the same way, where such sheets are looked for.
const OFTEN = 0.9;
const LOOK_MS = 400;

/**
 * Lowers the cost step by step: for a goal below it looks for sheets that hold every part, then for the best mix of all
 * the full sheets seen on the way. Halfway to the bound first, and each time it fails nearer to the cost and for longer,
 * until `mostRounds` were spent.
 */
export function* lowerCost(problem: SheetProblem, search: Search<SheetPattern>, mostRounds: number): Asking<void> {
  const random = randomNumbers(SEED);
  const shapesOf = shapesByType(problem);
  const isRepeated = problem.demand.some((count) => count > 1);
  let hope = 0.5;
  let rounds = FIRST_ROUNDS;
  for (let spent = 0; spent < mostRounds && !isClosed(search) && !(yield* isTimeUp()); spent += rounds) {
    const goal = goalOf(search, hope);
    const seen = seenSheets(problem, random, fullAt(problem, goal) - LESS_FULL);
    const before = search.cost;
    const task = { problem, shapesOf, random, goal };
    const from = isRepeated ? yield* eachQuantityApart({ ...task, repeats: 1 }, rounds / 2, seen.see) : emptySet(problem);
    for (const repeats of isRepeated ? [OFTEN, 0] : [0]) {
      if (search.cost < before) break;
      const set = yield* refit({ ...task, repeats }, repeats > 0 ? from : emptySet(problem), rounds, seen.see);
      if (set.leftArea === 0) offer(search, set.sheets.map((sheet) => ({ pattern: asPattern(problem, sheet), copies: sheet.copies })));
    }
    if (search.cost === before) yield* wholeNumbers(search, LOOK_MS, poolOf(search, seen.patterns()));
    if (search.cost < before) continue;
    if (goal < search.cost - search.costStep) hope /= 2;
    else rounds = Math.min(MOST_IN_ONE, rounds * GROWTH);
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
