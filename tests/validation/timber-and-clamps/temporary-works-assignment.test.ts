/**
 * University temporary-works assignment solution, wall form to CIRIA Report 108: design sheet
 * (vbook.pub/documents/formwork-design-r2re9g0rgvw6).
 */
import { describe, expect, it } from "vitest";
import { kN, kN_m, kN_per_m, m } from "#lib/kernel/units.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";
import { allowableSpans } from "#lib/trade/engineering/backing/span-coefficients.ts";

const coefficients = (deflection: number) => ({ label: "as on the sheet", moment: 0.1, shear: 0.6, deflection, source: "design sheet" });

describe("temporary-works assignment", () => {
  it("CASE-B19: plywood at 75.93 kPa: shear span 0.151 m, L/360 span 0.257 m, within 0.001", () => {
    const spans = allowableSpans({ coefficients: coefficients(0.007), load: kN_per_m(75.93), momentCapacity: kN_m(0.46), shearCapacity: kN(6.86), stiffness: kN_m2(3.25), ratio: 360, shearRelief: m(0) });
    expect(Math.abs(spans.shear - 0.151)).toBeLessThanOrEqual(0.001);
    expect(Math.abs(spans.deflection - 0.257)).toBeLessThanOrEqual(0.001);
  });
  it("CASE-C8: waling at 11.39 kN/m: 1.333, 1.873, 1.937 m, bending governs, within 0.002", () => {
    const spans = allowableSpans({ coefficients: coefficients(0.004), load: kN_per_m(11.39), momentCapacity: kN_m(2.025), shearCapacity: kN(12.8), stiffness: kN_m2(119.14), ratio: 360, shearRelief: m(0) });
    expect(Math.abs(spans.bending - 1.333)).toBeLessThanOrEqual(0.002);
    expect(Math.abs(spans.shear - 1.873)).toBeLessThanOrEqual(0.002);
    expect(Math.abs(spans.deflection - 1.937)).toBeLessThanOrEqual(0.002);
    expect(spans.governing).toBe(spans.bending);
  });
});
