import { describe, expect, it } from "vitest";
import { toDay } from "#lib/kernel/days.ts";
import type { StopRule } from "#lib/trade/hire/terms/hire-terms.ts";
import { CLAMP, called, charged, cost, delivered, returned, someTerms } from "./a-supplier.ts";

// Terms as they are found on suppliers' conditions of hire; the amounts are worked by hand. Common practice, no source.
const stop = (rule: Partial<StopRule>) => someTerms({ stop: { by: "collection", isLastDayCharged: true, noticeDays: 0, noticeCount: "calendar", ...rule } });
const MARCH = ["2031-03-01", "2031-03-31"] as const;

/** 120 clamps on 3 March, 40 called off on the 18th and received on the 21st; the other 80 run on. 2031-03-03 is a Monday. */
const story = { delivered: [delivered("2031-03-03", 120)], calledOff: [called("2031-03-18", 40)], returned: [returned("2031-03-21", 40, { callId: "C 2031-03-18" })] };

describe("120 clamps, of which 40 go back", () => {
  it("cost 40 × 16 + 80 × 29 days where the call stops the hire", () =>
    expect(cost(stop({ by: "call" }), story, ...MARCH)).toBe(40 * 16 * 60 + 80 * 29 * 60));

  it("cost 40 × 19 + 80 × 29 days where the collection does, 120 clamp-days more", () => {
    expect(cost(stop({ by: "collection" }), story, ...MARCH)).toBe(40 * 19 * 60 + 80 * 29 * 60);
    expect(cost(stop({ by: "collection" }), story, ...MARCH) - cost(stop({ by: "call" }), story, ...MARCH)).toBe(120 * 60);
  });

  it("cost a day less for the 40 where the last day is not charged", () =>
    expect(cost(stop({ by: "call", isLastDayCharged: false }), story, ...MARCH)).toBe(40 * 15 * 60 + 80 * 29 * 60));

  it("run 7 days of the calendar after the call to 25 March: 23 days", () =>
    expect(cost(stop({ by: "notice", noticeDays: 7 }), story, ...MARCH)).toBe(40 * 23 * 60 + 80 * 29 * 60));

  it("run 7 working days after Tuesday 18 March to Thursday 27 March: 25 days", () =>
    expect(cost(stop({ by: "notice", noticeDays: 7, noticeCount: "working" }), story, ...MARCH)).toBe(40 * 25 * 60 + 80 * 29 * 60));

  it("run a day longer over a holiday on Monday 24 March: 26 days", () => {
    const terms = { ...stop({ by: "notice", noticeDays: 7, noticeCount: "working" }), holidays: [toDay("2031-03-24")] };
    expect(cost(terms, story, ...MARCH)).toBe(40 * 26 * 60 + 80 * 29 * 60);
  });
});

describe("the first day", () => {
  const sent = { delivered: [{ ...delivered("2031-03-03", 10), dispatchedOn: toDay("2031-03-01") }], returned: [returned("2031-03-10", 10)] };
  it("is the day of delivery: 3 to 10 March are 8 days", () => expect(cost(someTerms(), sent, ...MARCH)).toBe(10 * 8 * 60));
  it("or the day after: 7 days", () => expect(cost(someTerms({ start: "day-after-delivery" }), sent, ...MARCH)).toBe(10 * 7 * 60));
  it("or the day it leaves the depot: 10 days", () => expect(cost(someTerms({ start: "day-dispatched" }), sent, ...MARCH)).toBe(10 * 10 * 60));
  it("is not charged when the gear goes back the same day and neither end counts", () =>
    expect(cost({ ...stop({ isLastDayCharged: false }) }, { delivered: [delivered("2031-03-03", 10)], returned: [returned("2031-03-03", 10)] }, ...MARCH)).toBe(0));
});

