import type { Asking } from "#lib/kernel/linear-model.ts";
import { brokenRule, ok, type Result } from "#lib/kernel/result.ts";
import { choosePatterns, startSearch } from "../patterns/choose-patterns.ts";
import { isClosed } from "../patterns/dive.ts";
import { sheetAreaBound } from "./sheet-area-bound.ts";
import { checkSheetOrder, type SheetOrder, type SheetPlan } from "./sheet-order.ts";
import { fullestSheets, sheetCutting } from "./sheet-patterns.ts";
import { sheetPlan } from "./sheet-plan.ts";
import { sheetProblem } from "./sheet-problem.ts";
import { tightBlocks } from "./filling/tight-blocks.ts";

const MOST_BLOCKS = 20_000;
const MOST_FULL = 400;

/** Panels from sheets at least cost, offcuts on the rack among them. */
export function* cutSheets(order: SheetOrder): Asking<Result<SheetPlan>> {
  const checked = checkSheetOrder(order);
  if (!checked.ok) return checked;
  const problem = sheetProblem(order);
  const areaBound = sheetAreaBound(problem);
  const fitted = startSearch(sheetCutting(problem, []), [], areaBound);
  if (isClosed(fitted)) return ok(sheetPlan(order, problem, fitted, areaBound));
  const blocks = yield* tightBlocks(problem, MOST_BLOCKS);
  const search = startSearch(sheetCutting(problem, blocks), fullestSheets(problem, blocks, MOST_FULL), areaBound);
  yield* choosePatterns(search);
  if (search.cost === Infinity) return brokenRule("sheets-run-out", { parts: problem.demand.reduce((sum, count) => sum + count, 0) });
  return ok(sheetPlan(order, problem, search, areaBound));
}
