import type { DegreesCelsius, Hours, KilonewtonsPerCubicMetre, Kilopascals, Metres, MetresPerHour, Millimetres } from "#lib/kernel/units.ts";
import type { Working } from "./working.ts";

export const PRESSURE_METHODS = ["full-head", "aci-347-si", "aci-347-us", "ciria-108"] as const;
export type PressureMethod = (typeof PRESSURE_METHODS)[number];

/** For workings only: characteristic values, and withdrawn editions kept for comparison. No shutter is designed by them. */
export const WORKING_ONLY_METHODS = ["din-18218-2010", "din-18218-1980", "aci-347-us-before-2001"] as const;
export type AnyPressureMethod = PressureMethod | (typeof WORKING_ONLY_METHODS)[number];

/** DIN 18218:2010 knows F1 to F6 and SCC, the edition of 1980 K1 (stiff) and K2 (plastic). */
export const CONSISTENCY_CLASSES = ["F1", "F2", "F3", "F4", "F5", "F6", "SCC", "K1", "K2"] as const;
export type ConsistencyClass = (typeof CONSISTENCY_CLASSES)[number];

/** portland: no blend; blend-low: under 70 % slag or 40 % fly ash, and other types; blend-high: over those shares. */
export const CEMENT_GROUPS = ["portland", "blend-low", "blend-high"] as const;
export type CementGroup = (typeof CEMENT_GROUPS)[number];

/** Everything about a pour that the pressure on the form depends on. The form's own size is handed over apart from it. */
export type PourConditions = {
  readonly method: PressureMethod;
  readonly concreteDensity: KilonewtonsPerCubicMetre;
  /** Of the concrete as placed, not of the air. */
  readonly temperature: DegreesCelsius;
  readonly riseRate: MetresPerHour;
  readonly cement: CementGroup;
  /** Any admixture that delays set, retarding superplasticizers included. */
  readonly retarder: boolean;
  readonly slump: Millimetres;
  /** How deep the internal vibrator goes below the surface. */
  readonly vibrationDepth: Millimetres;
  readonly selfCompacting: boolean;
  readonly externalVibration: boolean;
  readonly placing: "from-top" | "pumped-from-base";
  /** Height of concrete in the form; null fills the form to its top. */
  readonly pourHeight: Millimetres | null;
};

/** Pour conditions for any method; the last two are read by DIN 18218 only. */
export type PressureConditions = Omit<PourConditions, "method"> & {
  readonly method: AnyPressureMethod;
  readonly consistency?: ConsistencyClass | null;
  /** From mixing until the concrete no longer presses; DIN 18218:2010 covers 5 h to 20 h. */
  readonly settingEnd?: Hours | null;
};

/** The form a pour goes into, as far as the pressure depends on it. */
export type FormSize = { readonly height: Millimetres; readonly largestSide: Millimetres };

/**
 * service: the load as it is, for permissible stresses, or for design values once multiplied by a stated load factor.
 * characteristic: only for the partial-factor format, never against permissible stresses.
 */
export type PressureValueKind = "service" | "characteristic";

/** A corner of the pressure line: depth below the concrete surface, and the pressure there. Straight lines between. */
export type PressurePoint = { readonly depth: Metres; readonly pressure: Kilopascals };

export type PressureClause = "liquid head" | "formula" | "minimum";

/** The pressure a form must carry, from the surface (depth 0) to the foot of the pour. */
export type PressureEnvelope = {
  readonly method: AnyPressureMethod;
  /** Name and edition of the method, shown beside every number. */
  readonly edition: string;
  readonly valueKind: PressureValueKind;
  /** An edition kept for comparison only. */
  readonly withdrawn: boolean;
  readonly points: readonly PressurePoint[];
  readonly pourHeight: Metres;
  /** The largest pressure, at the foot. */
  readonly limit: Kilopascals;
  /** Depth at which the liquid head reaches the limit. */
  readonly liquidDepth: Metres;
  /** Which rule set the limit. */
  readonly governs: PressureClause;
  readonly working: readonly Working[];
};
