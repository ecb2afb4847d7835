import { type Asking, askFor, isTimeUp } from "#lib/kernel/linear-model.ts";
import { brokenRule, ok, type Result } from "#lib/kernel/result.ts";
import { type Choice, dive, isClosed, offer, type Search } from "./dive.ts";
import { firstFit } from "./first-fit.ts";
import { generatePatterns } from "./generate-patterns.ts";
import { addPattern, masterModel, type PatternPool, roundUp, wholeOrder } from "./timber-master.ts";
import { checkTimberOrder, type TimberOrder, type TimberPlan } from "./timber-order.ts";
import { timberPlan } from "./timber-plan.ts";
import { commonDivisor, type TimberProblem, timberProblem } from "./timber-problem.ts";

const MOST_DETOURS = 40;
const FIRST_LOOK = { nodeLimit: 300, timeShareMs: 2_000 };

/**
 * Timbers from stock lengths at least cost: first fit, then the pattern relaxation (whose value, rounded up to the next
 * possible cost, is the bound), then whole numbers of the patterns found and dives with more and more detours.
 */
export function* cutTimbers(order: TimberOrder): Asking<Result<TimberPlan>> {
  const checked = checkTimberOrder(order);
  if (!checked.ok) return checked;
  const problem = timberProblem(order);
  const search = startSearch(problem);
  if (search.cost > 0) yield* improve(search);
  if (search.cost === Infinity) return brokenRule("stock-runs-out", { parts: problem.demand.reduce((sum, count) => sum + count, 0) });
  return ok(timberPlan(order, problem, search));
}

function startSearch(problem: TimberProblem): Search {
  const pool: PatternPool = { patterns: [], known: new Set(), basis: null };
  const costStep = problem.stock.reduce((step, stock) => commonDivisor(step, stock.cost), 0) || 1;
  const search: Search = { problem, pool, costStep, bound: materialBound(problem, costStep), cost: Infinity, chosen: [] };
  const fitted = firstFit(problem, wholeOrder(problem));
  if (fitted) offer(search, fitted.map((pattern) => ({ pattern, copies: 1 })));
  problem.stock.forEach((stock, index) =>
    problem.lengths.forEach((size, length) => {
      const copies = Math.min(Math.floor(stock.room / size), problem.demand[length] ?? 0);
      if (copies > 0) addPattern(pool, { stock: index, counts: [[length, copies]] });
    }));
  return search;
}

/** The whole length asked for, at the cheapest price per length there is. */
function materialBound(problem: TimberProblem, costStep: number): number {
  const wanted = problem.lengths.reduce((sum, size, length) => sum + size * (problem.demand[length] ?? 0), 0);
  const price = Math.min(...problem.stock.map((stock) => stock.cost / Math.max(1, stock.room)));
  return problem.stock.length === 0 ? 0 : roundUp(wanted * price, costStep);
}

function* improve(search: Search): Asking<void> {
  const { problem, pool } = search;
  if (isClosed(search)) return;
  const relaxed = yield* generatePatterns(problem, pool, wholeOrder(problem));
  if (!relaxed) return;
  search.bound = Math.max(search.bound, roundUp(relaxed.value, search.costStep));
  yield* wholeNumbers(search, FIRST_LOOK);
  for (let detours = 0; detours <= MOST_DETOURS && !isClosed(search) && !(yield* isTimeUp()); detours += 1) {
    yield* dive(search, wholeOrder(problem), [], detours);
    if (detours === 2) yield* wholeNumbers(search, FIRST_LOOK);
  }
}

/** The best whole numbers of the patterns found so far. */
function* wholeNumbers(search: Search, effort: { nodeLimit: number; timeShareMs: number }): Asking<void> {
  const { problem, pool } = search;
  if (isClosed(search)) return;
  const { status, values } = yield* askFor({ model: masterModel(problem, pool, wholeOrder(problem), true), ...effort });
  const lengths = problem.lengths.length;
  if ((status !== "optimal" && status !== "feasible") || values.subarray(0, lengths).some((short) => short > 0.5)) return;
  offer(search, pool.patterns.flatMap((pattern, index): Choice[] => {
    const copies = Math.round(values[lengths + index] ?? 0);
    return copies > 0 ? [{ pattern, copies }] : [];
  }));
}
