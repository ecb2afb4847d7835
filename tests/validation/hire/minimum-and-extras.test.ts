import { describe, expect, it } from "vitest";
import { toDay } from "#lib/kernel/days.ts";
import { CLAMP, charged, cost, delivered, missing, returned, someTerms } from "./a-supplier.ts";

const MARCH = ["2031-03-01", "2031-03-31"] as const;
const kinds = (lines: readonly { kind: string; amount: number }[]) => lines.map(({ kind, amount }) => [kind, amount]);

// Worked by hand. Common practice, no source.
describe("minimum hire", () => {
  const fourWeeks = someTerms({ rates: [{ ...CLAMP, minimumDays: 28 }] });
  it("of four weeks charges the days that are missing with the last one: 10 days, then 18", () => {
    const { lines } = charged(fourWeeks, { delivered: [delivered("2031-03-03", 10)], returned: [returned("2031-03-12", 10)] }, ...MARCH);
    expect(kinds(lines)).toEqual([["hire", 10 * 10 * 60], ["minimum", 10 * 18 * 60]]);
  });
  it("is charged once, not again in the month after", () => {
    const given = { delivered: [delivered("2031-03-25", 10)], returned: [returned("2031-04-03", 10)] };
    expect(cost(fourWeeks, given, ...MARCH)).toBe(10 * 7 * 60);
    expect(cost(fourWeeks, given, "2031-04-01", "2031-04-30")).toBe(10 * 3 * 60 + 10 * 18 * 60);
    expect(cost(fourWeeks, given, "2031-05-01", "2031-05-31")).toBe(0);
  });
  it("adds nothing once it has been reached", () =>
    expect(cost(fourWeeks, { delivered: [delivered("2031-03-01", 10)], returned: [returned("2031-03-28", 10)] }, ...MARCH)).toBe(10 * 28 * 60));
  it("of a docket tops up what its hire falls short by, when all of it is back", () => {
    const terms = someTerms({ docketMinimum: 10_000 });
    const part = { delivered: [delivered("2031-03-03", 10)], returned: [returned("2031-03-05", 4)] };
    expect(cost(terms, part, "2031-03-01", "2031-03-05")).toBe(10 * 3 * 60);
    const all = { ...part, returned: [...part.returned, returned("2031-03-10", 6)] };
    expect(kinds(charged(terms, all, ...MARCH).lines).at(-1)).toEqual(["docket-minimum", 10_000 - (4 * 3 * 60 + 6 * 8 * 60)]);
    expect(cost(terms, all, ...MARCH)).toBe(10_000);
  });
});

describe("what is charged beside the hire", () => {
  it("is each trip the supplier makes", () => {
    const terms = someTerms({ deliveryCharge: 18_000, collectionCharge: 16_500, failedCollectionCharge: 9000 });
    const trips = [["delivery", "2031-03-03"], ["failed-collection", "2031-03-11"], ["collection", "2031-03-12"]] as const;
    const given = { trips: trips.map(([kind, on]) => ({ docketId: `${kind} ${on}`, on: toDay(on), kind })) };
    expect(kinds(charged(terms, given, ...MARCH).lines)).toEqual([["delivery", 18_000], ["failed-collection", 9000], ["collection", 16_500]]);
  });
  it("is damage at 12.00 and cleaning at 1.50 a piece, as counted at the gate", () => {
    const given = { delivered: [delivered("2031-03-03", 10)], returned: [returned("2031-03-03", 10, { damaged: 3, dirty: 7 })] };
    expect(kinds(charged(someTerms(), given, ...MARCH).lines)).toEqual([["hire", 600], ["cleaning", 7 * 150], ["damage", 3 * 1200]]);
  });
  it("says where no price is agreed", () => {
    const terms = someTerms({ rates: [{ ...CLAMP, damagePrice: null }] });
    const { gaps } = charged(terms, { delivered: [delivered("2031-03-03", 10)], returned: [returned("2031-03-03", 10, { damaged: 3 })] }, ...MARCH);
    expect(gaps).toEqual([{ reason: "no-price", docketId: "R 2031-03-03", itemId: "clamp", from: "2031-03-03", to: "2031-03-03", what: "damage" }]);
  });
});

describe("missing gear", () => {
  it("is charged at its price, and its hire ends with the report", () => {
    const { lines } = charged(someTerms(), { delivered: [delivered("2031-03-03", 10)], missing: [missing("2031-03-12", 2)], returned: [returned("2031-03-20", 8)] }, ...MARCH);
    expect(kinds(lines)).toEqual([["hire", 2 * 10 * 60], ["hire", 8 * 18 * 60], ["loss", 2 * 4850]]);
  });
  // A hirer's conditions: full replacement price, hire going on at two thirds until the account is settled.
  it("stays on hire at two thirds until it is settled: 10 full days, then 8 at 0.40", () => {
    const terms = someTerms({ missingShare: 6667 });
    const { lines } = charged(terms, { delivered: [delivered("2031-03-03", 3)], missing: [missing("2031-03-12", 3, "2031-03-20")] }, ...MARCH);
    // 3 × 8 × 60 × 0.6667 = 960.048 → 960
    expect(kinds(lines)).toEqual([["hire", 3 * 10 * 60], ["loss", 3 * 4850], ["missing", 960]]);
  });
});
