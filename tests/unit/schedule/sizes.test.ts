import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type LengthUnit, readLength } from "#lib/trade/schedule/table/read-length.ts";
import { readSize } from "#lib/trade/schedule/table/read-size.ts";

// One inch is 25.4 mm and one foot 304.8 mm exactly: international yard and pound agreement, 1959.
describe("a length", () => {
  it.each<[string, LengthUnit, number | null]>([
    ["300", "mm", 300],
    ["300mm", "in", 300],
    ["0.3 m", "mm", 300],
    ["30 cm", "mm", 300],
    ["4.200", "m", 4200],
    ["4,2", "m", 4200],
    ["4,200", "mm", 4200],
    ["4,200", "m", 4200],
    ["1.234,5", "mm", null],
    ["-1.850", "m", -1850],
    ["\u22121.850", "m", -1850],
    ["\u00b10.000", "m", 0],
    ["+3.50", "m", 3500],
    ["RL 12.400", "m", 12400],
    ["SSL +4.2", "m", 4200],
    ['12"', "mm", 304.8],
    ["12''", "mm", 304.8],
    ["12\u2033", "mm", 304.8],
    ["12 in", "mm", 304.8],
    ["1'", "mm", 304.8],
    ["12'-6\"", "mm", 3810],
    ["12' 6\"", "mm", 3810],
    ["12'-6 1/2\"", "mm", 3822.7],
    ["12\u2019-6\u201d", "mm", 3810],
    ["10 ft 3 in", "mm", 3124.2],
    ["6 1/2\"", "mm", 165.1],
    ["3/4\"", "mm", 19.1],
    ["12'-14\"", "mm", null],
    ["3/0\"", "mm", null],
    ["abc", "mm", null],
    ["", "mm", null],
    ["8T25", "mm", null],
    ["1e9", "mm", null],
  ])("%s in %s is %s mm", (text, unit, expected) => {
    expect(readLength(text, unit)).toBe(expected);
  });

  it("is the same after it is written and read again, in every unit", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200_000 }), (tenthsOfMm) => {
        const value = tenthsOfMm / 10;
        expect(readLength(`${value} mm`, "m")).toBe(value);
        expect(readLength(`${(value / 10).toFixed(2)}cm`, "m")).toBe(value);
        expect(readLength(`${(value / 1000).toFixed(4)}`, "m")).toBe(value);
      }),
    );
  });
});

type Section = [shape: "rectangle" | "circle", width: number, depth: number];

describe("a size", () => {
  it.each<[string, LengthUnit, Section]>([
    ["300x600", "mm", ["rectangle", 300, 600]],
    ["300 X 600", "mm", ["rectangle", 300, 600]],
    ["300 \u00d7 600", "mm", ["rectangle", 300, 600]],
    ["300*600", "mm", ["rectangle", 300, 600]],
    ["300 by 600", "mm", ["rectangle", 300, 600]],
    ["300x600mm", "in", ["rectangle", 300, 600]],
    ["300mm x 600mm", "in", ["rectangle", 300, 600]],
    ["300(W) x 600(D)", "mm", ["rectangle", 300, 600]],
    ["0.3 x 0.6", "m", ["rectangle", 300, 600]],
    ["0.3 x 0.6 m", "mm", ["rectangle", 300, 600]],
    ["0,3 x 0,6 m", "mm", ["rectangle", 300, 600]],
    ["30/60", "cm", ["rectangle", 300, 600]],
    ["450 SQ", "mm", ["rectangle", 450, 450]],
    ["450 sq.", "mm", ["rectangle", 450, 450]],
    ["SQ 450", "mm", ["rectangle", 450, 450]],
    ["\u00d8500", "mm", ["circle", 500, 500]],
    ["\u00f8 500", "mm", ["circle", 500, 500]],
    ["\u2300500", "mm", ["circle", 500, 500]],
    ["500 DIA", "mm", ["circle", 500, 500]],
    ["500 dia.", "mm", ["circle", 500, 500]],
    ["500mm DIAMETER", "mm", ["circle", 500, 500]],
    ["DIA 500", "mm", ["circle", 500, 500]],
    ["D500", "mm", ["circle", 500, 500]],
    ["500 ROUND", "mm", ["circle", 500, 500]],
    ['12"x24"', "mm", ["rectangle", 304.8, 609.6]],
    ['12 x 24"', "mm", ["rectangle", 304.8, 609.6]],
    ["12x24", "in", ["rectangle", 304.8, 609.6]],
    ["1'-6\" x 2'-0\"", "in", ["rectangle", 457.2, 609.6]],
    ['24" DIA', "in", ["circle", 609.6, 609.6]],
  ])("%s with %s in the heading", (text, unit, [shape, width_mm, depth_mm]) => {
    expect(readSize(text, unit)).toEqual({ kind: "section", shape, width_mm, depth_mm });
  });

  it("is in metres when no unit is written anywhere and both sides are under 5", () => {
    expect(readSize("0.3 x 0.6", "mm", true)).toMatchObject({ width_mm: 300, depth_mm: 600 });
    expect(readSize("300x600", "mm", true)).toMatchObject({ width_mm: 300, depth_mm: 600 });
  });

  it("of one number keeps its shape open", () => {
    expect(readSize("450", "mm")).toEqual({ kind: "one number", value_mm: 450 });
  });

  // Bar notation: count, grade, diameter; BS 8666 and common practice elsewhere, from memory.
  it.each(["8T25", "4-Y20", "8-#8", "T8-200", "8 dia @ 150 c/c", "R10-150", "8 T 25 + 4 T 20", "8N24", "12H32", "8-D25", "8-25 dia", '#4 @ 12"', "T10@200", "8 no. T25"])(
    "is not what bars or ties %s say",
    (text) => {
      expect(readSize(text, "mm").kind).toBe("bars");
    },
  );

  it.each(["", "C32/40", "L1", "300x600x900", "see note 4", "0x0", "x", "300x", "C1"])("is not %s", (text) => {
    expect(readSize(text, "mm").kind).toBe("none");
  });

  it("is the same after it is written and read again, however it is written", () => {
    const side = fc.integer({ min: 100, max: 3000 });
    fc.assert(
      fc.property(side, side, fc.constantFrom("x", " X ", " \u00d7 ", "*", " by "), (width_mm, depth_mm, sign) => {
        const section = { kind: "section", shape: "rectangle", width_mm, depth_mm };
        expect(readSize(`${width_mm}${sign}${depth_mm}`, "mm")).toEqual(section);
        expect(readSize(`${width_mm / 1000}${sign}${depth_mm / 1000} m`, "mm")).toEqual(section);
        expect(readSize(`${width_mm / 10}/${depth_mm / 10}`, "cm")).toEqual(section);
        expect(readSize(`${width_mm} DIA`, "mm")).toMatchObject({ shape: "circle", width_mm, depth_mm: width_mm });
      }),
    );
  });

  it("never throws and never takes long, whatever the cell holds", () => {
    fc.assert(fc.property(fc.string({ maxLength: 200 }), (text) => void readSize(text, "mm")));
    expect(readSize("1".repeat(1_000_000), "mm").kind).toBe("none");
  });
});
