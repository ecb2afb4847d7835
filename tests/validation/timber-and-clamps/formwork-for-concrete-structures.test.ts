/** Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), chapter 5: pp. 153, 157, 173 to 175. */
import { describe, expect, it } from "vitest";
import { m } from "#lib/kernel/units.ts";
import { allowableSpans, spanActions, spanCoefficients } from "#lib/trade/engineering/backing/span-coefficients.ts";
import { plf, poundInches, pounds, poundSquareInches, toInches } from "#tests/support/figures/us-customary.ts";

describe("Formwork for Concrete Structures", () => {
  it("CASE-B15: 3/4 in. board on joists at 24 in., bending only: 183 psf within 1", () => {
    const capacity = poundInches(1930 * 0.455);
    const onePsf = spanActions({ coefficients: spanCoefficients(3), load: plf(1), span: m(24 * 0.0254), shearSpan: m(0.5), stiffness: poundSquareInches(1.65e6 * 0.199) });
    expect(Math.abs(capacity / onePsf.moment - 183)).toBeLessThanOrEqual(1);
  });
  it("CASE-B16: board at 825 psf: 12.4, 12.8 (12.88 truncated), 14.3 in.; bending governs, within 0.1", () => {
    const spans = allowableSpans({
      coefficients: spanCoefficients(3),
      load: plf(825),
      momentCapacity: poundInches(2062 * 0.515),
      shearCapacity: pounds(66 * 8.05),
      stiffness: poundSquareInches(1.8e6 * 0.278),
      ratio: 360,
      shearRelief: m(0),
    });
    expect(Math.abs(toInches(spans.bending) - 12.4)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(toInches(spans.shear) - 12.8)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(toInches(spans.deflection) - 14.3)).toBeLessThanOrEqual(0.1);
    expect(spans.governing).toBe(spans.bending);
  });
  it("CASE-C6: studs at 825 plf with the book's shear constant 5/8: 28.9 and 24.8 in., within 0.1", () => {
    const spans = allowableSpans({
      coefficients: { ...spanCoefficients(3), shear: 5 / 8 },
      load: plf(825),
      momentCapacity: poundInches(1875 * 3.06),
      shearCapacity: pounds((2 / 3) * 218 * 1.5 * 3.5),
      stiffness: poundSquareInches(1.6e6 * 5.359),
      ratio: 360,
      shearRelief: m((2 * 3.5 * 25.4) / 1000),
    });
    expect(Math.abs(toInches(spans.bending) - 28.9)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(toInches(spans.shear) - 24.8)).toBeLessThanOrEqual(0.1);
  });
});
