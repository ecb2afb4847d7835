/**
 * The beam once more, by another method: cubic beam elements with a drop and a turn at each node (displacement method of finite elements; stiffness
 * matrix and consistent loads of a straight line of load as in any text on it), solved by a general linear-algebra package. Supports are held by
 * leaving their drops out of the equations.
 */
import { Matrix, solve } from "ml-matrix";
import type { LoadCorner } from "#lib/trade/engineering/backing/beam-pieces.ts";
import type { BeamInput } from "#lib/trade/engineering/backing/continuous-beam.ts";

/** Moment sagging positive; shear is the force that the part before the node puts on the part beyond it, upwards. Up is positive, so a load presses down. */
export type FiniteNode = { readonly at: number; readonly drop: number; readonly momentBefore: number; readonly momentBeyond: number; readonly shearBefore: number; readonly shearBeyond: number; readonly reaction: number };

function loadAtEnds(corners: readonly LoadCorner[], from: number, to: number): readonly [number, number] {
  const middle = (from + to) / 2;
  const index = corners.findIndex((corner, place) => corner.at <= middle && middle < (corners[place + 1]?.at ?? -1));
  const [a, b] = [corners[index], corners[index + 1]];
  if (a === undefined || b === undefined) return [0, 0];
  const line = (at: number) => ((b.at - at) * a.load + (at - a.at) * b.load) / (b.at - a.at);
  return [line(from), line(to)];
}

/** Drop and turn at the start, then at the end. */
const stiffnessOf = (EI: number, h: number): number[][] =>
  [[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h], [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]].map((row) => row.map((value) => (value * EI) / h ** 3));
const loadsOf = (a: number, b: number, h: number): number[] =>
  [-(h * (7 * a + 3 * b)) / 20, -(h * h * (3 * a + 2 * b)) / 60, -(h * (3 * a + 7 * b)) / 20, (h * h * (2 * a + 3 * b)) / 60];

/** Solves with nodes at every support, load corner and place asked for, and `parts` elements between any two of them. */
export function finiteBeam(beam: BeamInput, asked: readonly number[], parts: number): readonly FiniteNode[] {
  const marks = [0, beam.length, ...beam.supports, ...beam.load.map(({ at }) => at), ...asked].filter((at) => at >= 0 && at <= beam.length).sort((a, b) => a - b);
  const places = marks.filter((at, index) => index === 0 || at - (marks[index - 1] ?? 0) > 1e-9);
  const nodes = places.flatMap((at, index) => (index === 0 ? [at] : Array.from({ length: parts }, (_, part) => (places[index - 1] ?? 0) + ((at - (places[index - 1] ?? 0)) * (part + 1)) / parts)));
  const size = 2 * nodes.length;
  const K = Matrix.zeros(size, size);
  const F = Matrix.zeros(size, 1);
  const elements = nodes.slice(1).map((to, index) => {
    const from = nodes[index] ?? 0;
    return { stiffness: stiffnessOf(beam.stiffness, to - from), loads: loadsOf(...loadAtEnds(beam.load, from, to), to - from), first: 2 * index };
  });
  for (const { stiffness, loads, first } of elements)
    loads.forEach((force, row) => {
      F.set(first + row, 0, F.get(first + row, 0) + force);
      stiffness[row]?.forEach((value, column) => K.set(first + row, first + column, K.get(first + row, first + column) + value));
    });
  const held = new Set(beam.supports.map((support) => 2 * nodes.findIndex((at) => Math.abs(at - support) <= 1e-9)));
  const free = Array.from({ length: size }, (_, index) => index).filter((index) => !held.has(index));
  const found = solve(K.selection(free, free), F.selection(free, [0])).to1DArray();
  const moves = new Array<number>(size).fill(0);
  free.forEach((place, index) => (moves[place] = found[index] ?? Number.NaN));
  const ends = elements.map(({ stiffness, loads, first }) => stiffness.map((row, at) => row.reduce((sum, value, column) => sum + value * (moves[first + column] ?? 0), -(loads[at] ?? 0))));
  return nodes.map((at, index) => {
    const [before, beyond] = [ends[index - 1], ends[index]];
    const up = { shearBefore: -(before?.[2] ?? 0), shearBeyond: beyond?.[0] ?? 0 };
    return { at, drop: moves[2 * index] ?? 0, momentBefore: before?.[3] ?? 0, momentBeyond: -(beyond?.[1] ?? 0), ...up, reaction: up.shearBeyond - up.shearBefore };
  });
}
