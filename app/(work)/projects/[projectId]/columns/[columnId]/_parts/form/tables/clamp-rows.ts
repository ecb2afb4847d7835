import type { ClampLayout } from "#lib/trade/shutter/form-set.ts";

export type ClampRow = {
  /** Counted from the foot. */
  readonly number: number;
  readonly height: number;
  readonly gapBelow: number;
  readonly facesAC: number;
  readonly facesBD: number;
  /** Its hardest-worked check: side, arm or wedge. */
  readonly utilisation: number;
};

/** The clamps of a layout, the highest first. */
export function clampRows({ forces }: Pick<ClampLayout, "forces">): readonly ClampRow[] {
  return forces
    .map(({ height, facesAC, facesBD, utilisation }, index) => ({
      number: index + 1, height, gapBelow: height - (forces[index - 1]?.height ?? 0), facesAC, facesBD, utilisation,
    }))
    .reverse();
}
