import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feetInches, parseLength } from "#app/_ui/value/feet-inches.ts";
import { lengthFigure, quantityText, sectionText } from "#app/_ui/value/format-quantity.ts";
import { dayWords, instantWords } from "#app/_ui/value/time-words.ts";

// International yard and pound agreement, 1959: 1 ft = 0.3048 m exactly, so 1 in = 25.4 mm and 1/16 in = 1.5875 mm.
describe("feet and inches", () => {
  it.each([
    [12 * 304.8, `12'-0"`],
    [9 * 304.8 + 4.5 * 25.4, `9'-4 1/2"`],
    [7.875 * 25.4, `7 7/8"`],
    [1.5875, `1/16"`],
    [304.8 + 25.4 * (1 / 16), `1'-0 1/16"`],
    [0, `0"`],
    [-2.5 * 304.8, `−2'-6"`],
    // 31/32 in. rounds up through the inch and the foot.
    [304.8 * 3 - 25.4 / 40, `3'-0"`],
  ])("reads %f mm as a tape shows it", (lengthMm, text) => {
    expect(feetInches(lengthMm)).toBe(text);
  });

  it("gives back what it wrote, to the sixteenth", () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 16 * 12 * 60 }), (sixteenths) => {
      const lengthMm = sixteenths * 1.5875;
      expect(parseLength(feetInches(lengthMm), "us")).toBeCloseTo(lengthMm, 6);
    }));
  });
});

describe("lengths as typed", () => {
  it.each([
    ["2850", "metric", 2850],
    ["2.85 m", "metric", 2850],
    ["2,85m", "metric", 2850],
    [`9'-4 1/2"`, "metric", 112.5 * 25.4],
    [`9' 4-1/2"`, "us", 112.5 * 25.4],
    ["9 ft 4.5 in", "us", 112.5 * 25.4],
    ["12'", "us", 3657.6],
    [`112"`, "us", 112 * 25.4],
    ["112", "us", 112 * 25.4],
    ["3/4", "us", 0.75 * 25.4],
    ["450 mm", "us", 450],
  ] as const)("takes %s (%s)", (text, units, lengthMm) => {
    expect(parseLength(text, units)).toBeCloseTo(lengthMm, 9);
  });

  it.each(["", "about 3 m", "3 4", "-20", "1/0 x", "12''' 3"])("refuses %j", (text) => {
    expect(parseLength(text, "metric")).toBeUndefined();
  });
});

// NIST SP 811 (2008), appendix B.8, from memory: 1 psf = 47.88026 Pa, 1 psi = 6.894757 kPa, 1 lbf = 4.448222 N,
// 1 yd3 = 0.7645549 m3, 1 ft2 = 0.09290304 m2, 1 lb = 0.4535924 kg, 1 lbf/ft = 14.59390 N/m.
describe("US customary figures", () => {
  it.each([
    [47.88026, "kPa", "1000 psf"],
    [6.894757, "N/mm2", "1000 psi"],
    [4.448222, "kN", "1000 lb"],
    [0.7645549 * 3, "m3", "3.00 cu yd"],
    [9.290304, "m2", "100.0 sq ft"],
    [45.35924, "kg", "100 lb"],
    [14.5939, "kN/m", "1000 lb/ft"],
    [25, "degC", "77 °F"],
    [3 * 0.3048, "m/h", "3.0 ft/h"],
  ] as const)("shows %f %s as %s", (value, unit, text) => {
    expect(quantityText(value, unit, "us")).toBe(text);
  });
});

describe("metric figures", () => {
  it("keep the usual decimals and a narrow space between thousands", () => {
    expect(quantityText(3125, "mm", "metric")).toBe("3125 mm");
    expect(quantityText(12850, "mm", "metric")).toBe("12\u202f850 mm");
    expect(quantityText(-0.4, "mm", "metric")).toBe("0 mm");
    expect(quantityText(-1.25, "m", "metric")).toBe("−1.250 m");
    expect(quantityText(75.04, "kPa", "metric")).toBe("75.0 kPa");
    expect(lengthFigure(17.4, "metric")).toBe("17.4");
  });

  it("name a section as the trade does", () => {
    expect(sectionText("rectangle", 300, 650, "metric")).toBe("300 × 650");
    expect(sectionText("rectangle", 450, 450, "metric")).toBe("450 square");
    expect(sectionText("circle", 500, 500, "metric")).toBe("Ø500");
    expect(sectionText("rectangle", 12 * 25.4, 24 * 25.4, "us")).toBe(`1'-0" × 2'-0"`);
  });
});

// tz database: Australia/Hobart is 11 hours ahead of UTC in November (AEDT); America/Chicago 6 behind in January (CST).
describe("times of the site", () => {
  it("are those of the project's zone, with its abbreviation", () => {
    expect(instantWords("2026-11-24T21:30:00Z", "Australia/Hobart")).toEqual({ day: "Wed 25 Nov 2026", time: "08:30", zone: "AEDT" });
    expect(instantWords("2026-01-09T05:05:00Z", "America/Chicago")).toEqual({ day: "Thu 8 Jan 2026", time: "23:05", zone: "CST" });
    expect(dayWords("2026-11-25")).toBe("Wed 25 Nov 2026");
  });
});
