import type { DegreesCelsius, KilonewtonsPerCubicMetre, Kilopascals, Metres, MetresPerHour } from "#lib/kernel/units.ts";
import { kPa } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { psf } from "../engineering-units.ts";
import type { DegreesFahrenheit, Feet, FeetPerHour, PoundsPerCubicFoot, PoundsPerSquareFoot } from "../engineering-units.ts";
import type { CementGroup, PressureClause } from "../pour-conditions.ts";
import { refusal, term } from "../working.ts";
import type { Refusal, Working } from "../working.ts";

export const ACI_347_EDITION = "ACI 347-04 / ACI 347R-14, column equation";
const SOURCE = "ACI 347-04 cl. 2.2.2 and ACI 347R-14 cl. 4.2.2 (coefficient tables and SI text from memory of the standard)";
const GRAVITY = 9.80665;

/** The answer of one pressure method: the largest pressure, the rule that set it, and how. */
export type LimitingPressure<Unit> = { readonly limit: Unit; readonly governs: PressureClause; readonly working: Working };

/**
 * Chemistry coefficient of the concrete, C_c.
 *
 * Formula: table, by cement group and retarder: portland 1.0 / 1.2, blend-low 1.2 / 1.4, blend-high 1.4 / 1.4 (without / with).
 * Parameters: cement [-] portland (types I, II, III), blend-low (other types, under 70 % slag or 40 % fly ash), blend-high (over
 *   those shares); retarder [-] any admixture that delays set, retarding superplasticizers included.
 * Result: C_c [-], 1.0 to 1.4.
 * Limits: the three groups only; every combination has a value.
 * Example: a blend with 35 % slag and a retarder: 1.4.
 * Source: ACI 347-04 Table 2.2 / ACI 347R-14 Table 4.2.2.1a(b), from memory.
 */
export function aciChemistryCoefficient(cement: CementGroup, retarder: boolean): number {
  if (cement === "portland") return retarder ? 1.2 : 1.0;
  if (cement === "blend-low") return retarder ? 1.4 : 1.2;
  return 1.4;
}

/** Both unit families share the shape; their steps lie at rounded values of their own, so the steps are arguments. */
function unitWeightCoefficient(density: number, light: number, heavy: number, reference: number): number {
  if (density < light) return Math.max(0.8, 0.5 * (1 + density / reference));
  return density <= heavy ? 1 : density / reference;
}

/**
 * Unit-weight coefficient of the concrete in US units, C_w.
 *
 * Formula: w < 140: max(0.80, 0.5 (1 + w / 145)); 140 to 150: 1.0; over 150: w / 145.
 * Parameters: density w [pcf], over 0.
 * Result: C_w [-], not under 0.80.
 * Limits: it steps up by 3 % where w passes 150 pcf, as printed.
 * Example: w = 120 pcf: 0.5 (1 + 120 / 145) = 0.9138.
 * Source: ACI 347-04 Table 2.1 / ACI 347R-14 Table 4.2.2.1a(a), from memory.
 */
export const aciUnitWeightCoefficientUs = (density: PoundsPerCubicFoot): number => unitWeightCoefficient(density, 140, 150, 145);

/**
 * Unit-weight coefficient of the concrete in SI units, C_w.
 *
 * Formula: rho < 2240: max(0.80, 0.5 (1 + rho / 2320)); 2240 to 2400: 1.0; over 2400: rho / 2320, with rho = 1000 w / 9.80665.
 * Parameters: density w [kN/m3], over 0.
 * Result: C_w [-], not under 0.80.
 * Limits: it steps up by 3 % where rho passes 2400 kg/m3 (23.54 kN/m3), as printed.
 * Example: w = 25 kN/m3: rho = 2549.3 kg/m3, C_w = 2549.3 / 2320 = 1.0988.
 * Source: ACI 347-04 Table 2.1 / ACI 347R-14 Table 4.2.2.1a(a), SI text, from memory.
 */
export const aciUnitWeightCoefficientSi = (density: KilonewtonsPerCubicMetre): number =>
  unitWeightCoefficient(Math.round((density * 1e9) / GRAVITY) / 1e6, 2240, 2400, 2320);

/** The order matters: a short pour may lie under the minimum, never over its own liquid head. */
function boundedPressure(formula: number, floor: number, head: number): { limit: number; governs: PressureClause } {
  const raised = Math.max(formula, floor);
  if (head <= raised) return { limit: head, governs: "liquid head" };
  return { limit: raised, governs: floor > formula ? "minimum" : "formula" };
}

const outside = (limit: string, given: number, allowed: string, message: string): Refusal => refusal({ limit, given, allowed, source: SOURCE, message });

