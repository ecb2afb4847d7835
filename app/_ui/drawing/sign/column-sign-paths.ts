import { BAR_REACH, signParts, type SignPart } from "./sign-parts.ts";

export type ColumnSignInput = {
  readonly shape: "rectangle" | "circle";
  readonly width_mm: number;
  readonly depth_mm: number;
  /** Bit i is set when the i-th of cut, stood, clamped, plumbed, poured, stripped is done. */
  readonly done: number;
  /** Queried or held. */
  readonly flagged: boolean;
  /** Of the square it is drawn in, in pixels. */
  readonly size: number;
};

/** Narrower than this share of the square nothing inside could be told apart; blades are drawn a little stouter than they are. */
const LEAST_SIDE = 0.12;

export type ColumnSignPaths = {
  readonly parts: readonly SignPart[];
  /** The concrete as drawn, in pixels. */
  readonly concrete: { readonly w: number; readonly h: number };
};

/** The column to its own proportions in a square of `size`, centred on 0,0. */
export function columnSignPaths({ shape, width_mm, depth_mm, done, flagged, size }: ColumnSignInput): ColumnSignPaths {
  const t = Math.max(1.5, size * 0.072);
  const room = size - 2 * t * (1 + BAR_REACH);
  const depth = shape === "circle" ? width_mm : depth_mm;
  const scale = room / Math.max(width_mm, depth, 1);
  const w = Math.max(width_mm * scale, size * LEAST_SIDE);
  const h = Math.max(depth * scale, size * LEAST_SIDE);
  return { parts: signParts({ shape, w, h, t, done, flagged }), concrete: { w, h } };
}
