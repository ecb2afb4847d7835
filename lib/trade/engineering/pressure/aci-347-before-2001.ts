import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { psf } from "../engineering-units.ts";
import type { DegreesFahrenheit, Feet, FeetPerHour, PoundsPerCubicFoot, PoundsPerSquareFoot } from "../engineering-units.ts";
import type { PressureClause } from "../pour-conditions.ts";
import { term } from "../working.ts";
import type { Refusal } from "../working.ts";
import { outsideAciTemperatureUs } from "./aci-347-coefficients.ts";
import type { LimitingPressure } from "./limiting-pressure.ts";

export const ACI_347_BEFORE_2001_EDITION = "ACI 347 before 2001, US units: WITHDRAWN, for comparison only";
const SOURCE = "ACI 347 before 2001 as printed by Nunnally, construction methods text, ch. 12, eq. 12-1; withdrawn";

/**
 * Lateral pressure by the ACI 347 text before 2001, for comparing with old sheets.
 *
 * Formula: columns and R up to 7 ft/h: min(150 + 9000 R / T, cap); walls at 7 to 10 ft/h: min(150 + 43400 / T + 2800 R / T, 2000);
 *   faster walls: w h. Cap 3000 psf (columns) or 2000 psf (walls), minimum 600 psf, never over w h.
 * Parameters: isColumn [-]; riseRate R [ft/h], over 0; temperature T [degF], 40 to 90; density w [pcf], over 0; pourHeight h [ft], over 0.
 * Result: p [psf], the largest pressure in the form.
 * Limits: T outside 40 to 90 degF is refused. Withdrawn: no C_w, no C_c, caps that later editions dropped; no shutter is designed by it.
 * Example: column, R = 17 ft/h, T = 47 degF, w = 150 pcf, h = 26 ft: 150 + 3255.3 = 3405.3, capped at 3000 psf.
 * Source: Nunnally, construction methods text, ch. 12, eq. 12-1 (ACI 347 before 2001).
 */
export function aciPressureBefore2001(given: {
  readonly isColumn: boolean;
  readonly riseRate: FeetPerHour;
  readonly temperature: DegreesFahrenheit;
  readonly density: PoundsPerCubicFoot;
  readonly pourHeight: Feet;
}): Result<LimitingPressure<PoundsPerSquareFoot>, Refusal> {
  const { isColumn, riseRate, temperature, density, pourHeight } = given;
  const outside = outsideAciTemperatureUs(temperature);
  if (outside !== null) return fail(outside);
  const head = density * pourHeight;
  const cap = isColumn ? 3000 : 2000;
  const slow = 150 + (9000 * riseRate) / temperature;
  const fast = 150 + 43_400 / temperature + (2800 * riseRate) / temperature;
  const liquid = !isColumn && riseRate > 10;
  const formula = liquid ? head : isColumn || riseRate <= 7 ? slow : fast;
  const raised = liquid ? head : Math.max(600, Math.min(cap, formula));
  const limit = Math.min(raised, head);
  const governs: PressureClause = limit === head ? "liquid head" : limit === 600 ? "minimum" : "formula";
  return ok({
    limit: psf(limit),
    governs,
    working: {
      title: "Lateral pressure, ACI 347 before 2001 (withdrawn)",
      inputs: [term("form", isColumn ? "column" : "wall", ""), term("R", riseRate, "ft/h"), term("T", temperature, "degF"), term("w", density, "pcf"), term("h", pourHeight, "ft")],
      formula: isColumn || riseRate <= 7 ? "p = min(max(min(150 + 9000 R / T, cap), 600), w h)" : "p = min(max(min(150 + 43400 / T + 2800 R / T, cap), 600), w h)",
      steps: [term("formula", formula, "psf"), term("cap", cap, "psf"), term("minimum", 600, "psf"), term("liquid head w h", head, "psf"), term("governs", governs, "")],
      result: term("p", limit, "psf"),
      source: SOURCE,
    },
  });
}
