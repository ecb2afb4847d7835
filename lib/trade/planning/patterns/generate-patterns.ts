import { type Asking, askFor } from "#lib/kernel/linear-model.ts";
import { addPattern, type CuttingProblem, type Pattern, type PatternPool, type Prices, type Residue } from "./cutting-problem.ts";
import { patternMaster } from "./pattern-master.ts";

/** The best mix of patterns found, fractions allowed. What is left cannot be cut for less than `bound`. */
export type Relaxation = { readonly value: number; readonly bound: number; readonly uses: readonly number[]; readonly shortage: number; readonly prices: Prices };

/** Column generation (Gilmore and Gomory 1961): prices of the types from the master, better patterns at those prices, until there are none. */
export function* generatePatterns<P extends Pattern>(problem: CuttingProblem<P>, pool: PatternPool<P>, residue: Residue): Asking<Relaxation | null> {
  const types = problem.demand.length;
  for (;;) {
    const answer = yield* askFor({ model: patternMaster(problem, pool, residue, false), ...(pool.basis ? { from: pool.basis } : {}) });
    if (answer.status !== "optimal") return null;
    pool.basis = answer.basis;
    const prices = {
      ofType: Array.from(answer.duals.subarray(0, types), (dual) => Math.max(0, dual)),
      ofStock: problem.stock.map((stock, index) => stock.cost - (answer.duals[types + index] ?? 0)),
      ease: 0,
    };
    const { grew, ratio } = addBetter(problem, pool, residue, prices);
    if (grew) continue;
    const uses = Array.from(answer.values.subarray(types));
    const shortage = answer.values.subarray(0, types).reduce((sum, value) => sum + value, 0);
    // Farley 1990: prices divided by the ratio make no pattern worth more than its stock, so they bound the cost.
    const demandWorth = residue.demand.reduce((sum, count, type) => sum + count * (prices.ofType[type] ?? 0), 0);
    return { value: answer.objective, bound: answer.objective - demandWorth * (1 - 1 / Math.max(1, ratio)), uses, shortage, prices };
  }
}

/** Patterns that nearly pay at the prices: a plan close to the bound is made of no others. */
export function addNearlyPaying<P extends Pattern>(problem: CuttingProblem<P>, pool: PatternPool<P>, residue: Residue, prices: Prices, ease: number): void {
  for (const price of problem.price) {
    for (const pattern of price(residue, { ...prices, ease }).patterns) addPattern(pool, pattern);
  }
}

function addBetter<P extends Pattern>(problem: CuttingProblem<P>, pool: PatternPool<P>, residue: Residue, prices: Prices): { grew: boolean; ratio: number } {
  let ratio = Infinity;
  for (const price of problem.price) {
    const offer = price(residue, prices);
    if (offer.patterns.filter((pattern) => addPattern(pool, pattern)).length > 0) return { grew: true, ratio };
    ratio = Math.min(ratio, offer.ratio);
  }
  return { grew: false, ratio };
}
