import type { DegreesCelsius, KilonewtonsPerCubicMetre, Kilopascals, Metres, MetresPerHour } from "#lib/kernel/units.ts";
import { kPa } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { psf } from "../engineering-units.ts";
import type { DegreesFahrenheit, Feet, FeetPerHour, PoundsPerCubicFoot, PoundsPerSquareFoot } from "../engineering-units.ts";
import { term } from "../working.ts";
import type { Refusal } from "../working.ts";
import { ACI_347_SOURCE, aciBoundedPressure, aciUnitWeightCoefficientSi, aciUnitWeightCoefficientUs, outsideAciTemperatureSi, outsideAciTemperatureUs } from "./aci-347-coefficients.ts";
import type { LimitingPressure } from "./limiting-pressure.ts";

export type AciPourUs = {
  readonly riseRate: FeetPerHour;
  readonly temperature: DegreesFahrenheit;
  readonly density: PoundsPerCubicFoot;
  readonly pourHeight: Feet;
  readonly chemistry: number;
};
export type AciPourSi = {
  readonly riseRate: MetresPerHour;
  readonly temperature: DegreesCelsius;
  readonly density: KilonewtonsPerCubicMetre;
  readonly pourHeight: Metres;
  readonly chemistry: number;
};

/**
 * Lateral pressure of fresh concrete on a column form in US units.
 *
 * Formula: p = min( max( C_c C_w (150 + 9000 R / T), 600 C_w ), w h ).
 * Parameters: riseRate R [ft/h], over 0; temperature T [degF] of the concrete, 40 to 90; density w [pcf], over 0;
 *   pourHeight h [ft], over 0; chemistry C_c [-].
 * Result: p [psf], the largest pressure in the form.
 * Limits: T outside 40 to 90 degF (the range of the published tables) is refused; for columns (no plan side over 6.5 ft)
 *   at any rate, and for walls up to 14 ft at under 7 ft/h (see `aciEquation`); slump up to 7 in. and internal vibration up to 4 ft deep
 *   (held by `pressureEnvelope`).
 * Example: R = 6.3 ft/h, T = 57 degF, w = 148 pcf, h = 11.5 ft, C_c = 1.2: 1.2 x 1.0 x (150 + 9000 x 6.3 / 57) = 1373.7 psf.
 * Source: ACI 347-04 eq. (2.2) / ACI 347R-14 eq. (4.2.2.1a(1)); minimum and liquid-head bound, same clauses.
 */
export function aciColumnPressureUs(given: AciPourUs): Result<LimitingPressure<PoundsPerSquareFoot>, Refusal> {
  const { riseRate, temperature, density, pourHeight, chemistry } = given;
  const outside = outsideAciTemperatureUs(temperature);
  if (outside !== null) return fail(outside);
  const weight = aciUnitWeightCoefficientUs(density);
  const formula = chemistry * weight * (150 + (9000 * riseRate) / temperature);
  const { limit, governs } = aciBoundedPressure(formula, 600 * weight, density * pourHeight);
  return ok({
    limit: psf(limit),
    governs,
    working: {
      title: "Lateral pressure, ACI 347 column equation, US units",
      inputs: [term("R", riseRate, "ft/h"), term("T", temperature, "degF"), term("w", density, "pcf"), term("h", pourHeight, "ft"), term("C_c", chemistry, "")],
      formula: "p = min(max(C_c C_w (150 + 9000 R / T), 600 C_w), w h)",
      steps: [term("C_w", weight, ""), term("formula", formula, "psf"), term("minimum 600 C_w", 600 * weight, "psf"), term("liquid head w h", density * pourHeight, "psf"), term("governs", governs, "")],
      result: term("p", limit, "psf"),
      source: ACI_347_SOURCE,
    },
  });
}

/**
 * Lateral pressure of fresh concrete on a column form in SI units.
 *
 * Formula: p = min( max( C_c C_w (7.2 + 785 R / (T + 17.8)), 30 C_w ), w h ).
 * Parameters: riseRate R [m/h], over 0; temperature T [degC] of the concrete, 5 to 32; density w [kN/m3], over 0;
 *   pourHeight h [m], over 0; chemistry C_c [-].
 * Result: p [kPa], the largest pressure in the form.
 * Limits: T outside 5 to 32 degC (the range of the published tables) is refused; for columns (no plan side over 2 m)
 *   at any rate, and for walls up to 4.2 m at under 2.1 m/h (see `aciEquation`); slump up to 175 mm and internal vibration up to 1.2 m deep
 *   (held by `pressureEnvelope`). The SI minimum of 30 kPa is 627 psf, not 600: the two unit families are kept apart.
 * Example: R = 2.3 m/h, T = 17 degC, w = 23.5 kN/m3, h = 3.6 m, C_c = 1.2: 1.2 x 1.0 x (7.2 + 785 x 2.3 / 34.8) = 70.90 kPa.
 * Source: ACI 347-04 eq. (2.2) / ACI 347R-14 eq. (4.2.2.1a(1)), SI text, from memory.
 */
export function aciColumnPressureSi(given: AciPourSi): Result<LimitingPressure<Kilopascals>, Refusal> {
  const { riseRate, temperature, density, pourHeight, chemistry } = given;
  const outside = outsideAciTemperatureSi(temperature);
  if (outside !== null) return fail(outside);
  const weight = aciUnitWeightCoefficientSi(density);
  const formula = chemistry * weight * (7.2 + (785 * riseRate) / (temperature + 17.8));
  const { limit, governs } = aciBoundedPressure(formula, 30 * weight, density * pourHeight);
  return ok({
    limit: kPa(limit),
    governs,
    working: {
      title: "Lateral pressure, ACI 347 column equation, SI units",
      inputs: [term("R", riseRate, "m/h"), term("T", temperature, "degC"), term("w", density, "kN/m3"), term("h", pourHeight, "m"), term("C_c", chemistry, "")],
      formula: "p = min(max(C_c C_w (7.2 + 785 R / (T + 17.8)), 30 C_w), w h)",
      steps: [term("C_w", weight, ""), term("formula", formula, "kPa"), term("minimum 30 C_w", 30 * weight, "kPa"), term("liquid head w h", density * pourHeight, "kPa"), term("governs", governs, "")],
      result: term("p", limit, "kPa"),
      source: ACI_347_SOURCE,
    },
  });
}