describe("part returns", () => {
  it("take what has been on hire longest", () => {
    // 30 from the 3rd and 30 from the 10th; 40 go back on the 16th: 30 × 14 days + 10 × 7 days, and 20 × 22 days run on.
    const two = { delivered: [delivered("2031-03-10", 30), delivered("2031-03-03", 30)], returned: [returned("2031-03-16", 40)] };
    const { lines } = charged(someTerms(), two, ...MARCH);
    expect(lines.map(({ docketId, quantity, from, to, amount }) => [docketId, quantity, from, to, amount])).toEqual([
      ["D 2031-03-03", 30, "2031-03-03", "2031-03-16", 30 * 14 * 60],
      ["D 2031-03-10", 10, "2031-03-10", "2031-03-16", 10 * 7 * 60],
      ["D 2031-03-10", 20, "2031-03-10", "2031-03-31", 20 * 22 * 60],
    ]);
  });

  it("never take what had not come yet", () => {
    const late = { delivered: [delivered("2031-03-03", 10), delivered("2031-03-20", 10)], returned: [returned("2031-03-10", 10)] };
    expect(cost(someTerms(), late, ...MARCH)).toBe(10 * 8 * 60 + 10 * 12 * 60);
  });

  it("beyond what was called off end by their own day", () => {
    // 20 called off on the 10th (8 days), 30 collected on the 12th: the 10 nobody called off run to the 12th (10 days).
    const more = { delivered: [delivered("2031-03-03", 30)], calledOff: [called("2031-03-10", 20)], returned: [returned("2031-03-12", 30)] };
    expect(cost(stop({ by: "call" }), more, ...MARCH)).toBe(20 * 8 * 60 + 10 * 10 * 60);
  });
});

describe("plain days", () => {
  it("count the leap day: February 2028 has 29, 2100 has none more than 28", () => {
    expect(cost(someTerms(), { delivered: [delivered("2028-02-01", 1)] }, "2028-02-01", "2028-02-29")).toBe(29 * 60);
    expect(cost(someTerms(), { delivered: [delivered("2100-02-01", 1)] }, "2100-02-01", "2100-03-01")).toBe(29 * 60);
  });
  it("go over the end of the year, a line to a month: 28 December to 3 January are 4 + 3 days", () => {
    const { lines } = charged(someTerms(), { delivered: [delivered("2030-12-28", 5)], returned: [returned("2031-01-03", 5)] }, "2030-12-01", "2031-01-31");
    expect(lines.map(({ from, to, amount }) => [from, to, amount])).toEqual([["2030-12-28", "2030-12-31", 5 * 4 * 60], ["2031-01-01", "2031-01-03", 5 * 3 * 60]]);
  });
  it("are not longer or shorter where clocks change: 29 to 31 March 2031, Europe going to summer time on the 30th, are 3", () =>
    expect(cost(someTerms(), { delivered: [delivered("2031-03-29", 1)], returned: [returned("2031-03-31", 1)] }, ...MARCH)).toBe(3 * 60));
});

describe("terms that change", () => {
  const dearer = someTerms({ id: "dearer", validFrom: toDay("2031-03-11"), rates: [{ ...CLAMP, perDay: 7000 }] });
  it("charge each day by those in force on it: 8 days at 0.60, 5 at 0.70", () =>
    expect(cost([someTerms(), dearer], { delivered: [delivered("2031-03-03", 10)], returned: [returned("2031-03-15", 10)] }, ...MARCH)).toBe(10 * 8 * 60 + 10 * 5 * 70));
  it("leave what was charged before as it was", () => {
    const before = [{ delivered: [delivered("2031-03-03", 10)] }, "2031-03-01", "2031-03-10"] as const;
    expect(charged([someTerms(), dearer], ...before)).toEqual(charged(someTerms(), ...before));
  });
  it("cannot charge days before the first of them, and say so", () => {
    const { lines, gaps } = charged(dearer, { delivered: [delivered("2031-03-03", 10)], returned: [returned("2031-03-15", 10)] }, ...MARCH);
    expect(lines.map(({ amount }) => amount)).toEqual([10 * 5 * 70]);
    expect(gaps).toEqual([{ reason: "no-terms", docketId: "D 2031-03-03", itemId: "clamp", from: "2031-03-03", to: "2031-03-10", what: "terms" }]);
  });
});
