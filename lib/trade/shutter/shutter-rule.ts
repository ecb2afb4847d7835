import type { Kilograms, KilonewtonsPerMetre, Millimetres, NewtonsPerSquareMillimetre, Quantity } from "#lib/kernel/units.ts";
import type { KilonewtonMetresPerMetre, KilonewtonSquareMetresPerMetre } from "#lib/trade/engineering/engineering-units.ts";
import type { ClampCapacity } from "#lib/trade/engineering/clamps/clamp-capacity.ts";
import type { ClampSpacing } from "#lib/trade/engineering/clamps/clamp-spacing.ts";

export type KilogramsPerCubicMetre = Quantity<"kg/m3">;

export const JOINT_TYPES = ["two-over", "pinwheel", "fillet-corner"] as const;
export type JointType = (typeof JOINT_TYPES)[number];

/** Panels are lettered clockwise on plan: A at the top, B right, C below, D left. A and C are the column's width, B and D its depth. */
export const FACES = ["A", "B", "C", "D"] as const;
export type FaceName = (typeof FACES)[number];
export type FacePair = "A-C" | "B-D";

/** A board with its permissible values in the direction in which it spans: across the backing timbers. */
export type Ply = {
  readonly label: string;
  /** As measured, not as named. */
  readonly thickness: Millimetres;
  readonly sheetLength: Millimetres;
  readonly sheetWidth: Millimetres;
  readonly density: KilogramsPerCubicMetre;
  readonly bendingStiffness: KilonewtonSquareMetresPerMetre;
  readonly momentCapacity: KilonewtonMetresPerMetre;
  readonly shearCapacity: KilonewtonsPerMetre;
  readonly source: string;
};

/** Section as sawn. Laid flat the width lies on the ply; on edge the depth does. Stresses are permissible ones, all factors in. */
export type BackingTimber = {
  readonly label: string;
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly orientation: "flat" | "edge";
  readonly stockLength: Millimetres;
  readonly density: KilogramsPerCubicMetre;
  readonly modulus: NewtonsPerSquareMillimetre;
  readonly bendingStress: NewtonsPerSquareMillimetre;
  readonly shearStress: NewtonsPerSquareMillimetre;
  readonly source: string;
};

/** How one company boxes its columns; every number is an input. Plain data, kept as JSON. */
export type ShutterRule = {
  readonly joint: JointType;
  /** The pair cut at size + 2 × ply; read only by `two-over`. */
  readonly overPair: FacePair;
  readonly ply: Ply;
  readonly backing: BackingTimber;
  /** Edge timbers beyond the panel's edge: 0 is flush, at most the ply thickness. */
  readonly edgeProud: Millimetres;
  /** Widest centres of backing timbers, whatever the ply could span. */
  readonly largestTimberCentres: Millimetres;
  /** Leg of the corner strip; null leaves the arris sharp. `fillet-corner` always takes the ply thickness. */
  readonly filletLeg: Millimetres | null;
  readonly baseCleats: boolean;
  readonly jointCleats: boolean;
  readonly kickerHeight: Millimetres;
  readonly clampSpacing: ClampSpacing;
  /** 270 stands for span / 270. */
  readonly deflectionRatio: number;
  readonly twoPersonLift: Kilograms;
};

/** A clamp as the hirer states it: what it fits over, and what it may take. */
export type ClampKind = ClampCapacity & {
  readonly id: string;
  readonly name: string;
  /** Over the outside of the backing timbers, in either direction. */
  readonly minSize: Millimetres;
  readonly maxSize: Millimetres;
  readonly barLength: Millimetres;
  /** Of the bar seen on plan. */
  readonly barDepth: Millimetres;
  /** Of the bar seen in elevation. */
  readonly barThickness: Millimetres;
  readonly weight: Kilograms;
  readonly source: string;
};

export type RuleFault = { readonly limit: string; readonly given: number; readonly allowed: string };

/** Stands for "anything over 0" as a least value. */
const OVER_ZERO = Number.MIN_VALUE;

/** The first number that lies outside its bounds (name, given, least, most), if there is one. */
export function outOfBounds(bounds: readonly (readonly [string, number, number, number])[]): RuleFault | null {
  for (const [limit, given, least, most] of bounds)
    if (!(given >= least && given <= most)) return { limit, given, allowed: least === OVER_ZERO ? `over 0, up to ${most}` : `${least} to ${most}` };
  return null;
}

/** The first number of a rule that makes no sense, if there is one. */
export function faultIn(rule: ShutterRule): RuleFault | null {
  const { ply, backing, clampSpacing: spacing } = rule;
  return outOfBounds([
    ["ply thickness (mm)", ply.thickness, 6, 50],
    ["ply sheet length (mm)", ply.sheetLength, 600, 6000],
    ["ply sheet width (mm)", ply.sheetWidth, 300, 3000],
    ["backing timber width (mm)", backing.width, 15, 400],
    ["backing timber depth (mm)", backing.depth, 15, 400],
    ["edge timbers proud (mm)", rule.edgeProud, 0, ply.thickness],
    ["largest timber centres (mm)", rule.largestTimberCentres, 100, 1000],
    ["fillet leg (mm)", rule.filletLeg ?? 10, 5, 60],
    ["deflection ratio", rule.deflectionRatio, 50, 2000],
    ["clamp module (mm)", spacing.module, 1, 300],
    ["first clamp, lowest (mm)", spacing.firstMin, OVER_ZERO, spacing.firstMax],
    ["first clamp, highest (mm)", spacing.firstMax, spacing.module, 1000],
    ["top clamp from the top (mm)", spacing.topMax, OVER_ZERO, 2000],
    ["smallest clamp gap (mm)", spacing.smallestGap, Math.max(50, spacing.module), spacing.largestGap],
    ["largest clamp gap (mm)", spacing.largestGap, spacing.module, 3000],
  ]);
}
