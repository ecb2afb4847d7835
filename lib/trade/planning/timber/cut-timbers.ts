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

/** The whole length asked for at the lowest price per length, of what is limited no more than there is. */
function materialCost(problem: TimberProblem): number {
  const wanted = problem.lengths.reduce((sum, size, length) => sum + size * (problem.demand[length] ?? 0), 0);
  const shortest = problem.lengths.at(-1) ?? 1;
  const byPrice = problem.stock.filter(({ room }) => room >= shortest).sort((a, b) => a.cost / a.room - b.cost / b.room);
  let [left, cost] = [wanted, 0];
  for (const { room, cost: each, supply } of byPrice) {
    const taken = supply === null ? left : Math.min(left, supply * room);
    cost += (taken / room) * each;
    left -= taken;
  }
  return cost;
}
