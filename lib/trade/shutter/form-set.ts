import { m, m2, m3 } from "#lib/kernel/units.ts";
import type { CubicMetres, Kilograms, Kilonewtons, Metres, Millimetres, SquareMetres } from "#lib/kernel/units.ts";
import type { PourConditions, PressureEnvelope } from "#lib/trade/engineering/pour-conditions.ts";
import type { Refusal, Working } from "#lib/trade/engineering/working.ts";
import type { ClampKind, FaceName, FacePair, JointType, ShutterRule } from "./shutter-rule.ts";

export type ColumnSection =
  | { readonly shape: "rectangular"; readonly width: Millimetres; readonly depth: Millimetres }
  | { readonly shape: "round"; readonly diameter: Millimetres };

export type ShutterInput = {
  readonly section: ColumnSection;
  readonly formHeight: Millimetres;
  readonly rule: ShutterRule;
  readonly pour: PourConditions;
  readonly clampKinds: readonly ClampKind[];
};

/** Left, lower corner and size in millimetres; x to the right, y upwards. */
export type Rect = { readonly x: Millimetres; readonly y: Millimetres; readonly w: Millimetres; readonly h: Millimetres };

export type TimberRole = "edge" | "middle";
export type CleatRole = "base" | "joint";
export type Corner = "AB" | "BC" | "CD" | "DA";

/** Plan section. Origin at the column's centre, the column's width along x; face A is at the top. */
export type PlanGeometry = {
  readonly concrete: Rect;
  readonly ply: readonly { readonly face: FaceName; readonly rect: Rect }[];
  readonly timbers: readonly { readonly face: FaceName; readonly role: TimberRole; readonly rect: Rect }[];
  /** The strip's bounding square, and its triangle: right angle first. */
  readonly fillets: readonly { readonly corner: Corner; readonly rect: Rect; readonly points: readonly (readonly [number, number])[] }[];
  /** Bars cross at the corners: those of A and C lie over those of B and D. */
  readonly clampBars: readonly { readonly face: FaceName; readonly over: boolean; readonly rect: Rect }[];
  /** Outside of the backing timbers: what the clamp has to reach over. */
  readonly outsideBacking: Rect;
  /** Everything drawn. */
  readonly bounds: Rect;
};

/** One face seen from outside. Origin on the column's centre line at the foot of the form; x to the viewer's right, y up. */
export type FaceElevation = {
  readonly face: FaceName;
  readonly ply: readonly Rect[];
  readonly timbers: readonly { readonly role: TimberRole; readonly rect: Rect }[];
  readonly cleats: readonly { readonly role: CleatRole; readonly rect: Rect }[];
  readonly clamps: readonly { readonly height: Millimetres; readonly rect: Rect }[];
  readonly concreteTop: Millimetres;
  readonly bounds: Rect;
};

export type Panel = {
  readonly face: FaceName;
  /** Overall ply size. */
  readonly width: Millimetres;
  readonly height: Millimetres;
  /** The concrete side it closes. */
  readonly side: Millimetres;
  readonly pieces: readonly { readonly width: Millimetres; readonly height: Millimetres }[];
  readonly timberCount: number;
  readonly timberCentres: Millimetres;
  readonly weight: Kilograms;
};

export type CuttingPart = "ply" | "backing" | "fillet" | "base-cleat" | "joint-cleat";
/** Identical pieces together, in the order in which they are cut. */
export type CuttingLine = {
  readonly part: CuttingPart;
  readonly material: string;
  readonly count: number;
  readonly length: Millimetres;
  readonly width: Millimetres;
  readonly thickness: Millimetres;
  readonly faces: readonly FaceName[];
  /** How many of them each face takes. */
  readonly countOn: Readonly<Partial<Record<FaceName, number>>>;
};

export type CheckElement = "ply" | "backing" | "clamp" | "arm" | "wedge";
export type CheckKind = "bending" | "shear" | "deflection" | "force";
export type Check = {
  readonly element: CheckElement;
  readonly what: CheckKind;
  /** The pair of faces it belongs to. */
  readonly faces: FacePair;
  readonly demand: number;
  readonly capacity: number;
  readonly unit: string;
  /** demand / capacity; never over 1 in a form set that was given out. */
  readonly utilisation: number;
  /** Height above the foot of the form. */
  readonly at: Millimetres;
  readonly source: string;
};

export type ClampLayout = {
  readonly kind: ClampKind;
  /** Of the bars' centres, above the foot of the form, lowest first. */
  readonly heights: readonly Millimetres[];
  /** What each pair of faces puts on each clamp, and its hardest-worked check. */
  readonly forces: readonly { readonly height: Millimetres; readonly facesAC: Kilonewtons; readonly facesBD: Kilonewtons; readonly utilisation: number }[];
  /** No layout can have fewer than `lowerBound`; only where it equals the count is the count called the fewest. */
  readonly lowerBound: number;
  readonly provenFewest: boolean;
  /** Why the count stands as it does. */
  readonly reason: string;
};

export type Quantities = { readonly contactArea: SquareMetres; readonly volume: CubicMetres; readonly height: Metres };

/** Contact area = perimeter × height, volume = plan area × height; arris fillets are not taken off. */
export function quantities(section: ColumnSection, height: Millimetres): Quantities {
  const tall = height / 1000;
  if (section.shape === "round") {
    const diameter = section.diameter / 1000;
    return { contactArea: m2(Math.PI * diameter * tall), volume: m3((Math.PI * diameter * diameter * tall) / 4), height: m(tall) };
  }
  const width = section.width / 1000;
  const depth = section.depth / 1000;
  return { contactArea: m2(2 * (width + depth) * tall), volume: m3(width * depth * tall), height: m(tall) };
}

export type WarningCode = "heavy-panel" | "joint-in-backing" | "vertical-ply-joint" | "example-figures" | "utilisation-high" | "pour-below-form";
export type Warning = {
  readonly code: WarningCode;
  readonly values: Readonly<Record<string, string | number>>;
  readonly message: string;
};

/** Wording lives in the screens. */
export const CAUTIONS = ["competent-person", "hirer-data", "permissible-stress", "rise-rate-limit", "props-and-wind", "seal-and-hold-down"] as const;
export type CautionKey = (typeof CAUTIONS)[number];

/** The reusable box for one column size and height: what to cut, how to clamp it, and why. */
export type FormSet = {
  readonly section: Extract<ColumnSection, { shape: "rectangular" }>;
  readonly formHeight: Millimetres;
  readonly pourHeight: Millimetres;
  readonly joint: JointType;
  /** The pair cut at size + 2 × ply; null for the joints in which all four are alike. */
  readonly overPair: FacePair | null;
  readonly panels: readonly Panel[];
  readonly cutting: readonly CuttingLine[];
  readonly clamps: ClampLayout;
  readonly pressure: PressureEnvelope;
  readonly checks: readonly Check[];
  readonly quantities: Quantities;
  /** Panels only, without clamps. */
  readonly weight: Kilograms;
  readonly plan: PlanGeometry;
  readonly elevations: readonly FaceElevation[];
  readonly warnings: readonly Warning[];
  readonly cautions: readonly CautionKey[];
  readonly working: readonly Working[];
};

export type ShutterRefusalKind =
  | "round-section"
  | "invalid-input"
  | "pressure-limit"
  | "ply-span"
  | "no-clamp-fits"
  | "no-clamp-layout";

/** Why there is no form set. Area and volume are still given where the section allows. */
export type ShutterRefusal = Refusal & { readonly kind: ShutterRefusalKind; readonly quantities: Quantities | null };
