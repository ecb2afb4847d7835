import type { DegreesCelsius, Hours, NewtonsPerSquareMillimetre } from "#lib/kernel/units.ts";
import { hours, N_per_mm2 } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { refusal } from "../working.ts";
import type { Refusal } from "../working.ts";

export const BS_8110_SOURCE = "BS 8110-1:1997 Table 6.2, vertical faces, from memory";

/**
 * Hours before vertical faces are stripped, at one temperature, by BS 8110.
 *
 * Formula: 300 / (t + 10).
 * Parameters: temperature t [degC], 0 to 25.
 * Result: time [h].
 * Limits: 0 to 25 degC, else refused. The table's own columns are 12 h at 16 degC or more and 18 h at 7 degC; `stripTime` never answers under 12 h.
 * Example: 13 degC: 300 / 23 = 13.04 h.
 * Source: BS 8110-1:1997 Table 6.2, from memory.
 */
export function bs8110Hours(temperature: DegreesCelsius): Result<Hours, Refusal> {
  if (temperature >= 0 && temperature <= 25) return ok(hours(300 / (temperature + 10)));
  return fail(refusal({ limit: "temperature (degC)", given: temperature, allowed: "0 to 25 degC", source: BS_8110_SOURCE, message: "The table does not reach further." }));
}

/**
 * Strength the concrete must have before a form that keeps it from stress is taken away.
 *
 * Formula: f = max(2 stress, least).
 * Parameters: stressOnRelease [N/mm2], 0 or more; least [N/mm2], 0 or more, the project's own least strength.
 * Result: f [N/mm2].
 * Limits: none; the stress on release is the designer's to state.
 * Example: 1.7 N/mm2 on release, least 2 N/mm2: 3.4 N/mm2.
 * Source: IS 456:2000 cl. 11.3 (strength at least twice the stress on release), as quoted on public pages.
 */
export const strengthOnRelease = (stressOnRelease: NewtonsPerSquareMillimetre, least: NewtonsPerSquareMillimetre): NewtonsPerSquareMillimetre =>
  N_per_mm2(Math.max(2 * stressOnRelease, least));

/** Hours by rule for columns and vertical faces, with the temperature above which an hour counts. */
export const CLOCK_RULES = {
  "aci-347": { hours: [12, 12], countsFrom: 10, source: "ACI 347-04 cl. 3.7.2.3: 12 h for columns and walls, counted while the air is at 10 degC (50 degF) or above; from memory" },
  "is-456": { hours: [16, 24], countsFrom: 15, source: "IS 456:2000 cl. 11.3.1: 16 to 24 h, ordinary Portland cement, ambient 15 degC or above, with adequate curing" },
} as const;
