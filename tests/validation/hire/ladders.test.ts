import { describe, expect, it } from "vitest";
import { toDay } from "#lib/kernel/days.ts";
import type { HireTerms, Ladder } from "#lib/trade/hire/terms/hire-terms.ts";
import { CLAMP, charged, cost, delivered, returned, someTerms } from "./a-supplier.ts";

/** One clamp on hire for some days from Monday 3 March 2031. Week rate 4.20, day rate 0.90, month rate 18.00. */
function forDays(days: number, ladder: Ladder, more: Partial<HireTerms> = {}): number {
  const terms = someTerms({ ladder, rates: [{ ...CLAMP, perDay: 9000 }], ...more });
  const last = new Date(Date.UTC(2031, 2, 2 + days)).toISOString().slice(0, 10);
  return cost(terms, { delivered: [delivered("2031-03-03", 1)], returned: [returned(last, 1)] }, "2031-03-01", "2031-12-31");
}

// Amounts of one line in one month, worked by hand; halves of a cent go up.
describe("rate ladders", () => {
  it("by the day: 1 × 90, 10 × 90", () => expect([1, 10].map((days) => forDays(days, { kind: "daily" }))).toEqual([90, 900]));

  it("by week and day: 4 days 360, 5 days 450 but a week is 420, 9 days 420 + 2 × 90", () =>
    expect([4, 5, 7, 9, 14].map((days) => forDays(days, { kind: "day-and-week" }))).toEqual([360, 420, 420, 420 + 180, 840]));

  it("by the week, then 1/7 a day: 1 day a week, 8 days 420 + 60, 10 days 420 + 3 × 60", () =>
    expect([1, 7, 8, 10].map((days) => forDays(days, { kind: "week-and-part" }))).toEqual([420, 420, 480, 600]));

  it("by whole weeks: 8 days are two", () => expect([1, 7, 8, 14, 15].map((days) => forDays(days, { kind: "week-and-whole" }))).toEqual([420, 420, 840, 840, 1260]));

  // A plant hirer's conditions: 2 days 60 % of the week, 3 days 75 %, 4 and more a week, then 20 % a day. One day at 40 % is an assumption.
  const steps: Ladder = { kind: "week-ladder", steps: [4000, 6000, 7500, 10_000], laterDay: 2000 };
  it("by steps: 2 days 252, 3 days 315, 4 to 7 days 420, then 84 a day", () =>
    expect([1, 2, 3, 4, 7, 8, 10].map((days) => forDays(days, steps))).toEqual([168, 252, 315, 420, 420, 504, 672]));

  it("by a five-day week: Monday to the Tuesday of the week after are 7 charged days, 420 + 2 × 84", () => {
    const five = { charged: "working-days" as const };
    expect(forDays(5, { kind: "week-and-part" }, five)).toBe(420);
    expect(forDays(7, { kind: "week-and-part" }, five)).toBe(420);
    expect(forDays(9, { kind: "week-and-part" }, five)).toBe(420 + 2 * 84);
    expect(forDays(9, { kind: "daily" }, five)).toBe(7 * 90);
  });

  it("by the month: 10 of 31 days are 18.00 × 10 / 31 = 5.806 → 5.81; over 30 days flat they are 6.00", () => {
    expect(forDays(10, { kind: "month", monthDays: null })).toBe(581);
    expect(forDays(10, { kind: "month", monthDays: 30 })).toBe(600);
  });

  it("by the month come to one month rate for a whole month, however long it is", () => {
    const monthly = someTerms({ ladder: { kind: "month", monthDays: null } });
    const { lines } = charged(monthly, { delivered: [delivered("2028-01-31", 1)] }, "2028-01-01", "2028-04-30");
    expect(lines.map(({ amount }) => amount)).toEqual([58, 1800, 1800, 1800]); // 18.00 / 31 = 0.5806
  });

  it("go on counting over the end of a month: 28 March to 6 April are 4 + 6 days, a week with 3 days over", () => {
    const terms = someTerms({ ladder: { kind: "week-and-part" } });
    const { lines } = charged(terms, { delivered: [delivered("2031-03-28", 10)], returned: [returned("2031-04-06", 10)] }, "2031-03-01", "2031-04-30");
    // March: the first week falls due with its first day, 10 × 4.20. April: days 5 to 7 belong to it, 3 days at 10 × 0.60.
    expect(lines.map(({ amount }) => amount)).toEqual([4200, 1800]);
  });

  it("round once a line, half up: 3 clamps at 0.085 a day for 1 day are 0.255 → 0.26, for 2 days 0.51", () => {
    const fine = someTerms({ rates: [{ ...CLAMP, perDay: 850 }] });
    expect(cost(fine, { delivered: [delivered("2031-03-03", 3)], returned: [returned("2031-03-03", 3)] }, "2031-03-01", "2031-03-31")).toBe(26);
    expect(cost(fine, { delivered: [delivered("2031-03-03", 3)], returned: [returned("2031-03-04", 3)] }, "2031-03-01", "2031-03-31")).toBe(51);
  });

  it("name the rate they lack rather than charge nothing", () => {
    const noWeek = someTerms({ ladder: { kind: "week-and-part" }, rates: [{ ...CLAMP, perWeek: null }] });
    expect(charged(noWeek, { delivered: [delivered("2031-03-03", 1)] }, "2031-03-01", "2031-03-31")).toEqual({
      lines: [], gaps: [{ reason: "no-rate", docketId: "D 2031-03-03", itemId: "clamp", from: "2031-03-03", to: "2031-03-31", what: "week" }],
    });
  });
});

describe("days off", () => {
  it("are free where the supplier shuts down: 22 December to 4 January are 14 days less 2 holidays", () => {
    const terms = someTerms({ holidays: [toDay("2030-12-25"), toDay("2031-01-01")], areHolidaysCharged: false });
    expect(cost(terms, { delivered: [delivered("2030-12-22", 1)], returned: [returned("2031-01-04", 1)] }, "2030-12-01", "2031-01-31")).toBe(12 * 60);
  });
  it("cost a share where a stand-down was agreed: 3 full days, 5 at half, 2 full", () => {
    const standDown = { id: "letter 12", from: toDay("2031-03-06"), to: toDay("2031-03-10"), share: 5000, itemId: null };
    const given = { delivered: [delivered("2031-03-03", 10)], returned: [returned("2031-03-12", 10)], standDowns: [standDown] };
    const { lines } = charged(someTerms(), given, "2031-03-01", "2031-03-31");
    expect(lines.map(({ amount }) => amount)).toEqual([10 * 3 * 60, 10 * 5 * 30, 10 * 2 * 60]);
    expect(lines.map(({ working }) => working?.standDownId)).toEqual([null, "letter 12", null]);
  });
});
