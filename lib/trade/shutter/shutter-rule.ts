import type { Kilograms, Kilonewtons, KilonewtonsPerMetre, Millimetres, NewtonsPerSquareMillimetre, Quantity } from "#lib/kernel/units.ts";
import type { KilonewtonMetresPerMetre, KilonewtonSquareMetresPerMetre } from "#lib/trade/engineering/engineering-units.ts";

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

export type ClampSpacing = {
  readonly module: Millimetres;
  /** Height of the lowest clamp above the foot of the form. */
  readonly firstMin: Millimetres;
  readonly firstMax: Millimetres;
  /** From the top clamp to the top of the form. */
  readonly topMax: Millimetres;
  readonly smallestGap: Millimetres;
  readonly largestGap: Millimetres;
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

/** A clamp as the hirer states it: what it fits over, and the force one side of it may take. */
export type ClampKind = {
  readonly id: string;
  readonly name: string;
  /** Over the outside of the backing timbers, in either direction. */
  readonly minSize: Millimetres;
  readonly maxSize: Millimetres;
  /** The force that one face of the form may put on one clamp. */
  readonly sideCapacity: Kilonewtons;
  readonly barLength: Millimetres;
  /** Of the bar seen on plan. */
  readonly barDepth: Millimetres;
  /** Of the bar seen in elevation. */
  readonly barThickness: Millimetres;
  readonly weight: Kilograms;
  readonly source: string;
};
