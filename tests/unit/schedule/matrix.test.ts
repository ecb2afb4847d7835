import { describe, expect, it } from "vitest";
import { readSchedule } from "#lib/trade/schedule/read-schedule.ts";
import type { Cell } from "#lib/trade/schedule/table/sheet.ts";

const read = (rows: readonly (readonly Cell[])[]) => readSchedule([{ name: "Matrix", rows }], "metric");
const sizes = (reading: ReturnType<typeof read>) =>
  reading.lifts.map((lift) => `${lift.mark} ${lift.gridRef} ${lift.shape === "circle" ? "\u00d8" : ""}${lift.width_mm}x${lift.depth_mm} ${lift.fromLevel}-${lift.toLevel} ${lift.source.cell}`).sort();

describe("a matrix", () => {
  it("is read with marks across and the top level first", () => {
    const reading = read([
      ["Storey", "RL (m)", "P1", "P2, P5", "P3"],
      ["RF", 10.2, null, null, null],
      ["L2", 6.9, "300x500", null, "\u00d8450"],
      ["L1", 3.6, "do", "400 SQ", "-"],
      ["GF", 0, "300x600", "400 SQ\n8T25\nT8-200", "500 DIA"],
    ]);
    expect(reading.layout).toBe("matrix");
    expect(reading.levels).toEqual([{ name: "GF", elevation_mm: 0 }, { name: "L1", elevation_mm: 3600 }, { name: "L2", elevation_mm: 6900 }, { name: "RF", elevation_mm: 10_200 }]);
    expect(sizes(reading)).toEqual([
      "P1 P1 300x500 L1-L2 C4", "P1 P1 300x500 L2-RF C3", "P1 P1 300x600 GF-L1 C5",
      "P2 P2 400x400 GF-L1 D5", "P2 P2 400x400 L1-L2 D4",
      "P3 P3 \u00d8450x450 L2-RF E3", "P3 P3 \u00d8500x500 GF-L1 E5",
      "P5 P5 400x400 GF-L1 D5", "P5 P5 400x400 L1-L2 D4",
    ]);
    expect(reading.lifts.find((lift) => lift.mark === "P2" && lift.fromLevel === "GF")?.mainBars).toBe("8T25");
    expect(reading.problems).toEqual([]);
  });

  it("reads a blank between two filled cells as the one above, and says so; blanks outside are no column", () => {
    const reading = read([["Level", "P1", "P2"], ["GF", "300x600", null], ["L1", null, "400x400"], ["L2", "300x500", null], ["RF", null, null]]);
    expect(sizes(reading)).toEqual(["P1 P1 300x500 L2-RF B4", "P1 P1 300x600 GF-L1 B2", "P1 P1 300x600 L1-L2 B3", "P2 P2 400x400 L1-L2 C3"]);
    expect(reading.warnings.map((warning) => warning.source?.cell)).toContain("B3");
  });

  it("is read with grid references across, ranges of levels down and a row of marks", () => {
    const reading = read([
      ["Grid", "A/1", "A/2", "B/1"],
      ["Mark", "P1", "P1", "P2"],
      ["GF - L1", "300x600", "300x600", "\u00d8500"],
      ["L1 - RF", "300x500", "nil", "\u00d8500"],
    ]);
    expect(sizes(reading)).toEqual(["P1 A/1 300x500 L1-RF B4", "P1 A/1 300x600 GF-L1 B3", "P1 A/2 300x600 GF-L1 C3", "P2 B/1 \u00d8500x500 GF-L1 D3", "P2 B/1 \u00d8500x500 L1-RF D4"]);
    expect(reading.grids).toEqual(["A/1", "A/2", "B/1"]);
  });

  it("knows A1, A2, B1 for grid references and C1, C2, C3 for marks", () => {
    const body: Cell[][] = [["GF", "300x600", "300x600", "300x600"], ["L1", null, null, null]];
    expect(read([["Level", "A1", "A2", "B1"], ...body]).grids).toEqual(["A1", "A2", "B1"]);
    expect(read([["Level", "C1", "C2", "C3"], ...body]).grids).toEqual([]);
  });

  it("is read on its side, with levels across", () => {
    const reading = read([["Mark", "Grid", "GF-L1", "L1-L2", "L2-RF"], ["P1", "A/1", "300x600", "300x600", "do"], ["P2", "B/1", "450 SQ", "", ""]]);
    expect(reading.layout).toBe("turned matrix");
    expect(sizes(reading)).toEqual(["P1 A/1 300x600 GF-L1 C2", "P1 A/1 300x600 L1-L2 D2", "P1 A/1 300x600 L2-RF E2", "P2 B/1 450x450 GF-L1 C3"]);
  });

  it("takes a level's elevation from beside its name", () => {
    const reading = read([["Grid", "L2 (RL 6.9)", "L1 (RL 3.6)", "GF (RL 0.0)"], ["A/1", "", "300x600", "do"], ["A/2", "", "450 SQ", "300x450"]]);
    expect(reading.levels).toEqual([{ name: "GF", elevation_mm: 0 }, { name: "L1", elevation_mm: 3600 }, { name: "L2", elevation_mm: 6900 }]);
    expect(sizes(reading)).toEqual(["A/1 A/1 300x600 GF-L1 D2", "A/1 A/1 300x600 L1-L2 C2", "A/2 A/2 300x450 GF-L1 D3", "A/2 A/2 450x450 L1-L2 C3"]);
  });

  it("keeps bars and ties on rows of their own out of the sizes", () => {
    const reading = read([
      ["Level", "Item", "P1", "P2"],
      ["L1", "Size", "300x500", "400x400"], [null, "Main bars", "6T20", "4-Y20"], [null, "Ties", "T8-200", "8 dia @ 150 c/c"],
      ["GF", "Size", "300x600", "do"], [null, "Main bars", "8T25", "8-#8"], [null, "Ties", "T8-200", "T8-200"],
      ["RF", null, null, null],
    ]);
    expect(reading.lifts.map((lift) => [lift.mark, lift.fromLevel, lift.width_mm, lift.mainBars])).toEqual([
      ["P1", "L1", 300, "6T20"], ["P1", "GF", 300, "8T25"], ["P2", "L1", 400, "4-Y20"], ["P2", "GF", 400, "8-#8"],
    ]);
    expect(reading.problems).toEqual([]);
  });

  it("takes the unit of the sizes from the words above", () => {
    const reading = read([["Column schedule, all sizes in cm"], ["Level", "P1", "P2"], ["GF", "30/60", "45 SQ"], ["L1", null, null]]);
    expect(reading.lifts.map((lift) => [lift.width_mm, lift.depth_mm])).toEqual([[300, 600], [450, 450]]);
  });

  it.each<[string, Cell[][], string, string]>([
    ["a ditto mark with nothing above", [["Level", "P1", "P2"], ["L1", "do", "400x400"], ["GF", "300x600", "400x400"], ["RF", null, null]], "B2", "nothing above"],
    ["words that are no size", [["Level", "P1", "P2"], ["GF", "see note", "400x400"], ["L1", "300x600", "400x400"], ["RF", null, null]], "B2", "is not a size"],
    ["a formula", [["Level", "P1", "P2"], ["GF", "=B3", "400x400"], ["L1", "300x600", "400x400"], ["RF", null, null]], "B2", "like a formula"],
    ["a lift without a top", [["Level", "P1", "P2"], ["GF", "300x600", "400x400"], ["L1", "300x600", null]], "A3", "No level above L1"],
  ])("refuses %s, naming the cell", (_, rows, cell, message) => {
    expect(read(rows).problems).toContainEqual({ source: expect.objectContaining({ sheet: "Matrix", cell }), message: expect.stringContaining(message), remedy: expect.stringMatching(/\S/) });
  });

  it("uses the project's levels where the file names no top", () => {
    const rows: Cell[][] = [["Level", "P1", "P2"], ["GF", "300x600", "400x400"], ["L1", "300x600", null]];
    const known = [{ name: "GF", elevation_mm: 0 }, { name: "L1", elevation_mm: 3600 }, { name: "Eaves", elevation_mm: 6900 }];
    expect(sizes(readSchedule([{ name: "Matrix", rows }], "metric", known))).toContain("P1 P1 300x600 L1-Eaves B3");
  });
});
