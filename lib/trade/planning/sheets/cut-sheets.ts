import type { Asking } from "#lib/kernel/linear-model.ts";
import { brokenRule, ok, type Result } from "#lib/kernel/result.ts";
import { choosePatterns, MOST_DETOURS, raiseBound, startSearch } from "../patterns/choose-patterns.ts";
import { isClosed, offer, type Search } from "../patterns/dive.ts";
import { lineBound } from "./bounds/line-bound.ts";
import { sheetAreaBound } from "./bounds/sheet-area-bound.ts";
import { checkSheetOrder, type SheetOrder, type SheetPlan } from "./sheet-order.ts";
import { fullestSheets, sheetCutting, stripCutting } from "./sheet-patterns.ts";
import { sheetPlan } from "./sheet-plan.ts";
import { type SheetPattern, type SheetProblem, sheetProblem } from "./sheet-problem.ts";
import { tightBlocks } from "./filling/tight-blocks.ts";

const MOST_BLOCKS = 20_000;
const MOST_FULL = 400;
const QUICK_DETOURS = 1;

/**
 * Panels from sheets at least cost, offcuts on the rack among them. Strips first, which are soon found and all that a saw
 * with few turns cuts; where it may turn as it likes, whole blocks after them.
 */
export function* cutSheets(order: SheetOrder): Asking<Result<SheetPlan>> {
  const checked = checkSheetOrder(order);
  if (!checked.ok) return checked;
  const problem = sheetProblem(order);
  const areaBound = sheetAreaBound(problem);
  const strips = startSearch(stripCutting(problem), [], areaBound);
  if (!isClosed(strips)) raiseBound(strips, yield* lineBound(problem, strips.cost));
  yield* choosePatterns(strips, problem.mostStages < Infinity ? MOST_DETOURS : QUICK_DETOURS);
  if (problem.mostStages < Infinity || isClosed(strips)) return planned(order, problem, strips, areaBound);
  const blocks = yield* tightBlocks(problem, MOST_BLOCKS);
  const search = startSearch(sheetCutting(problem, blocks), [...strips.pool.patterns, ...fullestSheets(problem, blocks, MOST_FULL)], strips.bound);
  offer(search, strips.chosen);
  yield* choosePatterns(search);
  return planned(order, problem, search, areaBound);
}

const planned = (order: SheetOrder, problem: SheetProblem, search: Search<SheetPattern>, areaBound: number): Result<SheetPlan> =>
  search.cost === Infinity
    ? brokenRule("sheets-run-out", { parts: problem.demand.reduce((sum, count) => sum + count, 0) })
    : ok(sheetPlan(order, problem, search, areaBound));
