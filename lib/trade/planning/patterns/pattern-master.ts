import type { LinearModel } from "#lib/kernel/linear-model.ts";
import { type CuttingProblem, fits, type Pattern, type PatternPool, type Residue } from "./cutting-problem.ts";

/**
 * How many of each pattern: cover what is left of the demand, within the supply, at least cost. Rows: types, then stock.
 * Columns: a shortage for each type, then the patterns; one that yields more than is left of a type stays out. A shortage
 * costs more than any stock, so that there is always an answer, and one without shortages if there is any.
 */
export function patternMaster<P extends Pattern>(problem: CuttingProblem<P>, pool: PatternPool<P>, residue: Residue, whole: boolean): LinearModel {
  const types = problem.demand.length;
  const columns = types + pool.patterns.length;
  const starts = new Int32Array(columns + 1);
  const indices: number[] = [];
  const values: number[] = [];
  const put = (row: number, value: number) => { indices.push(row); values.push(value); };
  for (let type = 0; type < types; type += 1) {
    put(type, 1);
    starts[type + 1] = indices.length;
  }
  pool.patterns.forEach((pattern, index) => {
    for (const [type, copies] of pattern.counts) put(type, copies);
    put(types + pattern.stock, 1);
    starts[types + index + 1] = indices.length;
  });
  const shortage = 10 * Math.max(1, ...problem.stock.map((stock) => stock.cost));
  const costOf = (pattern: P | undefined) => (pattern ? problem.stock[pattern.stock]?.cost ?? 0 : shortage);
  const mostOf = (pattern: P | undefined) => (!pattern || whole || fits(pattern, residue) ? Infinity : 0);
  return {
    whole,
    cost: Float64Array.from({ length: columns }, (_, column) => costOf(pool.patterns[column - types])),
    lower: new Float64Array(columns),
    upper: Float64Array.from({ length: columns }, (_, column) => mostOf(pool.patterns[column - types])),
    rowLower: Float64Array.from([...residue.demand, ...residue.supply.map(() => 0)]),
    rowUpper: Float64Array.from([...residue.demand.map(() => Infinity), ...residue.supply.map((left) => left ?? Infinity)]),
    starts,
    indices: Int32Array.from(indices),
    values: Float64Array.from(values),
  };
}
