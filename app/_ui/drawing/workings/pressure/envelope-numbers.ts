import { linear, type Point, type Scale } from "../scale.ts";

export type PressureCorner = { readonly depth_m: number; readonly pressure_kPa: number };
export type EnvelopeGiven = {
  readonly points: readonly PressureCorner[];
  readonly pourHeightMm: number;
  readonly formHeightMm: number;
  /** Of the fresh concrete, for the line of the liquid head. */
  readonly density: number;
};
export type Frame = { readonly left: number; readonly right: number; readonly top: number; readonly foot: number };

export type EnvelopeNumbers = {
  readonly toX: Scale;
  /** From millimetres above the foot. */
  readonly toY: Scale;
  readonly corners: readonly (Point & { readonly heightMm: number; readonly pressure: number })[];
  /** Foot of the liquid head where the method allows less than it; null where the two are one. */
  readonly headFoot: Point | null;
  readonly most: number;
};

/** The pressure line over the height of the form, one scale up and one across, the liquid head within the frame. */
export function envelopeNumbers({ points, pourHeightMm, formHeightMm, density }: EnvelopeGiven, frame: Frame): EnvelopeNumbers {
  const foot = points.at(-1)?.pressure_kPa ?? 0;
  const head = (density * pourHeightMm) / 1000;
  const most = Math.max(head, foot, 1e-6);
  const toX = linear(0, most, frame.left, frame.right);
  const toY = linear(0, formHeightMm, frame.foot, frame.top);
  const corners = points.map(({ depth_m, pressure_kPa }) => {
    const heightMm = pourHeightMm - depth_m * 1000;
    return { x: toX(pressure_kPa), y: toY(heightMm), heightMm, pressure: pressure_kPa };
  });
  return { toX, toY, corners, headFoot: foot < head * (1 - 1e-9) ? { x: toX(head), y: toY(0) } : null, most };
}

/** The pressure at a height above the foot, on the straight lines between the corners. */
export function pressureAtHeight(points: readonly PressureCorner[], pourHeightMm: number, heightMm: number): number {
  const depth = (pourHeightMm - heightMm) / 1000;
  for (const [index, lower] of points.entries()) {
    const upper = points[index - 1];
    if (!upper || depth < upper.depth_m || depth > lower.depth_m || lower.depth_m === upper.depth_m) continue;
    return upper.pressure_kPa + ((lower.pressure_kPa - upper.pressure_kPa) * (depth - upper.depth_m)) / (lower.depth_m - upper.depth_m);
  }
  return 0;
}
