import type { DegreesCelsius, Hours, KilonewtonsPerCubicMetre, Kilopascals, Metres, MetresPerHour } from "#lib/kernel/units.ts";
import { kPa } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { PressureClause } from "../pour-conditions.ts";
import { refusal, term } from "../working.ts";
import type { Refusal } from "../working.ts";
import type { LimitingPressure } from "./limiting-pressure.ts";

export const DIN_18218_2010_EDITION = "DIN 18218:2010-01, characteristic value";
const SOURCE = "DIN 18218:2010-01 Tables 1 and 2 (from memory; F1 and F2 agree with the 1980 tables, SCC with a published note)";

const LINES = {
  F1: { slope: 5, base: 21, floor: 25, stiffening: 0.03 },
  F2: { slope: 10, base: 19, floor: 25, stiffening: 0.053 },
  F3: { slope: 14, base: 18, floor: 25, stiffening: 0.077 },
  F4: { slope: 17, base: 17, floor: 25, stiffening: 0.14 },
  F5: { slope: 30, base: 25, floor: 30, stiffening: null },
  F6: { slope: 38, base: 25, floor: 30, stiffening: null },
  SCC: { slope: 33, base: 25, floor: 30, stiffening: null },
} as const;
export type Din2010Class = keyof typeof LINES;
export const isDin2010Class = (name: string | null | undefined): name is Din2010Class => typeof name === "string" && Object.hasOwn(LINES, name);

/**
 * Setting-time factor, K1.
 *
 * Formula: F1 1 + 0.030 (tE - 5); F2 1 + 0.053 (tE - 5); F3 1 + 0.077 (tE - 5); F4 1 + 0.140 (tE - 5); F5, F6, SCC tE / 5.
 * Parameters: consistency [-] F1 to F6 or SCC; settingEnd tE [h], 5 to 20.
 * Result: K1 [-], 1 at 5 h.
 * Limits: the range of tE is held by `din2010Pressure`.
 * Example: F2, tE = 8.5 h: 1 + 0.053 x 3.5 = 1.1855.
 * Source: DIN 18218:2010-01 Table 2, from memory.
 */
export function dinSettingFactor(consistency: Din2010Class, settingEnd: Hours): number {
  const { stiffening } = LINES[consistency];
  return stiffening === null ? settingEnd / 5 : 1 + stiffening * (settingEnd - 5);
}

/**
 * Temperature correction of F1 to F4.
 *
 * Formula: 1 + 0.03 (15 - T) below 15 degC, else 1; F5, F6 and SCC: 1, their setting end is stated for the real temperature.
 * Parameters: consistency [-]; temperature T [degC] of the concrete, 5 to 30.
 * Result: factor [-], 1 or more.
 * Limits: above 15 degC the standard allows a limited reduction; none is taken here, which is on the safe side.
 * Example: F3, T = 11 degC: 1.12.
 * Source: DIN 18218:2010-01, reference temperature 15 degC, from memory.
 */
export const dinTemperatureFactor = (consistency: Din2010Class, temperature: DegreesCelsius): number =>
  LINES[consistency].stiffening === null ? 1 : 1 + 0.03 * Math.max(0, 15 - temperature);

export type Din2010Pour = {
  readonly consistency: Din2010Class;
  readonly riseRate: MetresPerHour;
  readonly settingEnd: Hours;
  readonly temperature: DegreesCelsius;
  readonly density: KilonewtonsPerCubicMetre;
  readonly pourHeight: Metres;
};

function outside(given: Din2010Pour): Refusal | null {
  const refuse = (limit: string, value: number, allowed: string, message: string) => refusal({ limit, given: value, allowed, source: SOURCE, message });
  if (!(given.settingEnd >= 5 && given.settingEnd <= 20)) return refuse("setting end tE (h)", given.settingEnd, "5 to 20 h", "Under 5 h enter 5: it is on the safe side. Over 20 h use the full liquid head.");
  if (!(given.temperature >= 5 && given.temperature <= 30)) return refuse("concrete temperature (degC)", given.temperature, "5 to 30 degC", "Below 5 degC use the full liquid head.");
  if (LINES[given.consistency].stiffening !== null && !(given.riseRate <= 7)) return refuse("rise rate (m/h)", given.riseRate, "up to 7 m/h for F1 to F4", "Use the full liquid head.");
  return null;
}

/**
 * Characteristic lateral pressure of fresh concrete by DIN 18218:2010.
 *
 * Formula: sigma = min( max( line x K1 x kT x g, floor ), w h ), g = max(1, w / 25); lines: F1 5v + 21, F2 10v + 19, F3 14v + 18,
 *   F4 17v + 17 (floor 25); F5 25 + 30 v K1, F6 25 + 38 v K1, SCC 25 + 33 v K1 (floor 30; K1 on the rise only).
 * Parameters: consistency [-]; riseRate v [m/h], over 0, up to 7 for F1 to F4; settingEnd tE [h], 5 to 20; temperature T [degC], 5 to 30;
 *   density w [kN/m3], over 0; pourHeight h [m], over 0.
 * Result: sigma_hk,max [kPa]: a CHARACTERISTIC value. The design value is gamma_F (1.5) times it; never to be set against permissible stresses.
 * Limits: the ranges above are refused outside; concrete lighter than 25 kN/m3 is taken as 25 in the line. Placed from the top, internal
 *   vibration only (held by `pressureEnvelope`).
 * Example: F3, v = 1.7 m/h, tE = 7 h, T = 12 degC, w = 25.5 kN/m3, h = 4.3 m: (14 x 1.7 + 18) x 1.154 x 1.09 x 1.02 = 53.63 kPa.
 * Source: DIN 18218:2010-01 Table 1, from memory; SCC parent equation (1.0 + 0.26 v tE) w: note in Concrete International on the 2010 edition.
 */
export function din2010Pressure(given: Din2010Pour): Result<LimitingPressure<Kilopascals>, Refusal> {
  const { consistency, riseRate, settingEnd, temperature, density, pourHeight } = given;
  const wrong = outside(given);
  if (wrong !== null) return fail(wrong);
  const { slope, base, floor, stiffening } = LINES[consistency];
  const k1 = dinSettingFactor(consistency, settingEnd);
  const kT = dinTemperatureFactor(consistency, temperature);
  const weight = Math.max(1, density / 25);
  const formula = weight * (stiffening === null ? base + slope * riseRate * k1 : (slope * riseRate + base) * k1 * kT);
  const head = density * pourHeight;
  const limit = Math.min(Math.max(formula, floor), head);
  const governs: PressureClause = limit === head ? "liquid head" : formula < floor ? "minimum" : "formula";
  const line = stiffening === null ? `${base} + ${slope} v K1` : `(${slope} v + ${base}) K1 kT`;
  return ok({
    limit: kPa(limit),
    governs,
    working: {
      title: "Lateral pressure, DIN 18218:2010, characteristic value",
      inputs: [term("class", consistency, ""), term("v", riseRate, "m/h"), term("tE", settingEnd, "h"), term("T", temperature, "degC"), term("w", density, "kN/m3"), term("h", pourHeight, "m")],
      formula: `sigma = min(max(${line} max(1, w / 25), ${floor}), w h)`,
      steps: [term("K1", k1, ""), term("kT", kT, ""), term("formula", formula, "kPa"), term("minimum", floor, "kPa"), term("liquid head w h", head, "kPa"), term("governs", governs, "")],
      result: term("sigma_hk,max (characteristic)", limit, "kPa"),
      source: SOURCE,
    },
  });
}
