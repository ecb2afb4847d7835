import type { DegreesCelsius, KilonewtonsPerCubicMetre, Kilopascals, Metres, MetresPerHour } from "#lib/kernel/units.ts";
import { kPa } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { LimitingPressure } from "./limiting-pressure.ts";
import type { CementGroup } from "../pour-conditions.ts";
import { refusal, term } from "../working.ts";
import type { Refusal } from "../working.ts";

export const CIRIA_108_EDITION = "CIRIA Report 108 (1985)";
const SOURCE = "CIRIA Report 108, Concrete pressure on formwork, 1985 (read in worked sheets that state it; the C2 grouping from memory)";

/**
 * Temperature coefficient, K.
 *
 * Formula: K = (36 / (T + 16))^2, never rounded on the way.
 * Parameters: temperature T [degC] of the concrete at placing, 5 to 30.
 * Result: K [-]: 2.94 at 5 degC, 1 at 20 degC.
 * Limits: the range of temperature is held by `ciriaPressure`.
 * Example: T = 12.5 degC: (36 / 28.5)^2 = 1.5956.
 * Source: CIRIA Report 108 (1985), pressure formula.
 */
export const ciriaTemperatureCoefficient = (temperature: DegreesCelsius): number => (36 / (temperature + 16)) ** 2;

/**
 * Shape coefficient, C1.
 *
 * Formula: 1.5 for a column (both plan sides up to 2 m), 1.0 for a wall (a plan side over 2 m).
 * Parameters: largestSide [m], over 0.
 * Result: C1 [-].
 * Limits: none beyond the two cases; tapered forms are not covered.
 * Example: 0.35 x 2.25 m on plan: 1.0.
 * Source: CIRIA Report 108 (1985), coefficient C1.
 */
export const ciriaShapeCoefficient = (largestSide: Metres): number => (largestSide > 2 ? 1.0 : 1.5);

/**
 * Materials coefficient, C2.
 *
 * Formula: table, by cement group and retarder: portland 0.30 / 0.45, blend-low 0.45 / 0.60, blend-high 0.60 / 0.60 (without / with).
 * Parameters: cement [-] portland, blend-low (under 70 % slag or 40 % fly ash), blend-high (over those shares); retarder [-].
 * Result: C2 [-], 0.30 to 0.60.
 * Limits: the three groups only; every combination has a value.
 * Example: plain Portland cement with a retarder: 0.45.
 * Source: CIRIA Report 108 (1985), coefficient C2; full grouping from memory.
 */
export function ciriaMaterialCoefficient(cement: CementGroup, retarder: boolean): number {
  if (cement === "portland") return retarder ? 0.45 : 0.3;
  if (cement === "blend-low") return retarder ? 0.6 : 0.45;
  return 0.6;
}

/**
 * Lateral pressure of fresh concrete by CIRIA Report 108.
 *
 * Formula: P = min( D (C1 sqrt(R) + C2 K sqrt(H - C1 sqrt(R))), D h ); D h alone where C1 sqrt(R) reaches H.
 * Parameters: density D [kN/m3], over 0; shape C1 [-]; material C2 [-]; riseRate R [m/h], over 0; temperature T [degC], 5 to 30;
 *   formHeight H [m], the height of the FORM, over 0; pourHeight h [m], the height of the POUR, over 0 and up to H.
 * Result: P [kPa], the largest pressure in the form.
 * Limits: T outside 5 to 30 degC and a pour higher than its form are refused. Self-compacting concrete, external vibration and
 *   pumping from the base are outside the report (see `pressureEnvelope`, which holds those limits).
 * Example: D = 24.5 kN/m3, C1 = 1.5, C2 = 0.45, R = 1.7 m/h, T = 13 degC, H = 4.3 m, h = 4.1 m: C1 sqrt(R) = 1.9558 m, K = 1.5410,
 *   P = 24.5 (1.9558 + 0.45 x 1.5410 x sqrt(2.3442)) = 73.93 kPa; D h = 100.45 kPa; P = 73.93 kPa.
 * Source: CIRIA Report 108, Concrete pressure on formwork, Clear and Harrison, 1985, pressure formula.
 */
export function ciriaPressure(given: {
  readonly density: KilonewtonsPerCubicMetre;
  readonly shape: number;
  readonly material: number;
  readonly riseRate: MetresPerHour;
  readonly temperature: DegreesCelsius;
  readonly formHeight: Metres;
  readonly pourHeight: Metres;
}): Result<LimitingPressure<Kilopascals>, Refusal> {
  const { density, shape, material, riseRate, temperature, formHeight, pourHeight } = given;
  if (!(temperature >= 5 && temperature <= 30))
    return fail(refusal({ limit: "concrete temperature (degC)", given: temperature, allowed: "5 to 30 degC", source: SOURCE, message: "Above 30 degC enter 30: it is on the safe side. Below 5 degC use the full liquid head." }));
  if (pourHeight > formHeight)
    return fail(refusal({ limit: "pour height (m)", given: pourHeight, allowed: `up to the form height of ${formHeight} m`, source: SOURCE, message: "The form must be at least as high as the pour." }));
  const rise = shape * Math.sqrt(riseRate);
  const head = density * pourHeight;
  const coefficient = ciriaTemperatureCoefficient(temperature);
  const fluid = rise >= formHeight;
  const formula = fluid ? head : density * (rise + material * coefficient * Math.sqrt(formHeight - rise));
  const governs = formula < head ? "formula" : "liquid head";
  const limit = Math.min(formula, head);
  return ok({
    limit: kPa(limit),
    governs,
    working: {
      title: "Lateral pressure, CIRIA Report 108",
      inputs: [
        term("D", density, "kN/m3"), term("C1", shape, ""), term("C2", material, ""), term("R", riseRate, "m/h"),
        term("T", temperature, "degC"), term("H, form", formHeight, "m"), term("h, pour", pourHeight, "m"),
      ],
      formula: "P = min(D (C1 sqrt(R) + C2 K sqrt(H - C1 sqrt(R))), D h)",
      steps: [
        term("K", coefficient, ""), term("C1 sqrt(R)", rise, "m"), term("liquid head D h", head, "kPa"), term("governs", governs, ""),
        fluid ? term("C1 sqrt(R) reaches H", "liquid head applies", "") : term("formula", formula, "kPa"),
      ],
      result: term("P", limit, "kPa"),
      source: SOURCE,
    },
  });
}
