import type { Kilopascals } from "#lib/kernel/units.ts";
import { kPa } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { psf } from "../engineering-units.ts";
import type { PoundsPerSquareFoot } from "../engineering-units.ts";
import { term } from "../working.ts";
import type { Refusal } from "../working.ts";
import { ACI_347_SOURCE, aciBoundedPressure, aciUnitWeightCoefficientSi, aciUnitWeightCoefficientUs, outsideAciTemperatureSi, outsideAciTemperatureUs } from "./aci-347-coefficients.ts";
import type { AciPourSi, AciPourUs } from "./aci-347-column.ts";
import type { LimitingPressure } from "./limiting-pressure.ts";

export type AciEquation = "column" | "wall" | "liquid head";

/** Both unit families round the same two rates and height on their own. */
const STEPS = { us: { side: 6.5, height: 14, slow: 7, fast: 15 }, si: { side: 2, height: 4.2, slow: 2.1, fast: 4.5 } } as const;

/**
 * Which ACI 347 equation a pour goes by.
 *
 * Formula: no plan side over 6.5 ft (2 m): column, at any rate. Else: R < 7 ft/h (2.1 m/h) and form up to 14 ft (4.2 m): column; R up to
 *   15 ft/h (4.5 m/h): wall; faster: liquid head.
 * Parameters: family [-] us or si; largestSide [ft or m]; height of the form [ft or m]; riseRate [ft/h or m/h], each over 0.
 * Result: the equation [-].
 * Limits: none; every pour falls into one branch.
 * Example: us, 9 ft, 12 ft, 5.5 ft/h: column; the same at 16 ft: wall; at 16 ft/h: liquid head.
 * Source: ACI 347-04 cl. 2.2.2; branches: Hurd, letter on the 2004 edition, Concrete Construction; SI steps from memory.
 */
export function aciEquation(family: keyof typeof STEPS, largestSide: number, height: number, riseRate: number): AciEquation {
  const steps = STEPS[family];
  if (largestSide <= steps.side) return "column";
  if (riseRate < steps.slow) return height <= steps.height ? "column" : "wall";
  return riseRate <= steps.fast ? "wall" : "liquid head";
}

/**
 * Lateral pressure of fresh concrete on a wall form in US units.
 *
 * Formula: p = min( max( C_c C_w (150 + 43400 / T + 2800 R / T), 600 C_w ), w h ).
 * Parameters: riseRate R [ft/h], over 0; temperature T [degF] of the concrete, 40 to 90; density w [pcf], over 0;
 *   pourHeight h [ft], over 0; chemistry C_c [-].
 * Result: p [psf], the largest pressure in the form.
 * Limits: T outside 40 to 90 degF is refused; for the walls that `aciEquation` sends here, slump up to 7 in., internal vibration up to 4 ft.
 * Example: R = 9.2 ft/h, T = 68 degF, w = 147 pcf, h = 17.5 ft, C_c = 1.2: 1.2 x (150 + 638.24 + 378.82) = 1400.5 psf.
 * Source: ACI 347-04 eq. (2.3) / ACI 347R-14 eq. (4.2.2.1a(2)).
 */
export function aciWallPressureUs(given: AciPourUs): Result<LimitingPressure<PoundsPerSquareFoot>, Refusal> {
  const { riseRate, temperature, density, pourHeight, chemistry } = given;
  const outside = outsideAciTemperatureUs(temperature);
  if (outside !== null) return fail(outside);
  const weight = aciUnitWeightCoefficientUs(density);
  const formula = chemistry * weight * (150 + 43_400 / temperature + (2800 * riseRate) / temperature);
  const { limit, governs } = aciBoundedPressure(formula, 600 * weight, density * pourHeight);
  return ok({
    limit: psf(limit),
    governs,
    working: {
      title: "Lateral pressure, ACI 347 wall equation, US units",
      inputs: [term("R", riseRate, "ft/h"), term("T", temperature, "degF"), term("w", density, "pcf"), term("h", pourHeight, "ft"), term("C_c", chemistry, "")],
      formula: "p = min(max(C_c C_w (150 + 43400 / T + 2800 R / T), 600 C_w), w h)",
      steps: [term("C_w", weight, ""), term("formula", formula, "psf"), term("minimum 600 C_w", 600 * weight, "psf"), term("liquid head w h", density * pourHeight, "psf"), term("governs", governs, "")],
      result: term("p", limit, "psf"),
      source: ACI_347_SOURCE,
    },
  });
}

/**
 * Lateral pressure of fresh concrete on a wall form in SI units.
 *
 * Formula: p = min( max( C_c C_w (7.2 + 1156 / (T + 17.8) + 244 R / (T + 17.8)), 30 C_w ), w h ).
 * Parameters: riseRate R [m/h], over 0; temperature T [degC] of the concrete, 5 to 32; density w [kN/m3], over 0;
 *   pourHeight h [m], over 0; chemistry C_c [-].
 * Result: p [kPa], the largest pressure in the form.
 * Limits: T outside 5 to 32 degC is refused; for the walls that `aciEquation` sends here, slump up to 175 mm, internal vibration up to
 *   1.2 m. A textbook prints 1154 and T + 18 for the same equation: 0.2 % apart.
 * Example: R = 2.7 m/h, T = 19 degC, w = 23.5 kN/m3, h = 5.2 m, C_c = 1.2: 1.2 x (7.2 + 31.413 + 17.902) = 67.82 kPa.
 * Source: ACI 347-04 eq. (2.3) / ACI 347R-14 eq. (4.2.2.1a(2)), SI text, from memory.
 */
export function aciWallPressureSi(given: AciPourSi): Result<LimitingPressure<Kilopascals>, Refusal> {
  const { riseRate, temperature, density, pourHeight, chemistry } = given;
  const outside = outsideAciTemperatureSi(temperature);
  if (outside !== null) return fail(outside);
  const weight = aciUnitWeightCoefficientSi(density);
  const formula = chemistry * weight * (7.2 + 1156 / (temperature + 17.8) + (244 * riseRate) / (temperature + 17.8));
  const { limit, governs } = aciBoundedPressure(formula, 30 * weight, density * pourHeight);
  return ok({
    limit: kPa(limit),
    governs,
    working: {
      title: "Lateral pressure, ACI 347 wall equation, SI units",
      inputs: [term("R", riseRate, "m/h"), term("T", temperature, "degC"), term("w", density, "kN/m3"), term("h", pourHeight, "m"), term("C_c", chemistry, "")],
      formula: "p = min(max(C_c C_w (7.2 + 1156 / (T + 17.8) + 244 R / (T + 17.8)), 30 C_w), w h)",
      steps: [term("C_w", weight, ""), term("formula", formula, "kPa"), term("minimum 30 C_w", 30 * weight, "kPa"), term("liquid head w h", density * pourHeight, "kPa"), term("governs", governs, "")],
      result: term("p", limit, "kPa"),
      source: ACI_347_SOURCE,
    },
  });
}
