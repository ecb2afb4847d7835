/**
 * University of Washington CM 420 wall form design example, slides after ACI SP-4 Tables 5-4/5-5B (tr.scribd.com/presentation/38409234).
 * A wall up to 14 ft with R under 7 ft/h uses the same expression as a column. The 4 ft zone is 600 / 150; the slide's own figure is cut off.
 */
import { expect, it } from "vitest";
import { degC, kN_per_m3, m_per_h, mm } from "#lib/kernel/units.ts";
import { celsius, KN_PER_M3_PER_PCF, KPA_PER_PSF } from "#lib/kernel/us-units.ts";
import { pressureEnvelope } from "#lib/trade/engineering/pressure-envelope.ts";
import type { PourConditions } from "#lib/trade/engineering/pour-conditions.ts";

it("CASE-A3: R 3 ft/h, 60 degF, 14 ft, 150 pcf: 600 psf within 1, liquid zone 4.0 ft within 0.01", () => {
  const pour: PourConditions = {
    method: "aci-347-us",
    concreteDensity: kN_per_m3(150 * KN_PER_M3_PER_PCF),
    temperature: degC(celsius(60)),
    riseRate: m_per_h(3 * 0.3048),
    cement: "portland",
    retarder: false,
    slump: mm(100),
    vibrationDepth: mm(1000),
    selfCompacting: false,
    externalVibration: false,
    placing: "from-top",
    pourHeight: null,
  };
  const answer = pressureEnvelope(pour, { height: mm(14 * 304.8), largestSide: mm(610) });
  if (!answer.ok) throw new Error(answer.failure.message);
  expect(Math.abs(answer.value.limit / KPA_PER_PSF - 600)).toBeLessThanOrEqual(1);
  expect(Math.abs(answer.value.liquidDepth / 0.3048 - 4)).toBeLessThanOrEqual(0.01);
});
