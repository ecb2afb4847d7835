import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyLines, Balances, checkLines, gathered, mirror, transfer, type Item, type Line, type Place } from "#lib/trade/gear/ledger.ts";

const PLACES: readonly Place[] = [
  { id: "hirer", name: "Hirer", kind: "supplier" }, { id: "own", name: "Own stock", kind: "bought" }, { id: "rack", name: "Rack", kind: "rack" },
  { id: "bay", name: "Cleaning bay", kind: "cleaning bay" }, { id: "A/1", name: "A/1", kind: "column" }, { id: "lost", name: "Lost", kind: "lost" },
];
const ITEMS: readonly Item[] = [
  { id: "set", name: "Long clamp", family: "clamp set" }, { id: "wedge", name: "Wedge", family: "wedge" }, { id: "p1", name: "P-1", family: "panel" },
];
const names = { item: (id: string) => ITEMS.find((item) => item.id === id), place: (id: string) => PLACES.find((place) => place.id === id) };
const after = (...movements: readonly (readonly Line[])[]): Balances => {
  const balances = new Balances();
  for (const lines of movements) expect(applyLines(balances, lines, names)).toEqual({ ok: true, value: null });
  return balances;
};
const refused = (balances: Balances, lines: readonly Line[]) => {
  const answer = applyLines(balances, lines, names);
  return answer.ok ? null : answer.failure;
};

describe("a movement", () => {
  it("takes from one place what it brings to another", () => {
    // 120 sets on hire, 40 of them to the column: the hirer is owed 120, the rack keeps 120 - 40 = 80.
    const balances = after(transfer("set", "hirer", "rack", 120), transfer("set", "rack", "A/1", 40));
    expect([balances.at("set", "hirer"), balances.at("set", "rack"), balances.at("set", "A/1")]).toEqual([-120, 80, 40]);
  });

  it("may come back in one line what it sent in another", () => {
    expect(gathered([...transfer("set", "rack", "bay", 3), ...transfer("set", "rack", "bay", 2)])).toEqual(transfer("set", "rack", "bay", 5));
    expect(gathered([...transfer("set", "rack", "bay", 3), ...mirror(transfer("set", "rack", "bay", 3))])).toEqual([]);
  });

  it.each<[string, readonly Line[], string]>([
    ["nothing", [], "gear-moves-nothing"],
    ["out of nowhere", [{ itemId: "set", placeId: "rack", quantity: 4 }], "gear-unbalanced"],
    ["one item for another", [...transfer("set", "hirer", "rack", 4), { itemId: "wedge", placeId: "rack", quantity: 1 }, { itemId: "set", placeId: "rack", quantity: -1 }], "gear-unbalanced"],
    ["half a piece", transfer("set", "hirer", "rack", 0.5), "gear-not-whole"],
    ["more than can be counted", transfer("set", "hirer", "rack", 1_000_001), "gear-not-whole"],
  ])("of %s is refused", (_, lines, code) => expect(checkLines(lines, names)?.code).toBe(code));
});

describe("what stands against a movement", () => {
  it("is told with what is there", () => {
    const balances = after(transfer("wedge", "own", "rack", 10));
    expect(refused(balances, transfer("wedge", "rack", "A/1", 12))).toEqual({ code: "gear-not-there", values: { item: "Wedge", place: "Rack", asked: 12, there: 10 } });
    expect(refused(balances, transfer("wedge", "bay", "rack", 1))).toEqual({ code: "gear-not-there", values: { item: "Wedge", place: "Cleaning bay", asked: 1, there: 0 } });
    expect(balances.at("wedge", "rack")).toBe(10);
  });

  it("is more going back to a hirer than came from there", () => {
    const balances = after(transfer("set", "own", "rack", 9), transfer("set", "hirer", "rack", 5));
    expect(refused(balances, transfer("set", "rack", "hirer", 6))).toEqual({ code: "gear-more-than-came", values: { item: "Long clamp", place: "Hirer", asked: 6, out: 5 } });
  });

  it("is a panel made twice, at two places, or hired", () => {
    const balances = after(transfer("p1", "own", "rack", 1));
    expect(refused(balances, transfer("p1", "own", "bay", 1))?.code).toBe("panel-twice");
    expect(refused(new Balances(), transfer("p1", "own", "rack", 2))?.code).toBe("panel-twice");
    expect(refused(new Balances(), transfer("p1", "hirer", "rack", 1))?.code).toBe("panel-twice");
    expect(refused(balances, transfer("p1", "bay", "A/1", 1))?.code).toBe("gear-not-there");
  });
});

const step = fc.record({ item: fc.constantFrom("set", "wedge", "p1"), from: fc.constantFrom(...PLACES), to: fc.constantFrom(...PLACES), quantity: fc.integer({ min: 1, max: 30 }), undo: fc.nat(9) });

describe("any run of movements and reversals", () => {
  it("sums to zero for every item, never stands under zero where gear lies, and rebuilds to the same balances", () => {
    fc.assert(fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
      const kept = new Balances();
      const written: (readonly Line[])[] = [];
      for (const { item, from, to, quantity, undo } of steps) {
        const earlier = written[undo];
        const lines = earlier && quantity % 3 === 0 ? mirror(earlier) : transfer(item, from.id, to.id, item === "p1" ? 1 : quantity);
        if (applyLines(kept, lines, names).ok) written.push(gathered(lines));
      }
      for (const { id } of ITEMS) expect(PLACES.reduce((sum, place) => sum + kept.at(id, place.id), 0)).toBe(0);
      for (const { itemId, placeId, quantity } of kept.lines()) expect([itemId, ["hirer", "own"].includes(placeId) ? quantity < 0 : quantity > 0]).toEqual([itemId, true]);
      expect(PLACES.filter(({ id, kind }) => kind !== "bought" && kept.at("p1", id) !== 0).length).toBeLessThanOrEqual(1);
      const rebuilt = new Balances(written.flat());
      for (const { id: item } of ITEMS) for (const { id: place } of PLACES) expect(rebuilt.at(item, place)).toBe(kept.at(item, place));
    }), { numRuns: 300 });
  });
});
