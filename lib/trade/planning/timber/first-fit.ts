import type { Pattern, Residue } from "../patterns/cutting-problem.ts";
import type { TimberProblem } from "./timber-problem.ts";

export type Open = { stock: number; left: number; counts: Map<number, number> };

/** Longest first, each into the first piece with room, a new longest piece when there is none; then each piece changed for the cheapest that still holds its parts. Null when the stock runs out. */
export function firstFit(problem: TimberProblem, residue: Residue): Pattern[] | null {
  const supply = residue.supply.map((left) => left ?? Infinity);
  const pieces: Open[] = [];
  const opened = (size: number): Open | null => {
    const piece = openPiece(problem, supply, size);
    if (piece) pieces.push(piece);
    return piece;
  };
  for (const [length, size] of problem.lengths.entries()) {
    for (let copy = 0; copy < (residue.demand[length] ?? 0); copy += 1) {
      const piece = pieces.find((candidate) => candidate.left >= size) ?? opened(size);
      if (!piece) return null;
      piece.left -= size;
      piece.counts.set(length, (piece.counts.get(length) ?? 0) + 1);
    }
  }
  return pieces.map((piece) => ({ stock: cheapestFor(problem, supply, piece), counts: [...piece.counts] }));
}

/** A new longest piece, of the stock without end where there is one. */
export function openPiece(problem: TimberProblem, supply: number[], size: number): Open | null {
  const unlimited = problem.stock.findLastIndex((stock, index) => supply[index] === Infinity && stock.room >= size);
  const stock = unlimited >= 0 ? unlimited : problem.stock.findLastIndex((candidate, index) => (supply[index] ?? 0) > 0 && candidate.room >= size);
  const chosen = problem.stock[stock];
  if (!chosen) return null;
  supply[stock] = (supply[stock] ?? 0) - 1;
  return { stock, left: chosen.room, counts: new Map() };
}

/** The cheapest stock that still holds the parts of a piece. */
export function cheapestFor(problem: TimberProblem, supply: number[], piece: Open): number {
  const load = (problem.stock[piece.stock]?.room ?? 0) - piece.left;
  const costOf = (index: number) => problem.stock[index]?.cost ?? Infinity;
  const better = problem.stock.reduce(
    (best, stock, index) => (stock.room >= load && (supply[index] ?? 0) > 0 && stock.cost < costOf(best) ? index : best),
    piece.stock,
  );
  supply[piece.stock] = (supply[piece.stock] ?? 0) + 1;
  supply[better] = (supply[better] ?? 0) - 1;
  return better;
}
