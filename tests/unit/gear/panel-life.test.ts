import { describe, expect, it } from "vitest";
import { objectionTo, objectionToCut, panelLife, shareByArea, type PanelEvent } from "#lib/trade/gear/panel-life.ts";
import { misfits } from "#lib/trade/gear/set-fit.ts";

const on = (day: number): string => `2031-03-${String(day).padStart(2, "0")}T05:00:00.000Z`;
const event = (id: string, kind: PanelEvent["kind"], day: number, more: Partial<PanelEvent> = {}): PanelEvent => ({ id, kind, at: on(day), reason: null, amount: 0, eventId: null, ...more });
const COSTS = { sheetCost: 3150, labourCost: 1800, sundryCost: 250 };
const strips = (count: number) => Array.from({ length: count }, (_, index) => on(index + 1));

describe("the life of a panel", () => {
  // 31.50 + 18.00 + 2.50 = 52.00; repairs 4.00 + 3.50 = 59.50; 4.50 brought = 55.00; / 7 = 7.857…, so 7.86.
  it("costs what went in less what it brought, over the uses it had", () => {
    const events = [event("a", "repaired", 3, { amount: 400 }), event("b", "repaired", 5, { amount: 350 }), event("c", "scrapped", 9, { amount: 450, reason: "Film worn" })];
    expect(panelLife(COSTS, events, strips(7))).toMatchObject({ uses: 7, repairs: 2, cost: 5500, costPerUse: 786, ended: { kind: "scrapped", reason: "Film worn" } });
  });

  // 5200 / 1 = 5200; 5200 / 16 = 325; 5201 / 2 = 2600.5, half up 2601.
  it("has no cost per use before the first, and rounds half up", () => {
    expect(panelLife(COSTS, [], []).costPerUse).toBeNull();
    expect(panelLife(COSTS, [], strips(1)).costPerUse).toBe(5200);
    expect(panelLife(COSTS, [], strips(16)).costPerUse).toBe(325);
    expect(panelLife({ ...COSTS, sundryCost: 251 }, [], strips(2)).costPerUse).toBe(2601);
  });

  it("counts the uses of the face since it was turned", () =>
    expect(panelLife(COSTS, [event("a", "turned", 4)], [on(1), on(3), on(5), on(6)])).toMatchObject({ uses: 4, usesOfFace: 2, turnedAt: on(4) }));

  it("forgets what was withdrawn, in whichever order it comes", () => {
    const events = [event("w", "withdrawn", 9, { eventId: "c" }), event("c", "scrapped", 8, { amount: 450, reason: "Split" })];
    expect(panelLife(COSTS, events, strips(2))).toMatchObject({ ended: null, cost: 5200 });
    expect(panelLife(COSTS, [...events].reverse(), strips(2))).toMatchObject({ ended: null, cost: 5200 });
  });

  it("ends once, turns only with film on both faces, and only once", () => {
    const [panel, single] = [{ name: "P-1", filmFaces: 2 }, { name: "P-2", filmFaces: 1 }];
    const scrapped = panelLife(COSTS, [event("a", "scrapped", 2, { reason: "Split" })], []);
    expect(objectionTo("repaired", panel, scrapped)).toEqual({ code: "panel-ended", values: { panel: "P-1", how: "scrapped" } });
    expect(objectionTo("turned", single, panelLife(COSTS, [], []))?.code).toBe("panel-one-face");
    expect(objectionTo("turned", panel, panelLife(COSTS, [event("a", "turned", 2)], []))?.code).toBe("panel-turned-already");
    expect(objectionTo("turned", panel, panelLife(COSTS, [], []))).toBeNull();
  });
});

describe("cutting down", () => {
  const panel = { name: "P-1", widthMm: 634, heightMm: 2800 };
  const cut = (...sizes: [number, number][]) => {
    const [first, ...rest] = sizes.map(([widthMm, heightMm]) => ({ widthMm, heightMm }));
    return first ? objectionToCut(panel, [first, ...rest], 3)?.code ?? null : "none";
  };
  // 634 wide: 350 + 3 + 281 = 634 just comes out, 350 + 3 + 282 = 635 does not; 2800 high: 1500 + 3 + 1297 = 2800.
  it("never yields larger from smaller, and counts the saw cut", () => {
    expect([cut([600, 2700]), cut([350, 2800], [281, 2800]), cut([634, 1500], [634, 1297])]).toEqual([null, null, null]);
    expect([cut([635, 2700]), cut([600, 2801]), cut([350, 2800], [282, 2800]), cut([634, 1500], [634, 1298])]).toEqual(Array(4).fill("panel-cut-larger"));
  });
  it("yields something else than it was, and does not turn the film's grain", () => expect([cut([634, 2800]), cut([2800, 634])]).toEqual(["panel-cut-larger", "panel-cut-larger"]));

  // 100 over 3 : 1 is 75 and 25; 101 is 75.75 and 25.25, the odd cent to the larger remainder.
  it("shares what the panel brought by size, to the last cent", () => {
    const pieces = [{ widthMm: 300, heightMm: 1000 }, { widthMm: 100, heightMm: 1000 }];
    expect([shareByArea(100, pieces), shareByArea(101, pieces)]).toEqual([[75, 25], [76, 25]]);
  });
});

describe("a set on a column", () => {
  const wanted = [{ face: "A", widthMm: 634, heightMm: 2750 }, { face: "B", widthMm: 600, heightMm: 2750 }];
  it("closes every face, to the width of a saw cut, and may stand over at the head", () => {
    expect(misfits(wanted, [{ face: "A", widthMm: 635.5, heightMm: 3000 }, { face: "B", widthMm: 600, heightMm: 2750 }])).toEqual([]);
    expect(misfits(wanted, [{ face: "A", widthMm: 637, heightMm: 2750 }, { face: "B", widthMm: 600, heightMm: 2749 }])).toEqual([
      { face: "A", wanted: "634 × 2750 mm", given: "637 × 2750 mm" }, { face: "B", wanted: "600 × 2750 mm", given: "600 × 2749 mm" },
    ]);
    expect(misfits(wanted, wanted.slice(0, 1))).toEqual([{ face: "B", wanted: "600 × 2750 mm", given: "nothing" }]);
  });
});
