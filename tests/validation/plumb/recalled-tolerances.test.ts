/** Rules recalled, not read: arithmetic on them, so that a slip in the code shows. Their standards have to be read before they are relied on. */
import { describe, expect, it } from "vitest";
import { mm } from "#lib/kernel/units.ts";
import { MM_PER_FOOT, MM_PER_INCH } from "#lib/kernel/us-units.ts";
import { PLUMB_RULES, plumbTolerance, sectionTolerance, type PlumbToleranceRule } from "#lib/trade/engineering/plumb/plumb-tolerance.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

const lean = (rule: PlumbToleranceRule, height: number): number => valueOf(plumbTolerance({ kind: "rule", rule }, mm(height)));

describe("how far a column may lean, from memory", () => {
  it("[CASE-M17] EN 13670:2009 fig. 2, class 1: larger of 15 mm and h/400: 15, 15 and 22.5 mm at 3, 6 and 9 m", () =>
    expect([3000, 6000, 9000].map((height) => lean("en-13670-class-1", height))).toEqual([15, 15, 22.5]));
  it("EN 13670:2009 fig. 2, class 1, over 10 m: larger of 25 mm and h/600: 25 and 30 mm at 12 and 18 m", () =>
    expect([12_000, 18_000].map((height) => lean("en-13670-class-1", height))).toEqual([25, 30]));
  it("[CASE-M18] AS 3600 cl. 17.5.2: larger of h/200 and 10 mm: 15 and 10 mm at 3 and 1.6 m", () => expect([3000, 1600].map((height) => lean("as-3600", height))).toEqual([15, 10]));
  it("[CASE-M19] ACI 117-10 sec. 4.1: smaller of 0.3 % and 1 in.: 0.36 and 1 in. at 10 and 30 ft", () => {
    expect(lean("aci-117-10", 10 * MM_PER_FOOT) / MM_PER_INCH).toBeCloseTo(0.36, 12);
    expect(lean("aci-117-10", 30 * MM_PER_FOOT) / MM_PER_INCH).toBeCloseTo(1, 12);
  });
  it("is said to be from memory wherever it is shown", () => {
    for (const rule of ["en-13670-class-1", "as-3600", "aci-117-10"] as const) expect(PLUMB_RULES[rule]).toMatchObject({ provenance: "memory", source: expect.stringContaining("from memory") as string });
  });
});

describe("the lines of the reprints beyond their cases", () => {
  it("ACI 117-90 over 100 ft: height / 1000 up to 6 in., exposed corner height / 2000 up to 3 in.", () => {
    const feet = (height: number) => height * MM_PER_FOOT;
    expect(lean("aci-117-90", feet(300)) / feet(300)).toBeCloseTo(1 / 1000, 12);
    expect(lean("aci-117-90", feet(900)) / MM_PER_INCH).toBeCloseTo(6, 12);
    expect(lean("aci-117-90-exposed-corner", feet(300)) / feet(300)).toBeCloseTo(1 / 2000, 12);
    expect(lean("aci-117-90-exposed-corner", feet(900)) / MM_PER_INCH).toBeCloseTo(3, 12);
  });
  it("ENV 1992-1-1: 5 mm to 150 mm, 30 mm from 2500 mm, straight between 150, 400 and 2500 mm", () => {
    const plus = (side: number) => valueOf(sectionTolerance("env-1992", mm(side))).plus;
    expect([150, 275, 400, 1450, 2500, 3000].map(plus)).toEqual([5, 10, 15, 22.5, 30, 30]);
  });
  it("ACI 117-90 for sides over 12 in. could not be read and is refused, not guessed", () =>
    expect(sectionTolerance("aci-117-90", mm(12.1 * MM_PER_INCH))).toMatchObject({ ok: false, failure: { limit: "side (mm)", allowed: "up to 12 in. (304.8 mm)" } }));
});
