import type { Point } from "../scale.ts";

/** Where the box stands at one level, against its right place. */
export type PlumbFit = { readonly x_mm: number; readonly y_mm: number; readonly turn_mm_per_m: number | null; readonly out_of_square_mm_per_m: number | null };

const SIGNS = [[1, 1], [1, -1], [-1, -1], [-1, 1]] as const;

/**
 * How far each corner (AB, BC, CD, DA) of the box stands off its right place, in millimetres; x to the right, y up on plan.
 * Faces across turn by t + g / 2, faces along by t − g / 2.
 */
export function cornerOffsets({ x_mm, y_mm, turn_mm_per_m, out_of_square_mm_per_m }: PlumbFit, widthMm: number, depthMm: number): readonly Point[] {
  const turn = (turn_mm_per_m ?? 0) / 1000;
  const half = (out_of_square_mm_per_m ?? 0) / 2000;
  return SIGNS.map(([sx, sy]) => ({ x: x_mm - ((turn - half) * sy * depthMm) / 2, y: y_mm + ((turn + half) * sx * widthMm) / 2 }));
}

const FACTORS = [1, 2, 5, 10, 20, 50, 100] as const;

/** The largest round factor that keeps the largest offset, drawn, within `room` millimetres of the column's own scale. */
export const exaggeration = (largestMm: number, roomMm: number): number =>
  [...FACTORS].reverse().find((factor) => factor * largestMm <= roomMm) ?? FACTORS[0];

export type PlumbNumbers = {
  readonly factor: number;
  /** Corners AB, BC, CD, DA of each outline, in millimetres of the drawing: sizes true, offsets times the factor. */
  readonly right: readonly Point[];
  readonly foot: readonly Point[];
  readonly head: readonly Point[];
  readonly footCentre: Point;
  readonly headCentre: Point;
  /** Radius, in the same millimetres, within which the head's centre has to lie about the foot's. */
  readonly allowed: number;
};

export type PlumbGiven = {
  readonly widthMm: number;
  readonly depthMm: number;
  readonly foot: PlumbFit;
  /** Of the head over the foot, over the whole height of the form. */
  readonly lean: { readonly x: number; readonly y: number };
  readonly twist_mm_per_m: number | null;
  readonly allowedMm: number;
};

/** Foot and head of the form on plan about their right place, the small offsets drawn larger by one stated factor. */
export function plumbNumbers({ widthMm, depthMm, foot, lean, twist_mm_per_m, allowedMm }: PlumbGiven): PlumbNumbers {
  const head: PlumbFit = { ...foot, x_mm: foot.x_mm + lean.x, y_mm: foot.y_mm + lean.y, turn_mm_per_m: (foot.turn_mm_per_m ?? 0) + (twist_mm_per_m ?? 0) };
  const [footOff, headOff] = [cornerOffsets(foot, widthMm, depthMm), cornerOffsets(head, widthMm, depthMm)];
  const largest = Math.max(allowedMm, ...[...footOff, ...headOff].map(({ x, y }) => Math.hypot(x, y)), 1e-6);
  const factor = exaggeration(largest, 0.3 * Math.max(widthMm, depthMm));
  const right = SIGNS.map(([sx, sy]) => ({ x: (sx * widthMm) / 2, y: (sy * depthMm) / 2 }));
  const drawn = (offsets: readonly Point[]) => right.map(({ x, y }, index) => ({ x: x + factor * (offsets[index]?.x ?? 0), y: y + factor * (offsets[index]?.y ?? 0) }));
  return {
    factor, right, foot: drawn(footOff), head: drawn(headOff), allowed: factor * allowedMm,
    footCentre: { x: factor * foot.x_mm, y: factor * foot.y_mm }, headCentre: { x: factor * head.x_mm, y: factor * head.y_mm },
  };
}
