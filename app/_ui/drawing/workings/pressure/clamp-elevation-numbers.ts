import { linear, type Scale } from "../scale.ts";

export type ElevationGiven = {
  readonly formHeightMm: number;
  /** Concrete side of the face that is seen, and the arm between its wedges. */
  readonly sideMm: number;
  readonly wedgeSpanMm: number;
  readonly clamps: readonly { readonly height_mm: number; readonly utilisation: number }[];
};
type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

export type ElevationNumbers = {
  /** Pixels to a millimetre, the same up and across. */
  readonly scale: number;
  readonly toY: Scale;
  readonly face: Box;
  readonly bars: readonly (Box & { readonly heightMm: number; readonly utilisation: number })[];
};

export type ElevationFrame = { readonly left: number; readonly top: number; readonly foot: number; readonly mostWide: number };
/** Drawn, as the clamp's own bar is not known. */
const BAR = 7;

/** One face of the form from outside at one scale, its clamps across it at their heights. */
export function elevationNumbers({ formHeightMm, sideMm, wedgeSpanMm, clamps }: ElevationGiven, frame: ElevationFrame): ElevationNumbers {
  const wide = Math.max(sideMm, wedgeSpanMm);
  const scale = Math.min((frame.foot - frame.top) / formHeightMm, frame.mostWide / wide);
  const toY = linear(0, formHeightMm, frame.foot, frame.foot - formHeightMm * scale);
  const middle = frame.left + (wide * scale) / 2;
  const face = { x: middle - (sideMm * scale) / 2, y: toY(formHeightMm), width: sideMm * scale, height: formHeightMm * scale };
  const bars = clamps.map(({ height_mm, utilisation }) => ({
    x: middle - (wedgeSpanMm * scale) / 2, y: toY(height_mm) - BAR / 2, width: wedgeSpanMm * scale, height: BAR, heightMm: height_mm, utilisation,
  }));
  return { scale, toY, face, bars };
}

/** How deep a bar is shaded, from 0 for an idle clamp to 1 for one at its limit. */
export const shadeOf = (utilisation: number): number => Math.round((0.15 + 0.85 * Math.min(1, Math.max(0, utilisation))) * 100) / 100;
