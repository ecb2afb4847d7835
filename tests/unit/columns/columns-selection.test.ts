import { describe, expect, it } from "vitest";
import type { SheetColumn, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { rangeOf, sameAsLast, toggleAll } from "#app/(work)/projects/[projectId]/columns/_views/sheet/select-columns.ts";
import { measure } from "#app/(work)/projects/[projectId]/columns/_views/sheet/shown-amounts.ts";

const aLevel = (id: string, elevationMm: number): SheetLevel => ({ id, name: id, elevationMm, slabDepthMm: 220, beamDepthMm: 480 });
const at = (gridRef: string, fromLevelId: string, given: Partial<SheetColumn> = {}): SheetColumn => ({
  id: `${gridRef} ${fromLevelId}`, gridRef, markId: "m", gridXId: null, gridYId: null, fromLevelId, toLevelId: "two", shape: "rectangle",
  width_mm: 420, depth_mm: 310, done: 0, flagged: false, formHeightMm: null, headedBy: "slab", ...given,
});

describe("selecting columns", () => {
  it("selects from one to another either way, and takes all away when all of it is selected", () => {
    expect(rangeOf(["a", "b", "c", "d"], "c", "a")).toEqual(["a", "b", "c"]);
    expect(rangeOf(["a", "b"], "gone", "b")).toEqual(["b"]);
    expect([...toggleAll(new Set(["a"]), ["a", "b"])]).toEqual(["a", "b"]);
    expect([...toggleAll(new Set(["a", "b", "c"]), ["a", "b"])]).toEqual(["c"]);
  });

  const columns = [at("A/1", "ground"), at("A/2", "ground"), at("A/1", "one"), at("B/1", "one")];
  it("takes the last selection again on its own level and where every level is in sight", () => {
    expect([...sameAsLast(columns, new Set(["A/1 ground", "gone"]), "ground")]).toEqual(["A/1 ground"]);
    expect([...sameAsLast(columns, new Set(["A/1 ground"]), null)]).toEqual(["A/1 ground"]);
  });
  it("takes the same grid positions on another level", () => {
    expect([...sameAsLast(columns, new Set(["A/1 ground", "A/2 ground"]), "one")]).toEqual(["A/1 one"]);
  });
});

describe("what the shown columns measure", () => {
  const of = measure({ levels: [aLevel("one", 3900), aLevel("two", 7350)], kickerMm: 75 });
  it("adds up faces and concrete from kicker to slab or beam", () => {
    // By hand: slab over 7350 − 3900 − 220 − 75 = 3155; beam over 7350 − 3900 − 480 − 75 = 2895.
    const { contactArea_m2, volume_m3, unknown } = of([at("A/1", "one"), at("A/2", "one", { headedBy: "beam" })]);
    expect(contactArea_m2).toBeCloseTo(2 * (0.42 + 0.31) * (3.155 + 2.895), 9);
    expect(volume_m3).toBeCloseTo(0.42 * 0.31 * (3.155 + 2.895), 9);
    expect(unknown).toBe(0);
  });
  it("takes a height given by hand, and says of how many there is none", () => {
    const { contactArea_m2, unknown } = of([at("B/1", "one", { formHeightMm: 2000 }), at("B/2", "two")]);
    expect(contactArea_m2).toBeCloseTo(2 * (0.42 + 0.31) * 2, 9);
    expect(unknown).toBe(1);
  });
});
