import type { DegreesCelsius, KilonewtonsPerCubicMetre, Kilopascals, Metres, MetresPerHour } from "#lib/kernel/units.ts";
import { kPa } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { refusal, term } from "../working.ts";
import type { Refusal } from "../working.ts";
import type { LimitingPressure } from "./limiting-pressure.ts";

export const DIN_18218_1980_EDITION = "DIN 18218 (09/1980): WITHDRAWN, for comparison only";
const SOURCE = "DIN 18218 (09/80), tables as printed in a handout on concrete pressure on vertical formwork; withdrawn";

/**
 * Lateral pressure of fresh concrete by DIN 18218 of September 1980, for comparing with old sheets.
 *
 * Formula: p = min( line x kT, w h ), kT = (145 - 3 T) / 100; K1 stiff: 5 v + 21; K2 plastic: 10 v + 19.
 * Parameters: consistency [-] K1 or K2; riseRate v [m/h], over 0 and up to 7; temperature T [degC] of the concrete, 5 to 25;
 *   density w [kN/m3], 25 at most; pourHeight h [m], over 0.
 * Result: p [kPa], the largest pressure in the form.
 * Limits: the ranges above are refused outside, as is a retarder (set within 5 h; held by `pressureEnvelope`). Withdrawn: no shutter is
 *   designed by it.
 * Example: K2, v = 1.6 m/h, T = 12 degC, w = 25 kN/m3, h = 3.4 m: (16 + 19) x 1.09 = 38.15 kPa.
 * Source: DIN 18218 (09/80), tables with temperature factor (145 - 3T)/100, as printed in a handout.
 */
export function din1980Pressure(given: {
  readonly consistency: "K1" | "K2";
  readonly riseRate: MetresPerHour;
  readonly temperature: DegreesCelsius;
  readonly density: KilonewtonsPerCubicMetre;
  readonly pourHeight: Metres;
}): Result<LimitingPressure<Kilopascals>, Refusal> {
  const { consistency, riseRate, temperature, density, pourHeight } = given;
  const refuse = (limit: string, value: number, allowed: string) => fail(refusal({ limit, given: value, allowed, source: SOURCE, message: "Use the full liquid head." }));
  if (!(riseRate <= 7)) return refuse("rise rate (m/h)", riseRate, "up to 7 m/h");
  if (!(temperature >= 5 && temperature <= 25)) return refuse("concrete temperature (degC)", temperature, "5 to 25 degC");
  if (!(density <= 25)) return refuse("concrete density (kN/m3)", density, "up to 25 kN/m3");
  const kT = (145 - 3 * temperature) / 100;
  const formula = (consistency === "K1" ? 5 * riseRate + 21 : 10 * riseRate + 19) * kT;
  const head = density * pourHeight;
  const limit = Math.min(formula, head);
  return ok({
    limit: kPa(limit),
    governs: head <= formula ? "liquid head" : "formula",
    working: {
      title: "Lateral pressure, DIN 18218 of 1980 (withdrawn)",
      inputs: [term("consistency", consistency, ""), term("v", riseRate, "m/h"), term("T", temperature, "degC"), term("w", density, "kN/m3"), term("h", pourHeight, "m")],
      formula: `p = min((${consistency === "K1" ? "5 v + 21" : "10 v + 19"}) (145 - 3 T) / 100, w h)`,
      steps: [term("kT", kT, ""), term("formula", formula, "kPa"), term("liquid head w h", head, "kPa")],
      result: term("p", limit, "kPa"),
      source: SOURCE,
    },
  });
}
