import type { Basis, LinearModel } from "#lib/kernel/linear-model.ts";
import type { TimberPattern, TimberProblem } from "./timber-problem.ts";

/** What is left to cut and to cut it from; null supply is unlimited. */
export type Residue = { readonly demand: readonly number[]; readonly supply: readonly (number | null)[]; readonly cost: number };

/** Every pattern seen, in the order found. Only grows. */
export type PatternPool = { readonly patterns: TimberPattern[]; readonly known: Set<string>; basis: Basis | null };

export const wholeOrder = (problem: TimberProblem): Residue => ({ demand: problem.demand, supply: problem.stock.map((stock) => stock.supply), cost: 0 });

export function addPattern(pool: PatternPool, pattern: TimberPattern): boolean {
  const key = `${pattern.stock}:${pattern.counts.map(([length, copies]) => `${length}x${copies}`).join(",")}`;
  if (pattern.counts.length === 0 || pool.known.has(key)) return false;
  pool.known.add(key);
  pool.patterns.push(pattern);
  return true;
}

export const fits = (pattern: TimberPattern, residue: Residue): boolean =>
  (residue.supply[pattern.stock] ?? Infinity) > 0 && pattern.counts.every(([length, copies]) => copies <= (residue.demand[length] ?? 0));

/** A part not cut costs more than any stock it could be cut from, so that there is always an answer, and one without such parts if there is any. */
export const shortageCost = (problem: TimberProblem): number => 10 * Math.max(1, ...problem.stock.map((stock) => stock.cost));

/**
 * How many of each pattern: cover what is left of the demand, within the supply, at least cost. Rows: lengths, then stock.
 * Columns: a shortage for each length, then the patterns; one that yields more than is left of a length stays out.
 */
export function masterModel(problem: TimberProblem, pool: PatternPool, residue: Residue, whole: boolean): LinearModel {
  const lengths = problem.lengths.length;
  const columns = lengths + pool.patterns.length;
  const starts = new Int32Array(columns + 1);
  const indices: number[] = [];
  const values: number[] = [];
  const put = (row: number, value: number) => { indices.push(row); values.push(value); };
  for (let length = 0; length < lengths; length += 1) {
    put(length, 1);
    starts[length + 1] = indices.length;
  }
  pool.patterns.forEach((pattern, index) => {
    for (const [length, copies] of pattern.counts) put(length, copies);
    put(lengths + pattern.stock, 1);
    starts[lengths + index + 1] = indices.length;
  });
  return {
    whole,
    cost: Float64Array.from({ length: columns }, (_, column) => costOf(problem, pool.patterns[column - lengths])),
    lower: new Float64Array(columns),
    upper: Float64Array.from({ length: columns }, (_, column) => usable(pool.patterns[column - lengths], residue)),
    rowLower: Float64Array.from([...residue.demand, ...residue.supply.map(() => 0)]),
    rowUpper: Float64Array.from([...residue.demand.map(() => Infinity), ...residue.supply.map((left) => left ?? Infinity)]),
    starts,
    indices: Int32Array.from(indices),
    values: Float64Array.from(values),
  };
}

const costOf = (problem: TimberProblem, pattern: TimberPattern | undefined): number => (pattern ? problem.stock[pattern.stock]?.cost ?? 0 : shortageCost(problem));
const usable = (pattern: TimberPattern | undefined, residue: Residue): number => (!pattern || fits(pattern, residue) ? Infinity : 0);

/** Costs come in steps (all stock at 2400, 3600, 4800: steps of 1200), so a bound may be rounded up to the next. */
export function roundUp(bound: number, costStep: number): number {
  return Math.ceil(bound / costStep - 1e-6) * costStep;
}
