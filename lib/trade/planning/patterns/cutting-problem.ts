import type { Basis } from "#lib/kernel/linear-model.ts";

/** How one piece of stock is cut: which stock, and how many of each type it yields. */
export type Pattern = { readonly stock: number; readonly counts: readonly (readonly [type: number, copies: number])[] };

/** What is left to cut and to cut it from; null supply is unlimited. `cost` is spent already. */
export type Residue = { readonly demand: readonly number[]; readonly supply: readonly (number | null)[]; readonly cost: number };

/** Patterns worth more than their stock at the prices given. No pattern at all is worth more than `ratio` times its stock; Infinity when that is not known. */
export type Offer<P> = { readonly patterns: readonly P[]; readonly ratio: number };
/** `ease`: patterns worth this share less than their stock are welcome too. */
export type Prices = { readonly ofType: readonly number[]; readonly ofStock: readonly number[]; readonly ease: number };

/** Cutting in one dimension or two: only how a piece can be cut differs, and that is behind `price` and `firstFit`. */
export type CuttingProblem<P extends Pattern> = {
  readonly demand: readonly number[];
  readonly stock: readonly { readonly cost: number; readonly supply: number | null }[];
  /** Tried one after another until one offers a pattern not known yet. */
  readonly price: readonly ((residue: Residue, prices: Prices) => Offer<P>)[];
  /** Everything left, cut somehow; null when the stock runs out. */
  readonly firstFit: (residue: Residue) => readonly P[] | null;
};

/** Every pattern seen, in the order found. Only grows. */
export type PatternPool<P extends Pattern> = { readonly patterns: P[]; readonly known: Set<string>; basis: Basis | null };

export const wholeOrder = (problem: Pick<CuttingProblem<Pattern>, "demand" | "stock">): Residue => ({ demand: problem.demand, supply: problem.stock.map((stock) => stock.supply), cost: 0 });

export function addPattern<P extends Pattern>(pool: PatternPool<P>, pattern: P): boolean {
  const key = `${pattern.stock}:${pattern.counts.map(([type, copies]) => `${type}x${copies}`).join(",")}`;
  if (pattern.counts.length === 0 || pool.known.has(key)) return false;
  pool.known.add(key);
  pool.patterns.push(pattern);
  return true;
}

export const fits = (pattern: Pattern, residue: Residue): boolean =>
  (residue.supply[pattern.stock] === null || (residue.supply[pattern.stock] ?? 0) > 0) && pattern.counts.every(([type, copies]) => copies <= (residue.demand[type] ?? 0));

/** Costs come in steps (all stock at 2400, 3600, 4800: steps of 1200), so a bound may be rounded up to the next. */
export const roundUp = (bound: number, costStep: number): number => Math.ceil(bound / costStep - 1e-6) * costStep;
