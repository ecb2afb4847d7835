/**
 * University of Florida construction lectures (Allen), notebooks "Week 7 - Wall Forms" and "Week 8 - Column Forms",
 * public repository damontallen/Construction-Lectures-Fall-2014. The lectures' constants (10.95, 20, 1.69) lie within 0.1 % of 1/10, 0.6 and 1/145.
 */
import { describe, expect, it } from "vitest";
import { m } from "#lib/kernel/units.ts";
import { timberCapacity } from "#lib/trade/engineering/backing/timber-capacity.ts";
import { allowableSpans, spanCoefficients } from "#lib/trade/engineering/backing/span-coefficients.ts";
import { inches, plf, poundInches, pounds, poundSquareInches, psi, toInches } from "#tests/support/figures/us-customary.ts";

const near = (value: number, expected: number, within: number) => expect(Math.abs(value - expected)).toBeLessThanOrEqual(within);

describe("construction lectures", () => {
  it("CASE-B17: board at 1500 psf: bending 7.49, shear 5.52 clear, L/360 10.19 in.; 5.52 governs, within 0.02", () => {
    const spans = allowableSpans({
      coefficients: spanCoefficients(3),
      load: plf(1500),
      momentCapacity: poundInches(1544 * 0.455),
      shearCapacity: pounds(57.6 * 7.187),
      stiffness: poundSquareInches(1.65e6 * 0.199),
      ratio: 360,
      shearRelief: m(0),
    });
    near(toInches(spans.bending), 7.49, 0.02);
    near(toInches(spans.shear), 5.52, 0.02);
    near(toInches(spans.deflection), 10.19, 0.02);
    near(toInches(spans.governing), 5.52, 0.02);
  });
  it("CASE-C2: clamp spacing at the foot of a 20 × 20 in. column of 10 ft: 14.25, 13.86, 18.25 in.; 13.86 governs, within 0.02", () => {
    near(1500 * (9 / 12), 1125, 0.02);
    const timber = timberCapacity({ breadth: inches(3.5), depth: inches(1.5), modulus: psi(1.44e6), bendingStress: psi(1451.59), shearStress: psi(174.6) });
    if (!timber.ok) throw new Error(timber.failure.message);
    const spans = allowableSpans({
      coefficients: spanCoefficients(3),
      load: plf(1125),
      momentCapacity: timber.value.moment,
      shearCapacity: timber.value.shear,
      stiffness: timber.value.stiffness,
      ratio: 360,
      shearRelief: m(2 * timber.value.depth),
    });
    near(toInches(spans.bending), 14.25, 0.02);
    near(toInches(spans.shear), 13.86, 0.02);
    near(toInches(spans.deflection), 18.25, 0.02);
    near(toInches(spans.governing), 13.86, 0.02);
  });
  it("CASE-C4: studs at 521.25 plf: 34.09, 36.30, 41.50 in., within 0.02", () => {
    const spans = allowableSpans({
      coefficients: spanCoefficients(3),
      load: plf(521.25),
      momentCapacity: poundInches(1649.53 * 3.0625),
      shearCapacity: pounds((2 / 3) * 218.25 * 1.5 * 3.5),
      stiffness: poundSquareInches(1.44e6 * 5.359),
      ratio: 360,
      shearRelief: m((2 * 3.5 * 25.4) / 1000),
    });
    near(toInches(spans.bending), 34.09, 0.02);
    near(toInches(spans.shear), 36.3, 0.02);
    near(toInches(spans.deflection), 41.5, 0.02);
  });
});
