import { naturalOrder } from "#lib/kernel/natural-order.ts";
import { commonDivisor } from "../patterns/common-divisor.ts";
import { usableMm, type TimberOrder } from "./timber-order.ts";

/**
 * The order in the form the search works on: every part and stock length grown by one kerf, so that parts pack without
 * gaps; equal parts merged; longest first. Lengths share `step` as divisor.
 */
export type TimberProblem = {
  readonly lengths: readonly number[];
  readonly demand: readonly number[];
  /** Which parts of the order each length stands for, in the order they are served. */
  readonly partsOf: readonly (readonly { readonly id: string; readonly quantity: number }[])[];
  readonly stock: readonly { readonly id: string; readonly room: number; readonly cost: number; readonly supply: number | null }[];
  readonly step: number;
};

export function timberProblem(order: TimberOrder): TimberProblem {
  const byLength = new Map<number, { id: string; quantity: number }[]>();
  for (const part of order.parts.filter((candidate) => candidate.quantity > 0)) {
    const grown = part.lengthMm + order.kerfMm;
    byLength.set(grown, [...(byLength.get(grown) ?? []), { id: part.id, quantity: part.quantity }]);
  }
  const lengths = [...byLength.keys()].sort((a, b) => b - a);
  const step = lengths.reduce(commonDivisor, 0) || 1;
  const stock = order.stock
    .filter((piece) => piece.quantity !== 0)
    .map((piece) => ({ id: piece.id, room: Math.floor((usableMm(order, piece) + order.kerfMm) / step), cost: piece.cost, supply: piece.quantity }))
    .sort((a, b) => a.room - b.room || a.cost - b.cost || naturalOrder(a.id, b.id));
  return {
    lengths: lengths.map((length) => length / step),
    demand: lengths.map((length) => (byLength.get(length) ?? []).reduce((sum, part) => sum + part.quantity, 0)),
    partsOf: lengths.map((length) => (byLength.get(length) ?? []).sort((a, b) => naturalOrder(a.id, b.id))),
    stock,
    step,
  };
}
