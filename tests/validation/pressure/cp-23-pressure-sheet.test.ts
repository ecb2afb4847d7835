/**
 * Project wall-formwork pressure sheet to Singapore CP 23:2000 cl. 3.4.3, the same expression as CIRIA Report 108
 * (scribd.com/document/701166567). C2 = 0.7 is the sheet's own choice.
 */
import { expect, it } from "vitest";
import { degC, kN_per_m3, m, m_per_h } from "#lib/kernel/units.ts";
import { ciriaPressure } from "#lib/trade/engineering/pressure/ciria-108.ts";

it("CASE-A8: 44.90 kPa, liquid zone 1.80 m of 3 m, average 31.46 kPa, within 0.02 kPa and 0.005 m", () => {
  const answer = ciriaPressure({ density: kN_per_m3(25), shape: 1.0, material: 0.7, riseRate: m_per_h(1.5), temperature: degC(30), formHeight: m(3), pourHeight: m(3) });
  if (!answer.ok) throw new Error(answer.failure.message);
  const { limit } = answer.value;
  const zone = limit / 25;
  expect(Math.abs(limit - 44.9)).toBeLessThanOrEqual(0.02);
  expect(Math.abs(zone - 1.8)).toBeLessThanOrEqual(0.005);
  expect(Math.abs(3 - zone - 1.2)).toBeLessThanOrEqual(0.005);
  expect(Math.abs((limit * (3 - zone / 2)) / 3 - 31.46)).toBeLessThanOrEqual(0.02);
});
