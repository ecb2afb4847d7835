import type { FaceElevation, FormSet } from "#lib/trade/shutter/form-set.ts";
import type { FaceName } from "#lib/trade/shutter/shutter-rule.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";

/** Height above the foot of the form, in millimetres, to a place on the drawing; the same for every drawing beside it. */
export type Upright = { readonly height: number; readonly scale: number; readonly toY: (heightMm: number) => number };

const ABOVE = 26;
const BELOW = 48;

export function uprightOf({ bounds }: FaceElevation, height: number): Upright {
  const scale = (height - ABOVE - BELOW) / Math.max(bounds.h, 1);
  return { height, scale, toY: (heightMm) => height - BELOW - (heightMm - bounds.y) * scale };
}

/** Room beside the form for running dimensions to its left and notes to its right. */
export const besideForm = (units: Units): { readonly left: number; readonly right: number } =>
  units === "us" ? { left: 124, right: 84 } : { left: 76, right: 66 };

export function elevationWidth(elevation: FaceElevation, height: number, units: Units): number {
  const { left, right } = besideForm(units);
  return Math.ceil(left + elevation.bounds.w * uprightOf(elevation, height).scale + right);
}

/** Between the figures of running dimensions. */
export const FIGURE_GAP = 13.5;
/** Where the running dimensions of a drawing of this height begin and end. */
export const runningRoom = (height: number): { readonly from: number; readonly to: number } => ({ from: 18, to: height - 40 });

const USUAL_HEIGHT = 440;

/** Of the drawing, in pixels: so high that the foot, every clamp and the top have room for a figure each. */
export function elevationHeight({ clamps }: FaceElevation): number {
  const { from, to } = runningRoom(0);
  return Math.max(USUAL_HEIGHT, Math.ceil(from - to + (clamps.length + 1) * FIGURE_GAP));
}

export const PRESSURE_WIDTH = 176;

export const elevationOf = (formSet: FormSet, face: FaceName): FaceElevation | undefined =>
  formSet.elevations.find((elevation) => elevation.face === face);

export const round1 = (value: number): number => Math.round(value * 10) / 10;
