import { describe, expect, it } from "vitest";
import { compareSchedule, type KnownColumn, type KnownSchedule } from "#lib/trade/schedule/compare-schedule.ts";
import { splitGridRef } from "#lib/trade/schedule/grid-names.ts";
import { readSchedule } from "#lib/trade/schedule/read-schedule.ts";
import type { Cell } from "#lib/trade/schedule/table/sheet.ts";

const HEADINGS = ["Mark", "Grid", "Size (mm)", "From level", "To level", "From RL (m)", "To RL (m)"];
const read = (...rows: Cell[][]) => readSchedule([{ name: "S", rows: [HEADINGS, ...rows] }], "metric");
const aColumn = (over: Partial<KnownColumn> = {}): KnownColumn => ({
  id: "one", gridRef: "A/1", mark: "P1", fromLevel: "GF", toLevel: "L1", shape: "rectangle", width_mm: 300, depth_mm: 600, stage: 0, ...over,
});
const aProject = (...columns: KnownColumn[]): KnownSchedule => ({
  levels: [{ id: "gf", name: "GF", elevation_mm: 0 }, { id: "l1", name: "L1", elevation_mm: 3600 }],
  gridLines: [{ name: "A" }, { name: "1" }],
  marks: [{ name: "P1" }],
  columns,
});
const EMPTY: KnownSchedule = { levels: [], gridLines: [], marks: [], columns: [] };

