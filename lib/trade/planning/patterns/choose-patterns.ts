import { type Asking, askFor, isTimeUp } from "#lib/kernel/linear-model.ts";
import { commonDivisor } from "./common-divisor.ts";
import { addPattern, type CuttingProblem, type Pattern, type PatternPool, roundUp, wholeOrder } from "./cutting-problem.ts";
import { type Choice, dive, isClosed, offer, type Search } from "./dive.ts";
import { addNearlyPaying, generatePatterns } from "./generate-patterns.ts";
import { patternMaster } from "./pattern-master.ts";

const MOST_DETOURS = 40;
const NEARLY = 0.01;
const LOOK = { nodeLimit: 400, timeShareMs: 2_500 };

/** `materialBound`: what the material alone must cost, before it is known how it can be cut. */
export function startSearch<P extends Pattern>(problem: CuttingProblem<P>, known: readonly P[], materialBound: number): Search<P> {
  const pool: PatternPool<P> = { patterns: [], known: new Set(), basis: null };
  const costStep = problem.stock.reduce((step, stock) => commonDivisor(step, stock.cost), 0) || 1;
  const search: Search<P> = { problem, pool, costStep, bound: roundUp(materialBound, costStep), cost: Infinity, chosen: [] };
  const fitted = problem.firstFit(wholeOrder(problem));
  if (fitted) offer(search, fitted.map((pattern) => ({ pattern, copies: 1 })));
  for (const pattern of known) addPattern(pool, pattern);
  return search;
}

/** A bound found elsewhere, rounded up to the next cost there can be. */
export function raiseBound(search: Search<Pattern>, bound: number): void {
  search.bound = Math.min(search.cost, Math.max(search.bound, roundUp(bound, search.costStep)));
}

/**
 * The relaxation first, whose value is a bound where pricing is exact; then dives with more and more detours,
 * and after the first of them whole numbers of the patterns found, until the cost is at the bound, the ways are exhausted or the time is up.
 */
export function* choosePatterns<P extends Pattern>(search: Search<P>, mostDetours = MOST_DETOURS): Asking<void> {
  if (isClosed(search)) return;
  const whole = wholeOrder(search.problem);
  const relaxed = yield* generatePatterns(search.problem, search.pool, whole);
  if (!relaxed) return;
  raiseBound(search, relaxed.bound);
  for (let detours = 0; detours <= mostDetours && !isClosed(search) && !(yield* isTimeUp()); detours += 1) {
    yield* dive(search, whole, [], detours);
    if (detours === 0 && !isClosed(search)) addNearlyPaying(search.problem, search.pool, whole, relaxed.prices, NEARLY);
    if (detours === 0 || detours === 2) yield* wholeNumbers(search);
  }
}

/** The best whole numbers of the patterns found so far, or of those in a pool apart. */
export function* wholeNumbers<P extends Pattern>(search: Search<P>, timeShareMs = LOOK.timeShareMs, pool = search.pool): Asking<void> {
  const { problem } = search;
  if (isClosed(search)) return;
  const { values } = yield* askFor({ model: patternMaster(problem, pool, wholeOrder(problem), true), ...LOOK, timeShareMs });
  const types = problem.demand.length;
  if (values.length === 0 || values.subarray(0, types).some((short) => short > 0.5)) return;
  offer(search, pool.patterns.flatMap((pattern, index): Choice<P>[] => {
    const copies = Math.round(values[types + index] ?? 0);
    return copies > 0 ? [{ pattern, copies }] : [];
  }));
}
