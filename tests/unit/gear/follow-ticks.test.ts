import { describe, expect, it } from "vitest";
import { columnNeeds, peakInForm, withFloat } from "#lib/trade/gear/column-needs.ts";
import { followTicks, type ColumnGear, type Followed } from "#lib/trade/gear/follow-ticks.ts";
import { Balances, gathered, transfer, type Item, type Line, type Place } from "#lib/trade/gear/ledger.ts";

const PLACES: readonly Place[] = [
  { id: "own", name: "Own stock", kind: "bought" }, { id: "rack", name: "Rack", kind: "rack" }, { id: "bay", name: "Cleaning bay", kind: "cleaning bay" },
  { id: "A1", name: "A/1", kind: "column" }, { id: "A2", name: "A/2", kind: "column" },
];
const ITEMS: readonly Item[] = [
  { id: "set", name: "Long clamp", family: "clamp set" }, { id: "wedge", name: "Wedge", family: "wedge" }, { id: "p1", name: "P-1", family: "panel" }, { id: "p2", name: "P-2", family: "panel" },
];
const handsOn = (lines: readonly Line[]) => ({
  balances: new Balances(lines), item: (id: string) => ITEMS.find((item) => item.id === id), place: (id: string) => PLACES.find((place) => place.id === id),
  takenFrom: ["rack", "bay"], bay: "bay",
});
const at = (eventId: string, minute: number) => ({ eventId, at: `2031-05-05T02:${String(minute).padStart(2, "0")}:00.000Z` });
const aColumn = (wishes: Partial<ColumnGear>): ColumnGear => ({
  columnId: "A1", placeId: "A1", reached: {}, setBackAt: null, followed: [], noted: [], goneOn: [], panels: ["p1", "p2"],
  clamping: [{ itemId: "set", quantity: 8 }, { itemId: "wedge", quantity: 32 }], ...wishes,
});
const STOCK = [...transfer("set", "own", "rack", 20), ...transfer("wedge", "own", "rack", 50), ...transfer("p1", "own", "rack", 1), ...transfer("p2", "own", "bay", 1)];
const followed = (id: string, kind: Followed["kind"], lines: readonly Line[]): Followed => ({ id, kind, happenedAt: "2031-05-05T02:00:00.000Z", lines });

describe("what holds a form", () => {
  // Eight clamps of four wedges: 8 x 4 = 32.
  it("is its clamps with the wedges of each", () => {
    expect(columnNeeds({ setId: "set", clamps: 8, wedgeId: "wedge", wedgesEach: 4 })).toEqual([{ itemId: "set", quantity: 8 }, { itemId: "wedge", quantity: 32 }]);
    expect(columnNeeds({ setId: "set", clamps: 8, wedgeId: null, wedgesEach: 4 })).toEqual([{ itemId: "set", quantity: 8 }]);
  });

  const pour = (count: number, days: number) => Array.from({ length: 10 }, (_, day) => Array.from({ length: count }, () => ({ from: day, until: day + days, pieces: 8 }))).flat();
  // Common practice, no source: 4 columns stood a day, in form 3 days, 8 clamps each: 4 x 3 x 8 = 96; one day longer 4 x 4 x 8 = 128.
  it("peaks at columns a day x days in form x clamps", () => {
    expect(peakInForm(pour(4, 3))).toBe(96);
    expect(peakInForm(pour(4, 4))).toBe(128);
    expect(peakInForm([])).toBe(0);
  });
  // 96 x 1.05 = 100.8, so 101; 100 x 1.05 = 105 exactly, which must not become 106.
  it("keeps a whole spare share on top", () => expect([withFloat(96, 5), withFloat(100, 5), withFloat(0, 5)]).toEqual([101, 105, 0]));
});