/**
 * Lateral pressure of fresh concrete on a column form in US units.
 *
 * Formula: p = min( max( C_c C_w (150 + 9000 R / T), 600 C_w ), w h ).
 * Parameters: riseRate R [ft/h], over 0; temperature T [degF] of the concrete, 40 to 90; density w [pcf], over 0;
 *   pourHeight h [ft], over 0; chemistry C_c [-].
 * Result: p [psf], the largest pressure in the form.
 * Limits: T outside 40 to 90 degF (the range of the published tables) is refused; the column equation holds where no plan side is
 *   over 6.5 ft, for slump up to 7 in. and internal vibration up to 4 ft deep (see `pressureEnvelope`, which holds those limits).
 * Example: R = 6.3 ft/h, T = 57 degF, w = 148 pcf, h = 11.5 ft, C_c = 1.2: 1.2 x 1.0 x (150 + 9000 x 6.3 / 57) = 1373.7 psf.
 * Source: ACI 347-04 eq. (2.2) / ACI 347R-14 eq. (4.2.2.1a(1)); minimum and liquid-head bound, same clauses.
 */
export function aciColumnPressureUs(given: {
  readonly riseRate: FeetPerHour;
  readonly temperature: DegreesFahrenheit;
  readonly density: PoundsPerCubicFoot;
  readonly pourHeight: Feet;
  readonly chemistry: number;
}): Result<LimitingPressure<PoundsPerSquareFoot>, Refusal> {
  const { riseRate, temperature, density, pourHeight, chemistry } = given;
  if (!(temperature >= 40 && temperature <= 90))
    return fail(outside("concrete temperature (degF)", temperature, "40 to 90 degF", "Above 90 degF enter 90: it is on the safe side. Below 40 degF use the full liquid head."));
  const weight = aciUnitWeightCoefficientUs(density);
  const formula = chemistry * weight * (150 + (9000 * riseRate) / temperature);
  const { limit, governs } = boundedPressure(formula, 600 * weight, density * pourHeight);
  return ok({
    limit: psf(limit),
    governs,
    working: {
      title: "Lateral pressure, ACI 347 column equation, US units",
      inputs: [term("R", riseRate, "ft/h"), term("T", temperature, "degF"), term("w", density, "pcf"), term("h", pourHeight, "ft"), term("C_c", chemistry, "")],
      formula: "p = min(max(C_c C_w (150 + 9000 R / T), 600 C_w), w h)",
      steps: [term("C_w", weight, ""), term("formula", formula, "psf"), term("minimum 600 C_w", 600 * weight, "psf"), term("liquid head w h", density * pourHeight, "psf"), term("governs", governs, "")],
      result: term("p", limit, "psf"),
      source: SOURCE,
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
 * Limits: T outside 5 to 32 degC (the range of the published tables) is refused; the column equation holds where no plan side is
 *   over 2 m, for slump up to 175 mm and internal vibration up to 1.2 m deep (see `pressureEnvelope`, which holds those limits).
 *   The SI minimum of 30 kPa is 627 psf, not 600: the two unit families are kept apart.
 * Example: R = 2.3 m/h, T = 17 degC, w = 23.5 kN/m3, h = 3.6 m, C_c = 1.2: 1.2 x 1.0 x (7.2 + 785 x 2.3 / 34.8) = 70.90 kPa.
 * Source: ACI 347-04 eq. (2.2) / ACI 347R-14 eq. (4.2.2.1a(1)), SI text, from memory.
 */
export function aciColumnPressureSi(given: {
  readonly riseRate: MetresPerHour;
  readonly temperature: DegreesCelsius;
  readonly density: KilonewtonsPerCubicMetre;
  readonly pourHeight: Metres;
  readonly chemistry: number;
}): Result<LimitingPressure<Kilopascals>, Refusal> {
  const { riseRate, temperature, density, pourHeight, chemistry } = given;
  if (!(temperature >= 5 && temperature <= 32))
    return fail(outside("concrete temperature (degC)", temperature, "5 to 32 degC", "Above 32 degC enter 32: it is on the safe side. Below 5 degC use the full liquid head."));
  const weight = aciUnitWeightCoefficientSi(density);
  const formula = chemistry * weight * (7.2 + (785 * riseRate) / (temperature + 17.8));
  const { limit, governs } = boundedPressure(formula, 30 * weight, density * pourHeight);
  return ok({
    limit: kPa(limit),
    governs,
    working: {
      title: "Lateral pressure, ACI 347 column equation, SI units",
      inputs: [term("R", riseRate, "m/h"), term("T", temperature, "degC"), term("w", density, "kN/m3"), term("h", pourHeight, "m"), term("C_c", chemistry, "")],
      formula: "p = min(max(C_c C_w (7.2 + 785 R / (T + 17.8)), 30 C_w), w h)",
      steps: [term("C_w", weight, ""), term("formula", formula, "kPa"), term("minimum 30 C_w", 30 * weight, "kPa"), term("liquid head w h", density * pourHeight, "kPa"), term("governs", governs, "")],
      result: term("p", limit, "kPa"),
      source: SOURCE,
    },
  });
}
