import type { DegreesCelsius, Hours, NewtonsPerSquareMillimetre } from "#lib/kernel/units.ts";
import type { HardeningClass } from "./maturity.ts";

/** How hours at the recorded temperature count as hours at the reference temperature. */
export type AgeFunction =
  | { readonly kind: "arrhenius"; readonly activationEnergyKjPerMol: number; readonly reference: DegreesCelsius }
  | { readonly kind: "astm-c1074"; readonly q: number; readonly reference: DegreesCelsius }
  | { readonly kind: "en-1992" };

export type StripRule =
  | { readonly kind: "aci-347" }
  /** 16 to 24 h, as the engineer decides. */
  | { readonly kind: "is-456"; readonly hours: Hours }
  | { readonly kind: "bs-8110" }
  | { readonly kind: "project-hours"; readonly hours: Hours; readonly leastTemperature: DegreesCelsius | null }
  | { readonly kind: "maturity"; readonly datum: DegreesCelsius; /** In degC.h. */ readonly required: number }
  | { readonly kind: "equivalent-age"; readonly age: AgeFunction; readonly required: Hours }
  /** Strength grows by EN 1992-1-1 with the equivalent age of its Annex B; at least twice the stress on release is asked for. */
  | {
      readonly kind: "strength";
      readonly hardening: HardeningClass;
      readonly meanStrength28: NewtonsPerSquareMillimetre;
      readonly stressOnRelease: NewtonsPerSquareMillimetre;
      /** The project's own least strength, whatever the stress. */
      readonly leastStrength: NewtonsPerSquareMillimetre;
    };
