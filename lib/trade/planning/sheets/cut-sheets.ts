import type { Asking } from "#lib/kernel/linear-model.ts";
import { brokenRule, ok, type Result } from "#lib/kernel/result.ts";
import { choosePatterns, raiseBound, startSearch } from "../patterns/choose-patterns.ts";
import { isClosed, offer, type Search } from "../patterns/dive.ts";
import { lineBound } from "./bounds/line-bound.ts";
import { sheetAreaBound } from "./bounds/sheet-area-bound.ts";
import { checkSheetOrder, type SheetOrder, type SheetPlan } from "./sheet-order.ts";
import { fullestSheets, sheetCutting, stripCutting } from "./sheet-patterns.ts";
import { sheetPlan } from "./sheet-plan.ts";
import { type SheetPattern, type SheetProblem, sheetProblem } from "./sheet-problem.ts";
import { lowerCost } from "./refitting/lower-cost.ts";
import { tightBlocks } from "./filling/tight-blocks.ts";

const MOST_BLOCKS = 20_000;
const MOST_FULL = 400;
const QUICK_DETOURS = 1;
// Beyond so many parts patterns chosen by prices come closer than parts fitted one by one.
const MOST_REFITTED = 300;
const QUICK_ROUNDS = 10_000;
const MOST_ROUNDS = 600_000;

/**
 * Panels from sheets at least cost, offcuts on the rack among them. A saw with few turns cuts strips, which are soon found;
 * then parts are taken out and fitted in again. Where it may turn as it likes, fitting comes first and whole blocks last.
 */
export function* cutSheets(order: SheetOrder): Asking<Result<SheetPlan>> {
  const checked = checkSheetOrder(order);
  if (!checked.ok) return checked;
  const problem = sheetProblem(order);
  const areaBound = sheetAreaBound(problem);
  const turnsFreely = problem.mostStages === Infinity;
  const rounds = problem.demand.reduce((sum, count) => sum + count, 0) > MOST_REFITTED ? 0 : MOST_ROUNDS;
  const search = startSearch(stripCutting(problem), [], areaBound);
  if (turnsFreely) yield* lowerCost(problem, search, Math.min(rounds, QUICK_ROUNDS));
  if (!isClosed(search)) raiseBound(search, yield* lineBound(problem, search.cost));
  if (turnsFreely) yield* lowerCost(problem, search, rounds);
  yield* choosePatterns(search, QUICK_DETOURS);
  if (!turnsFreely) {
    yield* lowerCost(problem, search, rounds);
    yield* choosePatterns(search);
  }
  if (!turnsFreely || isClosed(search)) return planned(order, problem, search, areaBound);
  const blocks = yield* tightBlocks(problem, MOST_BLOCKS);
  const whole = startSearch(sheetCutting(problem, blocks), [...search.pool.patterns, ...fullestSheets(problem, blocks, MOST_FULL)], search.bound);
  offer(whole, search.chosen);
  yield* choosePatterns(whole);
  return planned(order, problem, whole, areaBound);
}

const planned = (order: SheetOrder, problem: SheetProblem, search: Search<SheetPattern>, areaBound: number): Result<SheetPlan> =>
  search.cost === Infinity
    ? brokenRule("sheets-run-out", { parts: problem.demand.reduce((sum, count) => sum + count, 0) })
    : ok(sheetPlan(order, problem, search, areaBound));
