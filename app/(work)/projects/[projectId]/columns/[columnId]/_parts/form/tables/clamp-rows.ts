import type { ClampLayout } from "#lib/trade/shutter/form-set.ts";

export type ClampRow = {
  /** Counted from the foot. */
  readonly number: number;
  readonly height: number;
  readonly gapBelow: number;
  readonly facesAC: number;
  readonly facesBD: number;
  /** The larger of the two forces over what one side may take. */
  readonly utilisation: number;
};

/** The clamps of a layout, the highest first. */
export function clampRows({ forces, kind }: Pick<ClampLayout, "forces" | "kind">): readonly ClampRow[] {
  return forces
    .map(({ height, facesAC, facesBD }, index) => ({
      number: index + 1, height, gapBelow: height - (forces[index - 1]?.height ?? 0), facesAC, facesBD,
      utilisation: Math.max(facesAC, facesBD) / kind.sideCapacity,
    }))
    .reverse();
}
