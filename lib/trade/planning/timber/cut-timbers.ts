import type { Asking } from "#lib/kernel/linear-model.ts";
import { brokenRule, ok, type Result } from "#lib/kernel/result.ts";
import { choosePatterns, startSearch } from "../patterns/choose-patterns.ts";
import { checkTimberOrder, type TimberOrder, type TimberPlan } from "./timber-order.ts";
import { plainPatterns, timberCutting } from "./timber-patterns.ts";
import { timberPlan } from "./timber-plan.ts";
import { type TimberProblem, timberProblem } from "./timber-problem.ts";

/** Timbers from stock lengths at least cost, offcuts on the rack among them. */
export function* cutTimbers(order: TimberOrder): Asking<Result<TimberPlan>> {
  const checked = checkTimberOrder(order);
  if (!checked.ok) return checked;
  const problem = timberProblem(order);
  const search = startSearch(timberCutting(problem), plainPatterns(problem), materialCost(problem));
  yield* choosePatterns(search);
  if (search.cost === Infinity) return brokenRule("stock-runs-out", { parts: problem.demand.reduce((sum, count) => sum + count, 0) });
  return ok(timberPlan(order, problem, search));
}

/** The whole length asked for, at the lowest price per length there is. */
function materialCost(problem: TimberProblem): number {
  const wanted = problem.lengths.reduce((sum, size, length) => sum + size * (problem.demand[length] ?? 0), 0);
  return wanted === 0 ? 0 : wanted * Math.min(...problem.stock.map((stock) => stock.cost / Math.max(1, stock.room)));
}