describe("a tick", () => {
  it("takes the set's panels, then clamps and wedges, to the column", () => {
    const hands = handsOn(STOCK);
    const { movements, shortfalls } = followTicks([aColumn({ reached: { stood: at("e1", 1), clamped: at("e2", 2) } })], hands);
    expect(movements.map(({ kind, siteEventId, happenedAt }) => [kind, siteEventId, happenedAt.slice(14, 16)])).toEqual([["stood", "e1", "01"], ["clamped", "e2", "02"]]);
    expect(shortfalls).toEqual([]);
    // 20 - 8 = 12 sets and 50 - 32 = 18 wedges stay in the rack; one panel came straight from the bay.
    expect(["set", "wedge", "p1", "p2"].map((item) => hands.balances.at(item, "A1"))).toEqual([8, 32, 1, 1]);
    expect(["set", "wedge", "p1"].map((item) => hands.balances.at(item, "rack"))).toEqual([12, 18, 0]);
  });

  it("takes only what is missing of what was gathered by hand, and nothing once that is stripped", () => {
    // 20 of 32 wedges, all 8 sets and one of two panels lie there: 12 wedges and a panel follow.
    const there = [...transfer("set", "own", "A1", 8), ...transfer("wedge", "own", "A1", 20), ...transfer("p1", "own", "A1", 1)];
    const hands = handsOn([...there, ...transfer("wedge", "own", "rack", 30), ...transfer("p2", "own", "rack", 1)]);
    const { movements } = followTicks([aColumn({ reached: { stood: at("e1", 1), clamped: at("e2", 2) } })], hands);
    expect(movements.map(({ kind, lines }) => [kind, lines.filter(({ quantity }) => quantity > 0)])).toEqual([
      ["stood", [{ itemId: "p2", placeId: "A1", quantity: 1 }]], ["clamped", [{ itemId: "wedge", placeId: "A1", quantity: 12 }]],
    ]);
    const strip = followed("m9", "stripped", transfer("set", "A1", "bay", 8));
    const later = followTicks([aColumn({ reached: { stood: at("e1", 1), clamped: at("e2", 2), stripped: at("e3", 3) }, followed: [strip] })], handsOn(STOCK));
    expect([later.movements, later.shortfalls]).toEqual([[], []]);
  });

  it("takes everything at the column off it to the cleaning bay", () => {
    const hands = handsOn([...transfer("set", "own", "A1", 8), ...transfer("p1", "own", "A1", 1)]);
    const { movements } = followTicks([aColumn({ reached: { stripped: at("e3", 3) }, noted: ["stood", "clamped"] })], hands);
    expect(movements.map(({ kind }) => kind)).toEqual(["stripped"]);
    expect([hands.balances.at("set", "bay"), hands.balances.at("p1", "bay"), hands.balances.at("set", "A1")]).toEqual([8, 1, 0]);
  });

  it("is never refused: what is not there is short, in the order of the site", () => {
    const hands = handsOn(transfer("set", "own", "rack", 10));
    const second = aColumn({ columnId: "A2", placeId: "A2", panels: [], reached: { clamped: at("e8", 1) } });
    const { movements, shortfalls } = followTicks([aColumn({ panels: [], reached: { clamped: at("e9", 5) } }), second], hands);
    // The column clamped first gets 8 of 10 sets, the other the remaining 2 and is 6 short; 32 wedges are missing at each.
    expect(movements.map(({ columnId, lines }) => [columnId, lines.find(({ quantity }) => quantity > 0)?.quantity])).toEqual([["A2", 8], ["A1", 2]]);
    expect(shortfalls.map(({ columnId, itemId, quantity }) => [columnId, itemId, quantity])).toEqual([["A2", "wedge", 32], ["A1", "set", 6], ["A1", "wedge", 32]]);
  });

  it("that stands on the ledger, or is noted, is not posted again", () => {
    const column = aColumn({ reached: { stood: at("e1", 1), clamped: at("e2", 2) }, followed: [followed("m1", "stood", transfer("p1", "rack", "A1", 1))], noted: ["clamped"] });
    expect(followTicks([column], handsOn(STOCK))).toEqual({ movements: [], shortfalls: [], gone: [] });
  });
});

describe("a tick taken back", () => {
  const lines = transfer("set", "rack", "A1", 8);
  const there = [...transfer("set", "own", "rack", 12), ...transfer("set", "own", "A1", 8)];

  it("takes its movement back as if it never was, and a set-back when it happened", () => {
    const withdrawn = followTicks([aColumn({ followed: [followed("m2", "clamped", lines)], noted: ["clamped"] })], handsOn(there));
    expect(withdrawn.movements).toMatchObject([{ kind: "reversed", reversesId: "m2", happenedAt: "2031-05-05T02:00:00.000Z" }]);
    expect(gathered([...(withdrawn.movements[0]?.lines ?? []), ...lines])).toEqual([]);
    expect(withdrawn.gone).toEqual([{ columnId: "A1", kind: "clamped" }]);
    const back = followTicks([aColumn({ setBackAt: "2031-05-05T04:00:00.000Z", followed: [followed("m2", "clamped", lines)] })], handsOn(there));
    expect(back.movements[0]?.happenedAt).toBe("2031-05-05T04:00:00.000Z");
  });

  it("after its gear has gone on is noted once, with what is missing", () => {
    // Stripped to the bay, then 5 of 8 cleaned away: 3 are left there, so 5 cannot come back.
    const stripped = followed("m3", "stripped", transfer("set", "A1", "bay", 8));
    const hands = () => handsOn([...transfer("set", "own", "bay", 3), ...transfer("set", "own", "rack", 5)]);
    expect(followTicks([aColumn({ followed: [stripped] })], hands())).toMatchObject({ movements: [], shortfalls: [{ about: "gone on", itemId: "set", quantity: 5 }] });
    expect(followTicks([aColumn({ followed: [stripped], goneOn: ["stripped"] })], hands())).toEqual({ movements: [], shortfalls: [], gone: [] });
  });
});
