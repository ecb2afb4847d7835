import { describe, expect, it } from "vitest";
import { outcomeOf, setAtHand, standingOf, type Reserved, type ReservedColumn, type ReservedPanel } from "#lib/trade/gear/reserved.ts";
import { panelLife } from "#lib/trade/gear/panel-life.ts";

const line = (wishes: Partial<Reserved> = {}): Reserved => ({
  id: "line", columnId: "upper", face: "A", widthMm: 600, heightMm: 2750, source: "panel", itemId: "p1", afterColumnId: null, afterFace: null, cutDown: false, ...wishes,
});
const panel = (wishes: Partial<ReservedPanel> = {}): ReservedPanel => ({ itemId: "p1", name: "P-1", widthMm: 600, heightMm: 2750, where: "site", columnId: null, outOfUse: null, cutFrom: null, ...wishes });
const column = (id: string, wishes: Partial<ReservedColumn> = {}): ReservedColumn => ({ id, isRemoved: false, isStood: false, isStripped: false, setItems: null, ...wishes });
const outcome = (given: Reserved, columns: readonly ReservedColumn[], panels: readonly ReservedPanel[], cameOff: string | null = null) =>
  outcomeOf(given, { column: (id) => columns.find((each) => each.id === id), panel: (id) => panels.find(({ itemId }) => itemId === id), cameOff: () => cameOff });

// What ought to follow is reasoned from the trade: a panel serves once its column is stood with it, and not if it is broken, lost or sawn up. Common practice, no source.
describe("a face spoken for", () => {
  it("goes on while its panel is on site, in the yard or still on a column", () => {
    for (const where of ["site", "yard", "column"] as const) expect(outcome(line(), [column("upper")], [panel({ where })])).toBeNull();
  });

  it("is served by the panel its column was stood with, and unused by any other", () => {
    const stood = (itemId: string) => column("upper", { isStood: true, setItems: { A: itemId } });
    expect(outcome(line(), [stood("p1")], [panel({ where: "column" })])).toEqual({ ending: { id: "line", as: "served", reason: null } });
    expect(outcome(line(), [stood("p9")], [panel()])).toMatchObject({ ending: { as: "unused" } });
  });

  it("falls with its panel, and says why", () => {
    expect(outcome(line(), [column("upper")], [panel({ outOfUse: "is damaged: split" })])).toMatchObject({ ending: { as: "fallen", reason: "P-1 is damaged: split" } });
    expect(outcome(line(), [column("upper")], [panel({ where: "gone" })])).toMatchObject({ ending: { as: "fallen" } });
  });

  it("goes back to the whole panel when the cut was taken back", () => {
    const child = panel({ itemId: "p2", where: "gone", cutFrom: { itemId: "p1", isWhole: true } });
    expect(outcome(line({ itemId: "p2" }), [column("upper")], [child])).toEqual({ binding: { id: "line", itemId: "p1" } });
  });

  it("learns its panel when the earlier column is stood, and falls when nothing known comes off it", () => {
    const after = line({ source: "after", itemId: null, afterColumnId: "lower", afterFace: "C" });
    expect(outcome(after, [column("upper"), column("lower")], [])).toBeNull();
    expect(outcome(after, [column("upper"), column("lower", { isStood: true })], [], "p7")).toEqual({ binding: { id: "line", itemId: "p7" } });
    expect(outcome(after, [column("upper"), column("lower", { isStood: true })], [])).toBeNull();
    expect(outcome(after, [column("upper"), column("lower", { isStood: true, isStripped: true })], [])).toMatchObject({ ending: { as: "fallen" } });
  });
});

describe("the set of a column", () => {
  const lines = ["A", "B", "C", "D"].map((face, index) => line({ id: face, face, itemId: `p${index}` }));
  const panels = lines.map(({ itemId }) => panel({ itemId: itemId ?? "" }));
  const at = (changed: Partial<ReservedPanel>) => (id: string) => panels.map((each) => (each.itemId === "p2" ? { ...each, ...changed } : each)).find(({ itemId }) => itemId === id);

  it("is made up once all four panels are on site, sound and cut to size", () => {
    expect(setAtHand(lines, at({}))?.map(({ face, itemId }) => `${face} ${itemId}`)).toEqual(["A p0", "B p1", "C p2", "D p3"]);
    expect(setAtHand(lines, at({ where: "yard" }))).toBeNull();
    expect(setAtHand(lines, at({ where: "column", columnId: "upper" }))).not.toBeNull();
    expect(setAtHand(lines, at({ where: "column", columnId: "lower" }))).toBeNull();
    expect(setAtHand(lines, at({ outOfUse: "is damaged" }))).toBeNull();
    expect(setAtHand(lines.slice(0, 3), at({}))).toBeNull();
  });

  it("waits for the saw where a panel is larger and is to be cut down", () => {
    const cutting = lines.map((each) => (each.face === "C" ? { ...each, cutDown: true } : each));
    expect(setAtHand(cutting, at({ widthMm: 640 }))).toBeNull();
    expect(standingOf(cutting[2] ?? line(), panel({ widthMm: 640 }))).toBe("cut-down");
    expect(setAtHand(cutting, at({ widthMm: 600.4 }))).not.toBeNull();
  });
});

it("a panel found damaged is out of use until it is repaired", () => {
  const costs = { sheetCost: 0, labourCost: 0, sundryCost: 0 };
  const event = (id: string, kind: "damaged" | "repaired", day: number) => ({ id, kind, at: `2031-03-0${day}T05:00:00.000Z`, reason: "Split", amount: 0, eventId: null });
  expect(panelLife(costs, [event("a", "damaged", 2)], []).damaged).toMatchObject({ reason: "Split" });
  expect(panelLife(costs, [event("a", "damaged", 2), event("b", "repaired", 3)], []).damaged).toBeNull();
  expect(panelLife(costs, [event("b", "repaired", 3), event("a", "damaged", 4)], []).damaged).toMatchObject({ at: "2031-03-04T05:00:00.000Z" });
});
