import { describe, expect, it } from "vitest";
import { gatherList, type GatherFor } from "#lib/trade/gear/gather.ts";
import { differenceOf, lossOf, totalLoss } from "#lib/trade/gear/stocktake.ts";

describe("a stocktake", () => {
  // 40 - 37 = 3 missing at 12.50: 3 x 12.50 = 37.50. 12 - 10 = 2 over cost nothing and pay for nothing.
  it("prices what is missing, and only that", () => {
    const [short, over, unpriced] = [{ counted: 37, expected: 40, lossPrice: 1250 }, { counted: 12, expected: 10, lossPrice: 900 }, { counted: 0, expected: 4, lossPrice: null }];
    expect([differenceOf(short), differenceOf(over)]).toEqual([-3, 2]);
    expect([lossOf(short), lossOf(over), lossOf(unpriced)]).toEqual([3750, 0, null]);
    expect(totalLoss([short, over, unpriced])).toEqual({ loss: 3750, withoutPrice: 1 });
  });
});

describe("a list to gather", () => {
  const column = (columnId: string, wishes: Partial<GatherFor> = {}): GatherFor => ({
    columnId, placeId: null, there: [], panels: [], faces: [{ face: "A", widthMm: 634, heightMm: 2750 }, { face: "B", widthMm: 600, heightMm: 2750 }],
    clamping: [{ itemId: "set", quantity: 8 }, { itemId: "wedge", quantity: 32 }], fillets: { lengthMm: 2750, count: 4 }, ...wishes,
  });
  const panel = (itemId: string, widthMm: number, heightMm: number, more = {}) => ({ itemId, placeId: "rack", isAtHand: true, isFree: true, widthMm, heightMm, ...more });

  it("takes from the first place first, and says what is short", () => {
    // Two columns want 16 sets and 64 wedges; there are 10 + 4 = 14 sets and 70 wedges, so 2 sets are short.
    const list = gatherList([column("A1"), column("A2")], [
      { itemId: "set", placeId: "rack", quantity: 10 }, { itemId: "set", placeId: "yard", quantity: 4 }, { itemId: "wedge", placeId: "rack", quantity: 70 },
    ], []);
    expect(list.take.map(({ columns: _, ...line }) => line)).toEqual([{ itemId: "set", placeId: "rack", quantity: 10 }, { itemId: "wedge", placeId: "rack", quantity: 64 }, { itemId: "set", placeId: "yard", quantity: 4 }]);
    // The rack's 10 sets go to the first column's 8 and 2 of the second, the yard's 4 to the second.
    expect(list.take.filter(({ itemId }) => itemId === "set").map(({ columns }) => columns)).toEqual([[{ columnId: "A1", quantity: 8 }, { columnId: "A2", quantity: 2 }], [{ columnId: "A2", quantity: 4 }]]);
    expect(list.short).toEqual([{ itemId: "set", quantity: 2 }]);
    expect(list.cutPanels).toEqual([{ widthMm: 634, heightMm: 2750, count: 2 }, { widthMm: 600, heightMm: 2750, count: 2 }]);
    expect(list.cutFillets).toEqual([{ lengthMm: 2750, count: 8 }]);
  });

  it("takes the free panel with least to spare, once, and an assigned set as it is", () => {
    const panels = [panel("tall", 634, 3200), panel("close", 633, 2800), panel("taken", 634, 2750, { isFree: false }), panel("gone", 600, 2750, { isAtHand: false, placeId: "B9" })];
    const list = gatherList([column("A1", { clamping: [] }), column("A2", { clamping: [], panels: ["taken", "gone"], faces: [] })], [], panels);
    expect(list.take.map(({ itemId }) => itemId)).toEqual(["close", "taken"]);
    expect(list.elsewhere).toEqual([{ itemId: "gone", placeId: "B9" }]);
    expect(list.cutPanels).toEqual([{ widthMm: 600, heightMm: 2750, count: 1 }]);
  });

  it("leaves out what lies at the column already", () => {
    // 8 sets wanted, 5 there: 3 from the rack; 32 wedges, all there. One face is closed by a panel brought there, the other by one of the set.
    const there = [{ itemId: "set", quantity: 5 }, { itemId: "wedge", quantity: 40 }];
    const brought = panel("brought", 634, 2750, { placeId: "A1", isAtHand: false });
    const list = gatherList([column("A1", { placeId: "A1", there })], [{ itemId: "set", placeId: "rack", quantity: 10 }, { itemId: "wedge", placeId: "rack", quantity: 70 }], [brought, panel("free", 600, 2750)]);
    expect(list.take).toEqual([
      { itemId: "free", placeId: "rack", quantity: 1, columns: [{ columnId: "A1", quantity: 1 }] }, { itemId: "set", placeId: "rack", quantity: 3, columns: [{ columnId: "A1", quantity: 3 }] },
    ]);
    expect([list.short, list.cutPanels]).toEqual([[], []]);
    const own = gatherList([column("A1", { placeId: "A1", panels: ["brought"], clamping: [] })], [], [{ ...brought, isFree: false }]);
    expect([own.take, own.elsewhere]).toEqual([[], []]);
  });

  it("of 60 columns in 12 marks takes well under 200 ms", () => {
    const columns = Array.from({ length: 60 }, (_, index) => column(`c${index}`, { faces: "ABCD".split("").map((face) => ({ face, widthMm: 300 + 50 * (index % 12), heightMm: 2750 })) }));
    const panels = Array.from({ length: 400 }, (_, index) => panel(`p${index}`, 300 + 50 * (index % 13), 2800));
    const started = performance.now();
    const list = gatherList(columns, [{ itemId: "set", placeId: "rack", quantity: 400 }], panels);
    expect(performance.now() - started).toBeLessThan(200);
    // 60 x 8 = 480 sets, 400 there: 80 short.
    expect(list.short.find(({ itemId }) => itemId === "set")).toEqual({ itemId: "set", quantity: 80 });
  });
});
