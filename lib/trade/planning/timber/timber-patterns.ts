import type { CuttingProblem, Offer, Pattern, Prices, Residue } from "../patterns/cutting-problem.ts";
import { firstFit } from "./first-fit.ts";
import { tightFit } from "./tight-fit.ts";
import { type Filling, fillings, roughFillings } from "../patterns/knapsack.ts";
import type { TimberProblem } from "./timber-problem.ts";

const NEW_PER_STOCK = 24;
const TOLERANCE = 1e-7;

export function timberCutting(problem: TimberProblem): CuttingProblem<Pattern> {
  return {
    demand: problem.demand,
    stock: problem.stock,
    price: [
      (residue, prices) => ({ patterns: betterPatterns(problem, residue, prices, roughFillings), ratio: Infinity }),
      (residue, prices): Offer<Pattern> => ({ patterns: betterPatterns(problem, residue, prices, fillings), ratio: 1 }),
    ],
    firstFit: (residue) => cheaper(problem, firstFit(problem, residue), tightFit(problem, residue)),
  };
}

function cheaper(problem: TimberProblem, one: Pattern[] | null, other: Pattern[] | null): Pattern[] | null {
  const costOf = (patterns: Pattern[] | null) => patterns?.reduce((sum, { stock }) => sum + (problem.stock[stock]?.cost ?? 0), 0) ?? Infinity;
  return costOf(other) < costOf(one) ? other : one;
}

/** Each stock length filled with one length alone. */
export function plainPatterns(problem: TimberProblem): Pattern[] {
  return problem.stock.flatMap((stock, index) =>
    problem.lengths.flatMap((size, length) => {
      const copies = Math.min(Math.floor(stock.room / size), problem.demand[length] ?? 0);
      return copies > 0 ? [{ stock: index, counts: [[length, copies] as const] }] : [];
    }));
}

function betterPatterns(problem: TimberProblem, residue: Residue, prices: Prices, fill: typeof fillings): Pattern[] {
  const items = problem.lengths.map((size, length) => ({ size, value: prices.ofType[length] ?? 0, most: residue.demand[length] ?? 0 }));
  const open = problem.stock.flatMap((stock, index) => (residue.supply[index] === 0 ? [] : [{ stock, index, floor: (prices.ofStock[index] ?? 0) * (1 - prices.ease) + TOLERANCE * Math.max(1, stock.cost) }]));
  const found = fill(items, open.map(({ stock }) => stock.room), open.map(({ floor }) => floor));
  return open.flatMap(({ stock, index, floor }) =>
    found
      .filter((filling) => filling.room === stock.room && filling.value > floor)
      .sort((a, b) => b.value - a.value)
      .slice(0, NEW_PER_STOCK)
      .map((filling) => ({ stock: index, counts: countsOf(filling) })));
}

const countsOf = (filling: Filling): (readonly [number, number])[] => [...filling.counts].sort(([a], [b]) => a - b);
