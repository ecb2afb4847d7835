import type { SheetProblem } from "../sheet-problem.ts";

/** What a share of a sheet's length, 0 to 1, stands for. Shares that add up to at most 1 stand for at most 1 in all. */
export type Measure = (share: number) => number;

const asItIs: Measure = (share) => share;
const MOST_EDGES = 4;
const SHARES = [1, 2, 3];
const EPSILON = 1e-9;

/**
 * Dual feasible functions (Fekete and Schepers 2001): more than the rest beside a piece of share `edge` counts as all,
 * less than it as nothing; and a share counts in k-ths, rounded down unless it is a whole number of (k + 1)-ths.
 */
export function measures(problem: SheetProblem): Measure[] {
  const shares = problem.stock.flatMap(({ w, h }) => problem.shapes.flatMap((shape) => [shape.w / w, shape.h / h])).filter((share) => share <= 0.5);
  const edges = [...new Set(shares)].sort((a, b) => a - b);
  const chosen = edges.filter((_, index) => index % Math.ceil(edges.length / MOST_EDGES) === 0);
  return [asItIs, ...SHARES.map(inShares), ...chosen.map(aroundEdge)];
}

const aroundEdge = (edge: number): Measure => (share) => (share > 1 - edge + EPSILON ? 1 : share < edge - EPSILON ? 0 : share);

function inShares(k: number): Measure {
  return (share) => {
    const parts = share * (k + 1);
    return Math.abs(parts - Math.round(parts)) < EPSILON ? share : Math.floor(parts) / k;
  };
}
