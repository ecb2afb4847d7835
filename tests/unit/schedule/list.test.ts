import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readSchedule } from "#lib/trade/schedule/read-schedule.ts";
import { scheduleTemplateCsv } from "#lib/trade/schedule/schedule-template.ts";
import type { Cell } from "#lib/trade/schedule/table/sheet.ts";

const HEADINGS = ["Mark", "Grid", "Size (mm)", "From level", "To level", "From RL (m)", "To RL (m)", "Remarks"];
const list = (rows: readonly (readonly Cell[])[], headings: readonly string[] = HEADINGS) =>
  readSchedule([{ name: "Columns", rows: [headings, ...rows] }], "metric");
const sizes = (reading: ReturnType<typeof list>) =>
  reading.lifts.map((lift) => `${lift.mark} ${lift.gridRef} ${lift.shape === "circle" ? "\u00d8" : ""}${lift.width_mm}x${lift.depth_mm} ${lift.fromLevel}-${lift.toLevel}`);

describe("a list", () => {
  it("is read under other headings, below a title, with the units of the headings", () => {
    const reading = readSchedule(
      [{ name: "S", rows: [["Column schedule, block of stables"], [], ["Column ref.", "Location", "b, cm", "d, cm", "Storey", "Storey height in m", "Qty"], ["P1", "A/1", 30, 60, "GF", 3.6, 1], ["P1", "A/1", 30, 45, "L1", 3.3, 1], ["P1", "A/1", 30, 45, "RF", null, 0]] }],
      "metric",
    );
    expect(reading.layout).toBe("list");
    expect(sizes(reading)).toEqual(["P1 A/1 300x600 GF-L1", "P1 A/1 300x450 L1-RF"]);
    expect(reading.lifts.map((lift) => lift.storeyHeight_mm)).toEqual([3600, 3300]);
    expect(reading.problems.map((problem) => problem.source?.cell)).toEqual(["E6"]);
  });

  it("takes blanks and ditto marks as the cell above, and says so for blanks", () => {
    const reading = list([
      ["P1", "A/1", "300x600", "GF", "L1", 0, 3.6, null],
      [null, null, null, "L1", "L2", 3.6, 6.9, null],
      ["do", "ditto", '"', "L2", "RF", 6.9, 10.2, null],
      ["P2", "B/1", "''", "GF", "L1", 0, 3.6, null],
    ]);
    expect(sizes(reading)).toEqual(["P1 A/1 300x600 GF-L1", "P1 A/1 300x600 L1-L2", "P1 A/1 300x600 L2-RF", "P2 B/1 300x600 GF-L1"]);
    expect(reading.problems).toEqual([]);
    expect(reading.warnings.map((warning) => warning.message)).toEqual([
      expect.stringContaining("Blank mark"),
      expect.stringContaining("Blank grid reference"),
      expect.stringContaining("Blank size"),
    ]);
  });

  it("knows headings with other units, stacked cells, and rows that say there is no column", () => {
    const reading = list(
      [["P1", "A/1", "300x600\n8T25\nT8-200", "GF", 3, "C32/40"], ["P1", "A/1", "\u00d8450", "L1", 3, "C32/40"], ["P1", "A/1", "-", "RF", null, null]],
      ["Col. Mark", "Grid Location", "Section (b x d)", "Storey", "F/F height (m)", "f'c (MPa)"],
    );
    expect(reading.lifts.map((lift) => [lift.fromLevel, lift.toLevel, lift.width_mm, lift.depth_mm, lift.storeyHeight_mm, lift.mainBars, lift.concrete])).toEqual([
      ["GF", "L1", 300, 600, 3000, "8T25", "C32/40"], ["L1", "RF", 450, 450, 3000, null, "C32/40"],
    ]);
    expect(reading.problems).toEqual([]);
  });

  it("does not carry a size over to another mark, nor read a ditto mark with nothing above", () => {
    const reading = list([
      ["do", "A/1", "300x600", "GF", "L1", 0, 3.6, null],
      ["P1", "A/1", "300x600", "GF", "L1", 0, 3.6, null],
      ["P2", "B/1", null, "GF", "L1", 0, 3.6, null],
    ]);
    expect(sizes(reading)).toEqual(["P1 A/1 300x600 GF-L1"]);
    expect(reading.problems.map(({ source, message }) => [source?.cell, message])).toEqual([
      ["A2", expect.stringContaining("ditto")],
      ["A4", expect.stringContaining("no size")],
    ]);
  });

  it("spreads grid lists, mark runs and level runs", () => {
    const reading = list(
      [
        ["P1", "A/1, B/1", "300x600", "L1-L3"],
        ["P2", "A/2;B/2", "450 SQ", "L1 to L2"],
        ["P3-P4", "C/1 & C/2", "500 DIA", "L2-3"],
      ],
      ["Mark", "Grid", "Size (mm)", "Level"],
    );
    expect(sizes(reading)).toEqual([
      "P1 A/1 300x600 L1-L2", "P1 A/1 300x600 L2-L3", "P1 B/1 300x600 L1-L2", "P1 B/1 300x600 L2-L3",
      "P2 A/2 450x450 L1-L2", "P2 B/2 450x450 L1-L2",
      "P3 C/1 \u00d8500x500 L2-L3", "P4 C/2 \u00d8500x500 L2-L3",
    ]);
    expect(reading.problems).toEqual([]);
    expect(reading.warnings.map((warning) => warning.source?.cell)).toEqual(["D2"]);
  });

  it("reads shape, width, depth and diameter columns", () => {
    const reading = list(
      [
        ["P1", "Rectangular", 300, 600, null, "GF", "L1"],
        ["P2", "Square", 450, null, null, "GF", "L1"],
        ["P3", "Round", null, null, 500, "GF", "L1"],
        ["P4", "Rect", 300, null, null, "GF", "L1"],
        ["P5", "Hexagonal", 300, 300, null, "GF", "L1"],
        ["P6", "Round", 300, 400, null, "GF", "L1"],
      ],
      ["Mark", "Shape", "Width (mm)", "Depth (mm)", "Dia (mm)", "From", "To"],
    );
    expect(sizes(reading)).toEqual(["P1 P1 300x600 GF-L1", "P2 P2 450x450 GF-L1", "P3 P3 \u00d8500x500 GF-L1"]);
    expect(reading.problems.map((problem) => problem.source?.cell)).toEqual(["C5", "B6", "D7"]);
  });

  it.each<[string, Cell[][], string, string]>([
    ["two elevations for one level", [["P1", "A/1", "300x600", "GF", "L1", 0, 3.6, null], ["P2", "B/1", "300x600", "GF", "L1", 0, 3.7, null]], "G3", "L1 has two elevations"],
    ["a to level below the from level", [["P1", "A/1", "300x600", "L2", "L1", 7, 3.6, null]], "D2", "does not stand above"],
    ["a side too small", [["P1", "A/1", "30x60", "GF", "L1", 0, 3.6, null]], "C2", "outside 100 to 3000"],
    ["a storey too high", [["P1", "A/1", "300x600", "GF", "L1", 0, 36, null]], "D2", "outside 300 to 15000"],
    ["bars for a size", [["P1", "A/1", "8T25", "GF", "L1", 0, 3.6, null]], "C2", "bars or ties"],
    ["a formula", [["P1", "A/1", "=300", "GF", "L1", 0, 3.6, null]], "C2", "like a formula"],
    ["a formula in the remarks", [["P1", "A/1", "300x600", "GF", "L1", 0, 3.6, "@sum"]], "H2", "like a formula"],
    ["a date for a grid reference", [["P1", "2031-02-01", "300x600", "GF", "L1", 0, 3.6, null]], "B2", "is a date"],
    ["a run of grid references", [["P1", "A/1 - A/4", "300x600", "GF", "L1", 0, 3.6, null]], "B2", "is a run"],
    ["twins of different size", [["P1", "A/1", "300x600", "GF", "L1", 0, 3.6, null], ["P1", "A-1", "300x500", "GF", "L1", 0, 3.6, null]], "C3", "stands in C2 already"],
  ])("refuses %s, naming the cell", (_, rows, cell, message) => {
    expect(list(rows).problems).toContainEqual({ source: expect.objectContaining({ cell }), message: expect.stringContaining(message), remedy: expect.stringMatching(/\S/) });
  });

  it("orders levels by elevation, else by who stands on whom and by name, and carries storey heights up", () => {
    const reading = list(
      [["P1", "300x600", "B1", "GF", 3000, -3], ["P1", "300x600", "L10", "RF", 3200, null], ["P1", "300x600", "GF", "Hall", 4000, null], ["P1", "300x600", "Hall", "L10", 3100, null]],
      ["Mark", "Size (mm)", "From level", "To level", "Storey height (mm)", "From RL (m)"],
    );
    expect(reading.levels).toEqual([
      { name: "B1", elevation_mm: -3000 }, { name: "GF", elevation_mm: 0 }, { name: "Hall", elevation_mm: 4000 }, { name: "L10", elevation_mm: 7100 }, { name: "RF", elevation_mm: 10_300 },
    ]);
    expect(reading.problems).toEqual([]);
  });

  it("says that levels contradict one another", () => {
    const reading = list([["P1", "300x600", "Attic", "Hall"], ["P2", "300x600", "Hall", "Attic"]], ["Mark", "Size (mm)", "From level", "To level"]);
    expect(reading.problems[0]?.message).toContain("contradict");
  });

  it("reads US customary sizes and heights without units as inches and feet", () => {
    const reading = readSchedule([{ name: "S", rows: [["Mark", "Grid", "Size", "Level", "Elevation"], ["P1", "A1", "12x24", "Level 1", "100.5"], ["P1", "A1", "24\" DIA", "Level 2", "112'-6\""], ["P1", "A1", "-", "Roof", "124'-6\""]] }], "us");
    expect(reading.lifts.map((lift) => [lift.width_mm, lift.depth_mm, lift.storeyHeight_mm])).toEqual([[304.8, 609.6, 3657.6], [609.6, 609.6, 3657.6]]);
  });

  it("does not depend on the order of its columns", () => {
    const rows = [HEADINGS, ["P1", "A/1", "300x600", "GF", "L1", 0, 3.6, "Fair faced"], ["P2", "B.3/4", "450 SQ", "L1", "RF", 3.6, 6.9, null], ["P3", "C/1", "500 DIA", "GF", "RF", 0, 6.9, null]];
    const withoutCells = (order: readonly number[]) => {
      const reading = readSchedule([{ name: "S", rows: rows.map((row) => order.map((index) => row[index] ?? null)) }], "metric");
      return { levels: reading.levels, lifts: reading.lifts.map(({ source: _, ...lift }) => lift), counts: reading.counts };
    };
    const straight = withoutCells(HEADINGS.map((_, index) => index));
    expect(straight.counts).toEqual({ rowsRead: 3, lifts: 4, errors: 0, warnings: 1 });
    const indices = HEADINGS.map((_, index) => index);
    fc.assert(fc.property(fc.shuffledSubarray(indices, { minLength: indices.length }), (order) => { expect(withoutCells(order)).toEqual(straight); }));
  });

  it("never throws, whatever the cells hold", () => {
    const cell = fc.oneof(fc.constant(null), fc.double(), fc.string({ maxLength: 12 }), fc.constantFrom("Mark", "Size", "Level", "C1", "C2", "L1", "L2", "GF", "do", '"', "-", "300x600", "L1-L3", "=1", "A/1"));
    fc.assert(fc.property(fc.array(fc.array(cell, { maxLength: 8 }), { maxLength: 12 }), fc.constantFrom("metric" as const, "us" as const), (rows, units) => {
      const reading = readSchedule([{ name: "S", rows }], units);
      expect(reading.counts.lifts).toBe(reading.lifts.length);
      for (const lift of reading.lifts) expect(Math.min(lift.width_mm, lift.depth_mm)).toBeGreaterThanOrEqual(100);
    }), { numRuns: 500 });
  });

  it("refuses more than 20,000 lifts, however few rows they hide in", () => {
    const places = Array.from({ length: 150 }, (_, index) => `A/${index + 1}`).join(",");
    const rows = Array.from({ length: 200 }, (_, index) => [`P${index}`, places, "300x600", "GF", "L1", 0, 3.6, null]);
    expect(list(rows).problems.at(-1)?.message).toContain("more than 20000 lifts");
  });

  it("says what it needs when it recognises nothing", () => {
    expect(readSchedule([{ name: "S", rows: [["Shopping"], ["Nails", 4]] }], "metric").problems[0]).toMatchObject({ message: expect.stringContaining("No column schedule"), remedy: expect.stringContaining("Mark") });
    expect(readSchedule([], "metric").problems[0]?.message).toBe("The file is empty.");
  });
});

describe("the template", () => {
  it("is read without a problem or a warning", async () => {
    const { readSheet } = await import("#lib/server/columns/read-sheet.ts");
    const sheets = await readSheet(new TextEncoder().encode(scheduleTemplateCsv()), "template.csv");
    expect(sheets.ok && readSchedule(sheets.value, "metric").counts).toEqual({ rowsRead: 4, lifts: 5, errors: 0, warnings: 0 });
  });
});
