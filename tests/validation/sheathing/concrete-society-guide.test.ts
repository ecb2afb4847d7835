/**
 * Concrete Society, Formwork: a guide to good practice, 2nd ed., load case 58, as used in a one-page check of 18 mm plywood
 * (scribd.com/document/514080077): M = 0.095 W L, V = 0.525 W (L - b - t) / L, d = 0.0066 W L3 / EI with W = w L.
 */
import { expect, it } from "vitest";
import { kN_per_m, m } from "#lib/kernel/units.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";
import { CONCRETE_SOCIETY_CASE_58, spanActions } from "#lib/trade/engineering/backing/span-coefficients.ts";

it("CASE-B18: 74 kPa on 244 mm: M 0.4185 kN.m, V 5.87 kN, deflection 0.65 mm against 0.904 mm", () => {
  const { moment, shear, deflection } = spanActions({
    coefficients: CONCRETE_SOCIETY_CASE_58,
    load: kN_per_m(74),
    span: m(0.244),
    shearSpan: m(0.244 - 0.075 - 0.018),
    stiffness: kN_m2(2.65),
  });
  expect(Math.abs(74 * 0.244 - 18.056)).toBeLessThanOrEqual(0.001);
  expect(Math.abs(moment - 0.4185)).toBeLessThanOrEqual(0.0005);
  expect(Math.abs(shear - 5.87)).toBeLessThanOrEqual(0.01);
  expect(Math.abs(deflection * 1000 - 0.65)).toBeLessThanOrEqual(0.01);
  expect(Math.abs(244 / 270 - 0.904)).toBeLessThanOrEqual(0.001);
  expect(moment).toBeLessThan(0.472);
  expect(shear).toBeLessThan(7.6);
});
