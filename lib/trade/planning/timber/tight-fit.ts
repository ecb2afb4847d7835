import type { Pattern, Residue } from "../patterns/cutting-problem.ts";
import { cheapestFor, openPiece } from "./first-fit.ts";
import type { TimberProblem } from "./timber-problem.ts";

/** Lengths tried for one piece before the best filling found is taken. */
const MOST_TRIES = 4_000;

/**
 * Piece by piece: the longest length left, and with it those that leave the least of the piece over (the minimum bin slack rule of Gupta and
 * Ho 1999, from memory). Much closer than first fit where few lengths go into a piece. Null when the stock runs out.
 */
export function tightFit(problem: TimberProblem, residue: Residue): Pattern[] | null {
  const supply = residue.supply.map((left) => left ?? Infinity);
  const demand = [...residue.demand];
  const patterns: Pattern[] = [];
  for (let longest = 0; longest < demand.length; ) {
    if ((demand[longest] ?? 0) <= 0) {
      longest += 1;
      continue;
    }
    const size = problem.lengths[longest] ?? 0;
    const piece = openPiece(problem, supply, size);
    if (!piece) return null;
    demand[longest] = (demand[longest] ?? 0) - 1;
    const more = leastLeft(problem.lengths, demand, longest, piece.left - size);
    for (const length of more) demand[length] = (demand[length] ?? 0) - 1;
    for (const length of [longest, ...more]) {
      piece.left -= problem.lengths[length] ?? 0;
      piece.counts.set(length, (piece.counts.get(length) ?? 0) + 1);
    }
    patterns.push({ stock: cheapestFor(problem, supply, piece), counts: [...piece.counts] });
  }
  return patterns;
}

/** The lengths, longest first, that fill a room best; of equal ones those with the longer lengths. */
function leastLeft(lengths: readonly number[], demand: number[], from: number, room: number): readonly number[] {
  const taken: number[] = [];
  let best: readonly number[] = [];
  let least = room;
  let tries = 0;
  const fill = (first: number, left: number): void => {
    if (left < least) {
      least = left;
      best = [...taken];
    }
    for (let length = first; length < lengths.length && least > 0 && tries < MOST_TRIES; length += 1) {
      const size = lengths[length] ?? 0;
      if ((demand[length] ?? 0) <= 0 || size > left) continue;
      tries += 1;
      demand[length] = (demand[length] ?? 0) - 1;
      taken.push(length);
      fill(length, left - size);
      taken.pop();
      demand[length] = (demand[length] ?? 0) + 1;
    }
  };
  fill(from, room);
  return best;
}
