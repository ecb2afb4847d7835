import { describe, expect, it } from "vitest";
import { quoteByBacktick, readSheetRows, type SheetColumn, type SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { NO_FILTER, passes, readShown, writeShown, type ColumnFilter } from "#app/(work)/projects/[projectId]/columns/_views/sheet/column-filter.ts";
import { placeColumns } from "#app/(work)/projects/[projectId]/columns/_views/plan/place-columns.ts";
import { SheetStore } from "#app/(work)/projects/[projectId]/columns/_views/sheet/sheet-store.ts";

const aColumn = (given: Partial<SheetColumn>): SheetColumn => ({
  id: "c", gridRef: "A/1", markId: "m", gridXId: "x", gridYId: "y", fromLevelId: "l1", toLevelId: "l2", shape: "rectangle",
  width_mm: 420, depth_mm: 310, done: 0, flagged: false, formHeightMm: null, headedBy: "slab", ...given,
});
const aLevel = (id: string, elevationMm: number): SheetLevel => ({ id, name: id, elevationMm, slabDepthMm: 200, beamDepthMm: 500 });
const filter = (part: Partial<ColumnFilter>): ColumnFilter => ({ ...NO_FILTER, ...part });
const POURED_WITHOUT_PLUMB = 0b010111;

describe("the filter of the columns page", () => {
  it("takes the furthest stage for where a column is at", () => {
    expect(passes(aColumn({ done: POURED_WITHOUT_PLUMB }), filter({ stage: "at:poured" }))).toBe(true);
    expect(passes(aColumn({ done: POURED_WITHOUT_PLUMB }), filter({ stage: "at:clamped" }))).toBe(false);
    expect(passes(aColumn({}), filter({ stage: "at:nothing" }))).toBe(true);
  });

  it("finds what has not been plumbed yet, poured or not", () => {
    expect(passes(aColumn({ done: POURED_WITHOUT_PLUMB }), filter({ stage: "not:plumbed" }))).toBe(true);
    expect(passes(aColumn({ done: 0b001111 }), filter({ stage: "not:plumbed" }))).toBe(false);
  });

  it("finds a position however it is typed", () => {
    expect(passes(aColumn({ gridRef: "B.3/12" }), filter({ text: " b.3 /1" }))).toBe(true);
    expect(passes(aColumn({ gridRef: "B/2" }), filter({ text: "b/3" }))).toBe(false);
    expect(passes(aColumn({ gridRef: "B/2" }), filter({ text: "b2" }))).toBe(true);
    expect(passes(aColumn({ gridRef: "B/2" }), filter({ text: "a1, b2" }))).toBe(true);
    expect(passes(aColumn({ gridRef: "B/2" }), filter({ text: " ," }))).toBe(true);
  });

  it("takes a grid line in either direction", () => {
    expect(passes(aColumn({}), filter({ gridLineId: "y" }))).toBe(true);
    expect(passes(aColumn({}), filter({ gridLineId: "z" }))).toBe(false);
  });

  it("says in the address what it shows, and nothing it does not", () => {
    const shown = { view: "levels" as const, levelId: "l1", filter: filter({ stage: "not:poured", flagged: true, text: "A/1" }) };
    expect(readShown(new URLSearchParams(writeShown(shown)))).toEqual(shown);
    expect(writeShown({ view: "", levelId: "", filter: NO_FILTER })).toBe("");
    expect(readShown(new URLSearchParams("view=sideways&stage=at:painted")).filter).toEqual(NO_FILTER);
  });
});

describe("placing columns", () => {
  it("lists apart what stands on no two known grid lines", () => {
    const lines = [{ id: "x", axis: "along-x", name: "A", offsetMm: 0 }, { id: "y", axis: "along-y", name: "1", offsetMm: 6500 }];
    const { placed, unplaced } = placeColumns([aColumn({}), aColumn({ id: "d", gridYId: null })], lines, () => true);
    expect(placed.map(({ id, x_mm, y_mm }) => [id, x_mm, y_mm])).toEqual([["c", 0, 6500]]);
    expect(unplaced.map(({ id }) => id)).toEqual(["d"]);
  });

  it("keeps the drawing of a column that has not changed", () => {
    const lines = [{ id: "x", axis: "along-x", name: "A", offsetMm: 0 }, { id: "y", axis: "along-y", name: "1", offsetMm: 6500 }];
    const column = aColumn({});
    const [first] = placeColumns([column], lines, () => true).placed;
    expect(placeColumns([column], lines, () => true).placed[0]).toBe(first);
    expect(placeColumns([column], lines, () => false).placed[0]).not.toBe(first);
    expect(placeColumns([{ ...column, done: 1 }], lines, () => true).placed[0]).not.toBe(first);
  });
});

it("carries quotes, backslashes and backticks of its own through the page", () => {
  const ref = 'A`1" \\ `';
  const json = JSON.stringify([["id-1", ref, 0, null, null, 0, 1, 0, 420, 310, 0, 0, null, 0]]);
  const lists = { marks: [{ id: "m", name: "C1", shape: "rectangle", widthMm: 420, depthMm: 310 }], levels: [aLevel("l1", 0), aLevel("l2", 3400)], gridLines: [] };
  expect(readSheetRows({ ...lists, rowsJson: quoteByBacktick(json) })[0]?.gridRef).toBe(ref);
});

describe("the sheet on the screen", () => {
  const sheet = {
    rowsJson: JSON.stringify([["id-1", "A/1", 0, 0, null, 0, 1, 0, 420, 310, 3, 0, null, 1], ["id-2", "A/2", 0, null, null, 0, 1, 1, 500, 500, 0, 1, 2900, 0]]),
    marks: [{ id: "m", name: "C1", shape: "rectangle", widthMm: 420, depthMm: 310 }], levels: [aLevel("l1", 0), aLevel("l2", 3400)],
    gridLines: [{ id: "x", axis: "along-x", name: "A", offsetMm: 0 }], projectId: "p", projectName: "Yard", units: "metric" as const, timeZone: "UTC",
    plumbing: "during-pour" as const, kickerMm: 75, seq: 4,
  };

  it("reads rows back to columns", () => {
    const [first, second] = new SheetStore(sheet).list();
    expect(first).toMatchObject({ id: "id-1", markId: "m", gridXId: "x", gridYId: null, fromLevelId: "l1", toLevelId: "l2", shape: "rectangle", done: 3, headedBy: "beam" });
    expect(second).toMatchObject({ shape: "circle", flagged: true, formHeightMm: 2900, headedBy: "slab" });
  });

  it("draws news once, and never goes back to older news", () => {
    const store = new SheetStore(sheet);
    let drawn = 0;
    store.subscribe(() => (drawn += 1));
    store.hear(9, [{ id: "id-1", done: 7, flagged: false }]);
    store.hear(9, [{ id: "id-1", done: 7, flagged: false }]);
    store.hear(8, [{ id: "id-1", done: 3, flagged: false }]);
    store.hear(10, [{ id: "unknown", done: 1, flagged: false }]);
    expect(store.get("id-1")?.done).toBe(7);
    expect(drawn).toBe(1);
  });

  it("keeps the column that did not change, so that its cell is not drawn again", () => {
    const store = new SheetStore(sheet);
    const before = store.get("id-2");
    store.hear(9, [{ id: "id-1", done: 7, flagged: false }]);
    expect(store.get("id-2")).toBe(before);
  });

  it("draws what waits on this phone on top of what is known, and takes it off again", () => {
    const store = new SheetStore(sheet);
    store.expect({ ids: new Set(["id-1", "gone"]), expect: ({ done, flagged }) => ({ done: done + 8, flagged }) });
    expect(store.get("id-1")?.done).toBe(11);
    store.hear(9, [{ id: "id-1", done: 7, flagged: false }]);
    expect(store.get("id-1")?.done).toBe(15);
    store.expect({ ids: new Set(), expect: (column) => column });
    expect(store.get("id-1")?.done).toBe(7);
  });

  it("hands on to the next sheet what that sheet does not hold yet, and nothing older", () => {
    const before = new SheetStore(sheet);
    before.hear(5, [{ id: "id-1", done: 7, flagged: false }]);
    before.hear(12, [{ id: "id-2", done: 1, flagged: false }]);
    const after = new SheetStore({ ...sheet, seq: 10 }, before);
    expect(after.get("id-1")?.done).toBe(3);
    expect(after.get("id-2")?.done).toBe(1);
  });

  it("lists the lowest level first and A/2 before A/10", () => {
    const row = (id: string, gridRef: string, from: number) => [id, gridRef, 0, 0, null, from, from + 1, 0, 420, 310, 0, 0, null, 0];
    const rowsJson = JSON.stringify([row("1", "A/10", 1), row("2", "A/10", 0), row("3", "A/2", 0)]);
    const store = new SheetStore({ ...sheet, levels: [aLevel("l1", 0), aLevel("l2", 3400), aLevel("l3", 6800)], rowsJson });
    expect(store.list().map(({ id }) => id)).toEqual(["3", "2", "1"]);
  });
});
