import { describe, expect, it } from "vitest";
import { readGridEntry } from "#app/(work)/projects/[projectId]/set-up/grid/grid-entry.ts";
import { offsetsMm, runRows, toGridRows, toGridLines } from "#app/(work)/projects/[projectId]/set-up/grid/grid-row.ts";
import { allPlaces, crossingRef, takenFrom } from "#app/(work)/projects/[projectId]/set-up/columns/crossings.ts";
import { ownPath } from "#app/paths.ts";

const runOf = (text: string, units: "metric" | "us" = "metric") => readGridEntry(text, units)?.map(({ name, spacingMm }) => `${name} ${spacingMm}`);

describe("a run of grid lines typed at once", () => {
  it("takes names or a range, at one spacing for all", () => {
    expect(runOf("A, B, C at 6.0 m")).toEqual(["A 6000", "B 6000", "C 6000"]);
    expect(runOf("1-4 at 7200")).toEqual(["1 7200", "2 7200", "3 7200", "4 7200"]);
    expect(runOf("a-c @ 8")).toEqual(["A 8000", "B 8000", "C 8000"]);
  });
  it("takes one spacing for each gap", () => {
    expect(runOf("A-C at 6.0, 4.5")).toEqual(["A 6000", "B 6000", "C 4500"]);
    expect(runOf("A-C at 6.0, 4.5, 3")).toBeUndefined();
  });
  it("takes feet and inches, by the international foot of 304.8 mm", () => {
    expect(runOf("1-2 at 25'-0\"", "us")).toEqual(["1 7620", "2 7620"]);
    expect(runOf("1-2 at 24'-6\"", "us")).toEqual([`1 ${Math.round(24.5 * 304.8)}`, `2 ${Math.round(24.5 * 304.8)}`]);
  });
  it("refuses what is no run", () => {
    for (const text of ["", "A-D", "D-A at 6", "A at nothing", "A at -6", "1-900 at 6"]) expect(runOf(text), text).toBeUndefined();
  });
});

describe("grid lines in the table", () => {
  it("begins at the origin and goes on from the last line", () => {
    const first = runRows(readGridEntry("A-B at 6", "metric") ?? [], [], "spacing", "metric", String);
    const all = [...first, ...runRows(readGridEntry("C at 4.5", "metric") ?? [], first, "spacing", "metric", String)];
    expect(offsetsMm(all, "spacing", "metric")).toEqual([0, 6000, 10_500]);
  });
  it("gives back, untouched, offsets that a sixteenth of an inch cannot show", () => {
    const lines = [0, 6001, 12_002, 18_003].map((offsetMm, index) => ({ id: String(index), axis: "along-x", name: String(index), offsetMm }));
    const rows = toGridRows(lines, "along-x", "us");
    expect(toGridLines(rows, "along-x", "spacing", "us").map((line) => line.offsetMm)).toEqual([0, 6001, 12_002, 18_003]);
  });
});

describe("positions", () => {
  it("writes a crossing letter first, whichever way the letters run", () => {
    expect(crossingRef("A", "3")).toBe("A/3");
    expect(crossingRef("3", "A")).toBe("A/3");
    expect(crossingRef("Stair", "Core")).toBe("Stair/Core");
  });
  it("counts one place once, however it is written", () => {
    expect(allPlaces(new Set(["A/1"]), "a1; B-2, Stair 2")).toEqual(["A/1", "B/2", "Stair 2"]);
    expect(takenFrom([{ gridRef: "a1", fromLevelId: "l" }], "l").has("A/1")).toBe(true);
  });
});

describe("where signing in leads", () => {
  it("stays within the product", () => {
    expect(ownPath("/projects/x/today?level=2")).toBe("/projects/x/today?level=2");
    for (const asked of [undefined, "", "people", "//host.example/x", "/\\host.example", "https://host.example", "/\t/host.example"]) expect(ownPath(asked), String(asked)).toBe("/");
  });
});
