import type { DegreesCelsius, Hours, NewtonsPerSquareMillimetre } from "#lib/kernel/units.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { Refusal, Working } from "../working.ts";

export const STRENGTH_CLASSES = ["R", "N", "S"] as const;
/** Rapid, normal and slow hardening cement of EN 1992-1-1. */
export type HardeningClass = (typeof STRENGTH_CLASSES)[number];

/** How hours at the recorded temperature count as hours at the reference temperature. */
export type AgeFunction =
  | { readonly kind: "arrhenius"; readonly activationEnergyKjPerMol: number; readonly reference: DegreesCelsius }
  | { readonly kind: "astm-c1074"; readonly q: number; readonly reference: DegreesCelsius }
  | { readonly kind: "en-1992" };

export type StripRule =
  | { readonly kind: "aci-347" }
  | { readonly kind: "is-456"; readonly hours: Hours }
  | { readonly kind: "bs-8110" }
  | { readonly kind: "project-hours"; readonly hours: Hours; readonly leastTemperature: DegreesCelsius | null }
  | { readonly kind: "maturity"; readonly datum: DegreesCelsius; readonly required: number }
  | { readonly kind: "equivalent-age"; readonly age: AgeFunction; readonly required: Hours }
  /** Strength grows by EN 1992-1-1 with the equivalent age of its Annex B; at least twice the stress on release is asked for. */
  | { readonly kind: "strength"; readonly hardening: HardeningClass; readonly meanStrength28: NewtonsPerSquareMillimetre; readonly stressOnRelease: NewtonsPerSquareMillimetre; readonly leastStrength: NewtonsPerSquareMillimetre };

export type StripTimeInput = {
  readonly rule: StripRule;
  /** One reading for each whole hour from the end of the pour; null where the record has a gap. */
  readonly hourly: readonly (DegreesCelsius | null)[];
  readonly measured: "air" | "concrete";
};

export type StripCaution = "early-strength-by-test" | "clock-is-not-strength" | "soffit-rule-governs" | "engineer-releases" | "frost";

export type StripTimeAnswer = {
  /** After the end of the pour. */
  readonly earliest: Hours;
  readonly required: number;
  readonly unit: string;
  /** What had been gathered by the end of each hour. */
  readonly progress: readonly number[];
  readonly dependsOn: readonly string[];
  readonly cautions: readonly StripCaution[];
  readonly working: readonly Working[];
};

export type StripTimeWorking = (input: StripTimeInput) => Result<StripTimeAnswer, Refusal>;
