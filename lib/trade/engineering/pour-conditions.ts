import type { DegreesCelsius, KilonewtonsPerCubicMetre, Kilopascals, Metres, MetresPerHour, Millimetres } from "#lib/kernel/units.ts";
import type { Working } from "./working.ts";

export const PRESSURE_METHODS = ["full-head", "aci-347-si", "aci-347-us", "ciria-108"] as const;
export type PressureMethod = (typeof PRESSURE_METHODS)[number];

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

/** A corner of the pressure line: depth below the concrete surface, and the pressure there. Straight lines between. */
export type PressurePoint = { readonly depth: Metres; readonly pressure: Kilopascals };

export type PressureClause = "liquid head" | "formula" | "minimum";

/** The pressure a form must carry, from the surface (depth 0) to the foot of the pour. */
export type PressureEnvelope = {
  readonly method: PressureMethod;
  /** Name and edition of the method, shown beside every number. */
  readonly edition: string;
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
