import { type Asking, isTimeUp } from "#lib/kernel/linear-model.ts";
import { addPattern, type CuttingProblem, type Pattern, type PatternPool, type Residue, roundUp } from "./cutting-problem.ts";
import { generatePatterns, type Relaxation } from "./generate-patterns.ts";

export type Choice<P extends Pattern> = { readonly pattern: P; readonly copies: number };
/** The search as it stands: it ends when the cost has come down to the bound. */
export type Search<P extends Pattern> = {
  readonly problem: CuttingProblem<P>;
  readonly pool: PatternPool<P>;
  readonly costStep: number;
  bound: number;
  cost: number;
  chosen: readonly Choice<P>[];
};

export const isClosed = (search: { readonly cost: number; readonly bound: number }): boolean => search.cost <= search.bound + 1e-6;

/** Keeps a complete choice that costs less than the best so far. */
export function offer<P extends Pattern>(search: Search<P>, chosen: readonly Choice<P>[]): void {
  const cost = chosen.reduce((sum, { pattern, copies }) => sum + copies * (search.problem.stock[pattern.stock]?.cost ?? 0), 0);
  for (const { pattern } of chosen) addPattern(search.pool, pattern);
  if (cost >= search.cost) return;
  search.cost = cost;
  search.chosen = chosen;
}

/**
 * Fixes the patterns the relaxation uses whole, or the one it uses most, and relaxes the rest again with new patterns; at
 * `detours` places on the way down the next most used is tried as well. A way that cannot beat the best is left.
 */
export function* dive<P extends Pattern>(search: Search<P>, residue: Residue, chosen: readonly Choice<P>[], detours: number): Asking<void> {
  const { problem, pool } = search;
  if (isClosed(search) || (yield* isTimeUp())) return;
  const relaxed = yield* generatePatterns(problem, pool, residue);
  if (!relaxed) return;
  complete(search, residue, chosen);
  if (roundUp(residue.cost + relaxed.value, search.costStep) >= search.cost || relaxed.shortage > 1e-6) return;
  const whole = wholeUses(relaxed, pool);
  if (whole.length > 0) {
    yield* dive(search, after(problem, residue, whole), [...chosen, ...whole], detours);
    return;
  }
  const ways = mostUsed(relaxed, pool).slice(0, detours + 1);
  for (const [rank, pattern] of ways.entries()) {
    const one = [{ pattern, copies: 1 }];
    yield* dive(search, after(problem, residue, one), [...chosen, ...one], detours - rank);
  }
}

function complete<P extends Pattern>(search: Search<P>, residue: Residue, chosen: readonly Choice<P>[]): void {
  const rest = search.problem.firstFit(residue);
  if (rest) offer(search, [...chosen, ...rest.map((pattern) => ({ pattern, copies: 1 }))]);
}

function wholeUses<P extends Pattern>(relaxed: Relaxation, pool: PatternPool<P>): Choice<P>[] {
  return relaxed.uses.flatMap((use, index) => {
    const pattern = pool.patterns[index];
    const copies = Math.floor(use + 1e-6);
    return pattern && copies >= 1 ? [{ pattern, copies }] : [];
  });
}

function mostUsed<P extends Pattern>(relaxed: Relaxation, pool: PatternPool<P>): P[] {
  return relaxed.uses
    .map((use, index) => ({ use, index, pattern: pool.patterns[index] }))
    .filter(({ use }) => use > 1e-6)
    .sort((a, b) => b.use - a.use || a.index - b.index)
    .flatMap(({ pattern }) => (pattern ? [pattern] : []));
}

function after(problem: CuttingProblem<Pattern>, residue: Residue, chosen: readonly Choice<Pattern>[]): Residue {
  const demand = [...residue.demand];
  const supply = [...residue.supply];
  let { cost } = residue;
  for (const { pattern, copies } of chosen) {
    for (const [type, each] of pattern.counts) demand[type] = Math.max(0, (demand[type] ?? 0) - each * copies);
    const left = supply[pattern.stock] ?? null;
    supply[pattern.stock] = left === null ? null : left - copies;
    cost += copies * (problem.stock[pattern.stock]?.cost ?? 0);
  }
  return { demand, supply, cost };
}