describe("a schedule beside the project", () => {
  it("creates everything in an empty project, lowest level first and grid lines without spacing", () => {
    const { create, ...rest } = compareSchedule(EMPTY, read(["P2", "B/1", "450 SQ", "GF", "L1", 0, 3.6], ["P1", "A/10", "300x500", "L1", "L2", 3.6, 6.9], ["P1", "A/2", "300x600", "GF", "L1", 0, 3.6], ["P3", "stair", "500 DIA", "GF", "L1", 0, 3.6]));
    expect(create.levels).toEqual([{ name: "GF", elevation_mm: 0 }, { name: "L1", elevation_mm: 3600 }, { name: "L2", elevation_mm: 6900 }]);
    expect(create.gridLines.map((line) => [line.name, line.family, line.offset_mm])).toEqual([["A", "lettered", null], ["B", "lettered", null], ["1", "numbered", null], ["2", "numbered", null], ["10", "numbered", null]]);
    expect(create.marks.map((mark) => [mark.name, mark.width_mm, mark.depth_mm])).toEqual([["P1", 300, 600], ["P2", 450, 450], ["P3", 500, 500]]);
    expect(create.columns).toHaveLength(4);
    expect(rest).toEqual({ change: { levels: [], columns: [] }, same: [], refused: [], notInFile: [], freePlaces: ["stair"] });
  });

  it("finds the same column under another spelling of its place", () => {
    const preview = compareSchedule(aProject(aColumn()), read(["p1", "a-1", "300x600", "gf", "l1", 0, 3.6]));
    expect(preview.same).toEqual(["one"]);
    expect(preview.create).toEqual({ levels: [], gridLines: [], marks: [], columns: [] });
  });

  it("lists each changed value of a column not poured yet, whatever else has been done to it", () => {
    const preview = compareSchedule(aProject(aColumn({ stage: 4 })), read(["P9", "A/1", "500 DIA", "GF", "L1", 0, 3.6]));
    expect(preview.change.columns.map(({ id, stage, what, from, to }) => [id, stage, what, from, to])).toEqual([
      ["one", 4, "mark", "P1", "P9"], ["one", 4, "shape", "rectangle", "circle"], ["one", 4, "width", 300, 500], ["one", 4, "depth", 600, 500],
    ]);
    expect(preview.refused).toEqual([]);
  });

  it.each([5, 6])("never changes a column at stage %i, and says why", (stage) => {
    const preview = compareSchedule(aProject(aColumn({ stage })), read(["P1", "A/1", "300x500", "GF", "L1", 0, 3.6]));
    expect(preview.change.columns).toEqual([]);
    expect(preview.refused).toEqual([{ source: { sheet: "S", row: 2, cell: "C2" }, message: expect.stringContaining("poured already and stays as it is; the file would change depth 600 to 500"), remedy: expect.stringMatching(/\S/) }]);
  });

  it("lists columns the file leaves out and deletes none", () => {
    const left = aColumn({ id: "two", gridRef: "B/1" });
    const preview = compareSchedule(aProject(aColumn(), left), read(["P1", "A/1", "300x600", "GF", "L1", 0, 3.6]));
    expect(preview.notInFile).toEqual([left]);
  });

  it("moves a level only while nothing on it is poured", () => {
    const higher = read(["P1", "A/1", "300x600", "GF", "L1", 0, 3.75]);
    expect(compareSchedule(aProject(aColumn()), higher).change.levels).toEqual([{ id: "l1", name: "L1", what: "elevation", from: 3600, to: 3750 }]);
    const poured = compareSchedule(aProject(aColumn({ stage: 5 })), higher);
    expect(poured.change.levels).toEqual([]);
    expect(poured.refused[0]?.message).toContain("columns there are poured");
  });

  it("refuses a level without elevation, and one at the height of another, with the lifts on them", () => {
    const unknown = compareSchedule(aProject(), read(["P1", "A/1", "300x600", "L1", "L2", null, null]));
    expect(unknown.refused.map((finding) => finding.message)).toEqual([expect.stringContaining("Level L2 has no elevation")]);
    expect(unknown.create.columns).toEqual([]);
    const twin = compareSchedule(aProject(), read(["P1", "A/1", "300x600", "GF", "First floor", 0, 3.6]));
    expect(twin.refused.map((finding) => finding.message)).toEqual([expect.stringContaining("same elevation as L1")]);
    expect(twin.create.columns).toEqual([]);
  });

  it("takes a level's elevation from the project when the file has none", () => {
    const preview = compareSchedule(aProject(), read(["P1", "A/1", "300x600", "GF", "L1", null, null]));
    expect([preview.refused, preview.create.columns.length]).toEqual([[], 1]);
  });

  it("applies a schedule by marks alone to every place of the mark, and one by grid references alone to no mark", () => {
    const project = aProject(aColumn(), aColumn({ id: "two", gridRef: "B/1" }));
    const byMark = readSchedule([{ name: "S", rows: [["Level", "P1", "P2"], ["GF", "300x500", "400x400"], ["L1", null, null]] }], "metric");
    expect(compareSchedule(project, byMark).change.columns.map(({ id, what, to }) => [id, what, to])).toEqual([["one", "depth", 500], ["two", "depth", 500]]);
    const byGrid = readSchedule([{ name: "S", rows: [["Level", "A/1", "B/1"], ["GF", "300x600", "300x600"], ["L1", null, null]] }], "metric");
    expect(compareSchedule(project, byGrid).same).toEqual(["one", "two"]);
  });

  it("passes on what was wrong with the file", () => {
    const reading = read(["P1", "A/1", "8T25", "GF", "L1", 0, 3.6]);
    expect(compareSchedule(EMPTY, reading).refused).toEqual(reading.problems);
  });
});

describe("a grid reference", () => {
  it.each([["A/1", "A", "1"], ["A-1", "A", "1"], ["A 1", "A", "1"], ["A1", "A", "1"], ["b.3/4", "B.3", "4"], ["1/A", "A", "1"], ["AA/12", "AA", "12"], ["C/3.4", "C", "3.4"], ["A'/2", "A'", "2"]])("%s crosses %s and %s", (ref, lettered, numbered) => {
    expect(splitGridRef(ref)).toEqual({ lettered, numbered });
  });

  it.each(["stair core", "A/B", "1/2", "", "A/1/2", "X1/Y2", "ABCD/1", "=A/1"])("%s stays a place of its own", (ref) => {
    expect(splitGridRef(ref)).toBeNull();
  });
});
