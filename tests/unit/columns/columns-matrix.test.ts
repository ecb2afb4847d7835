import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { SheetColumn, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { cellOf, columnsBetween, idAt, layMatrix } from "#app/(work)/projects/[projectId]/columns/_views/matrix/lay-matrix.ts";
import { gridOrder } from "#app/(work)/projects/[projectId]/columns/_views/sheet/grid-order.ts";
import { stepOf, stepTo, type Step } from "#app/(work)/projects/[projectId]/columns/_views/matrix/matrix-steps.ts";

const aLevel = (id: string, elevationMm: number): SheetLevel => ({ id, name: id, elevationMm, slabDepthMm: 220, beamDepthMm: 480 });
const levels = [aLevel("ground", 0), aLevel("one", 3900), aLevel("two", 7350), aLevel("roof", 10_800)];
const above: Readonly<Record<string, string>> = { ground: "one", one: "two", two: "roof" };
const at = (gridRef: string, fromLevelId: string, toLevelId = above[fromLevelId] ?? ""): SheetColumn => ({
  id: `${gridRef} ${fromLevelId}`, gridRef, markId: "m", gridXId: null, gridYId: null, fromLevelId, toLevelId, shape: "rectangle",
  width_mm: 420, depth_mm: 310, done: 0, flagged: false, formHeightMm: null, headedBy: "slab",
});
/** Two: A/1 and A/10. One: all three but A/2. Ground: all; A/2 runs through two storeys. */
const columns = [at("A/1", "ground"), at("A/2", "ground", "two"), at("A/10", "ground"), at("A/1", "one"), at("A/10", "one"), at("A/1", "two"), at("A/10", "two")];
const matrix = layMatrix(columns, columns, levels);

describe("laying out levels and positions", () => {
  it("stands the highest level on top and A/2 before A/10, and leaves out levels without columns", () => {
    expect(matrix.levels.map(({ id }) => id)).toEqual(["two", "one", "ground"]);
    expect(matrix.places).toEqual(["A/1", "A/2", "A/10"]);
  });

  it("knows a column that passes a level from one that is not there", () => {
    expect(idAt(matrix, { row: 2, place: 1 })).toBe("A/2 ground");
    expect(matrix.at({ row: 1, place: 1 })).toBe("passing");
    expect(matrix.at({ row: 0, place: 1 })).toBeNull();
  });

  it("keeps to the levels and positions of what is shown", () => {
    const narrowed = layMatrix(columns, columns.filter(({ gridRef }) => gridRef === "A/2"), levels);
    expect([narrowed.levels.map(({ id }) => id), narrowed.places]).toEqual([["ground"], ["A/2"]]);
  });

  it("finds the cell of a column, and none when it is left out", () => {
    expect(cellOf(matrix, at("A/10", "one"))).toEqual({ row: 1, place: 2 });
    expect(cellOf(matrix, at("B/1", "one"))).toBeNull();
  });

  it("takes a rectangle from any corner to the opposite one", () => {
    const wanted = ["A/1 one", "A/10 one", "A/1 ground", "A/2 ground", "A/10 ground"];
    expect(columnsBetween(matrix, { row: 1, place: 0 }, { row: 2, place: 2 })).toEqual(wanted);
    expect(columnsBetween(matrix, { row: 2, place: 2 }, { row: 1, place: 0 })).toEqual(wanted);
    expect(columnsBetween(matrix, { row: 2, place: 0 }, { row: 1, place: 2 })).toEqual(wanted);
  });
});

describe("the order of grid positions", () => {
  it("goes on with AA after Z, as grids are lettered, and puts places without a grid line last", () => {
    const given = ["Loading dock", "AA/2", "B.3/4", "Z/1", "4/1", "A/10", "AA/10", "B/4", "A/2", "C/1"];
    expect(given.sort(gridOrder)).toEqual(["A/2", "A/10", "B/4", "B.3/4", "C/1", "Z/1", "AA/2", "AA/10", "4/1", "Loading dock"]);
  });

  it("is one order, whichever it is asked of first", () => {
    const ref = fc.oneof(fc.constantFrom("A/1", "AA/1", "B", "Abcd", "b/2", "2/B", "AB hall", "Core 2"), fc.stringMatching(/^[A-Ca-c]{0,4}[/. ]?\d{0,2}$/));
    fc.assert(fc.property(ref, ref, ref, (a, b, c) => {
      expect(Math.sign(gridOrder(a, b)) + Math.sign(gridOrder(b, a))).toBe(0);
      if (gridOrder(a, b) <= 0 && gridOrder(b, c) <= 0) expect(gridOrder(a, c)).toBeLessThanOrEqual(0);
    }));
  });
});

describe("walking levels and positions", () => {
  it("goes over what is not there to the next column, and stays at the edge", () => {
    expect(stepTo(matrix, { row: 0, place: 0 }, "right")).toEqual({ row: 0, place: 2 });
    expect(stepTo(matrix, { row: 2, place: 1 }, "up")).toEqual({ row: 2, place: 1 });
    expect(stepTo(matrix, { row: 2, place: 2 }, "down")).toEqual({ row: 2, place: 2 });
  });

  it("runs to the ends of a row and, with Ctrl, of everything", () => {
    expect(stepTo(matrix, { row: 1, place: 2 }, "row-start")).toEqual({ row: 1, place: 0 });
    expect(stepOf("End", true)).toBe("last");
    expect(stepTo(matrix, { row: 0, place: 0 }, "last")).toEqual({ row: 2, place: 2 });
    expect(stepOf("a", false)).toBeNull();
  });

  it("never leaves the matrix, and an arrow ends on a column or where it began", () => {
    const steps: readonly Step[] = ["up", "down", "left", "right", "row-start", "row-end", "first", "last", "page-up", "page-down"];
    fc.assert(fc.property(fc.nat(2), fc.nat(2), fc.constantFrom(...steps), (row, place, step) => {
      const to = stepTo(matrix, { row, place }, step);
      expect(to.row >= 0 && to.row < 3 && to.place >= 0 && to.place < 3).toBe(true);
      const isArrow = steps.indexOf(step) < 4;
      if (isArrow && (to.row !== row || to.place !== place)) expect(idAt(matrix, to)).not.toBeNull();
    }));
  });
});
