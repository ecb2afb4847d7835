import { type Asking, askFor } from "#lib/kernel/linear-model.ts";
import { type Filling, fillings, roughFillings } from "./knapsack.ts";
import { addPattern, masterModel, type PatternPool, type Residue } from "./timber-master.ts";
import type { TimberPattern, TimberProblem } from "./timber-problem.ts";

/** The best mix of all patterns, fractions allowed: `value` bounds what is left from below. */
export type Relaxation = { readonly value: number; readonly uses: readonly number[]; readonly shortage: number };

const NEW_PER_STOCK = 24;
const TOLERANCE = 1e-7;

/** Column generation (Gilmore and Gomory): prices of the lengths from the master, better patterns for those prices from a knapsack, until there are none. */
export function* generatePatterns(problem: TimberProblem, pool: PatternPool, residue: Residue): Asking<Relaxation | null> {
  const lengths = problem.lengths.length;
  for (;;) {
    const answer = yield* askFor({ model: masterModel(problem, pool, residue, false), ...(pool.basis ? { from: pool.basis } : {}) });
    if (answer.status !== "optimal") return null;
    pool.basis = answer.basis;
    const isNew = (pattern: TimberPattern) => addPattern(pool, pattern);
    if (betterPatterns(problem, residue, answer.duals, roughFillings).filter(isNew).length > 0) continue;
    if (betterPatterns(problem, residue, answer.duals, fillings).filter(isNew).length > 0) continue;
    const uses = Array.from(answer.values.subarray(lengths));
    const shortage = answer.values.subarray(0, lengths).reduce((sum, value) => sum + value, 0);
    return { value: answer.objective, uses, shortage };
  }
}

function betterPatterns(problem: TimberProblem, residue: Residue, duals: Float64Array, fill: typeof fillings): TimberPattern[] {
  const lengths = problem.lengths.length;
  const items = problem.lengths.map((size, length) => ({ size, value: Math.max(0, duals[length] ?? 0), most: residue.demand[length] ?? 0 }));
  const open = problem.stock.flatMap((stock, index) => ((residue.supply[index] ?? Infinity) > 0 ? [{ stock, index, floor: stock.cost - (duals[lengths + index] ?? 0) }] : []));
  const floors = open.map(({ stock, floor }) => floor + TOLERANCE * Math.max(1, stock.cost));
  const found = fill(items, open.map(({ stock }) => stock.room), floors);
  return open.flatMap(({ stock, index, floor }) =>
    found
      .filter((filling) => filling.room === stock.room && filling.value > floor + TOLERANCE * Math.max(1, stock.cost))
      .sort((a, b) => b.value - a.value)
      .slice(0, NEW_PER_STOCK)
      .map((filling) => ({ stock: index, counts: countsOf(filling) })));
}

const countsOf = (filling: Filling): (readonly [number, number])[] => [...filling.counts].sort(([a], [b]) => a - b);
