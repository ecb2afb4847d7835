import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, daysBetween, toDay, type Day } from "#lib/kernel/days.ts";
import { accrue, totalOf } from "#lib/trade/hire/accrual/accrue.ts";
import type { HireFacts } from "#lib/trade/hire/facts.ts";
import type { HireTerms, Ladder } from "#lib/trade/hire/terms/hire-terms.ts";
import { CLAMP, delivered, facts, returned, someTerms } from "./a-supplier.ts";

const START = toDay("2030-11-20");
const ladders: readonly Ladder[] = [
  { kind: "daily" }, { kind: "day-and-week" }, { kind: "week-and-part" }, { kind: "week-and-whole" },
  { kind: "week-ladder", steps: [4000, 6000, 7500, 10_000], laterDay: 2000 }, { kind: "month", monthDays: null }, { kind: "month", monthDays: 30 },
];
const ladder = fc.constantFrom(...ladders);
/** Whole cents by the day, so that rounding has nothing to do. */
const terms: fc.Arbitrary<HireTerms> = fc
  .record({ ladder, charged: fc.constantFrom("every-day" as const, "working-days" as const), by: fc.constantFrom("call" as const, "collection" as const, "notice" as const), isLast: fc.boolean(), minimum: fc.integer({ min: 0, max: 40 }) })
  .map(({ ladder: rungs, charged, by, isLast, minimum }) => someTerms({
    ladder: rungs, charged, stop: { by, isLastDayCharged: isLast, noticeDays: 3, noticeCount: "working" }, rates: [{ ...CLAMP, minimumDays: minimum }],
  }));
/** Deliveries and part returns over a hundred days, never more back than came. */
const story: fc.Arbitrary<HireFacts> = fc
  .array(fc.record({ at: fc.integer({ min: 0, max: 100 }), quantity: fc.integer({ min: 1, max: 60 }), share: fc.integer({ min: 0, max: 100 }), stays: fc.integer({ min: 0, max: 90 }) }), { minLength: 1, maxLength: 6 })
  .map((parts) => facts({
    delivered: parts.map(({ at, quantity }, index) => delivered(addDays(START, at), quantity, `D${index}`)),
    returned: parts.map(({ at, quantity, share, stays }, index) => returned(addDays(START, at + stays), Math.floor((quantity * share) / 100), { docketId: `R${index}` })),
  }));
const total = (versions: HireTerms, given: HireFacts, from: Day, to: Day): number => totalOf(accrue([versions], given, { from, to }).lines);
const END = addDays(START, 250);

describe("an accrual", () => {
  it("cut in two at the end of any month has the same lines as the whole", () => {
    fc.assert(fc.property(terms, story, fc.constantFrom("2030-11-30", "2030-12-31", "2031-01-31", "2031-02-28", "2031-03-31"), (versions, given, cut) => {
      const at = toDay(cut);
      expect(total(versions, given, START, at) + total(versions, given, addDays(at, 1), END)).toBe(total(versions, given, START, END));
    }));
  });

  it("cut in two on any day differs from the whole by the rounding of the lines cut alone: half a cent each way", () => {
    fc.assert(fc.property(terms, story, fc.integer({ min: 1, max: 240 }), (versions, given, days) => {
      const at = addDays(START, days);
      const [first, second, whole] = [[START, at], [addDays(at, 1), END], [START, END]].map(([from, to]) => accrue([versions], given, { from: from as Day, to: to as Day }));
      const extra = (first?.lines.length ?? 0) + (second?.lines.length ?? 0) - (whole?.lines.length ?? 0);
      const apart = Math.abs(totalOf(first?.lines ?? []) + totalOf(second?.lines ?? []) - totalOf(whole?.lines ?? []));
      expect(apart).toBeLessThanOrEqual(1.5 * extra);
    }));
  });

  it("is never cheaper for a day more, whatever the ladder", () => {
    fc.assert(fc.property(terms, fc.integer({ min: 1, max: 120 }), fc.integer({ min: 1, max: 50 }), (versions, days, quantity) => {
      const stay = (count: number) => total(versions, facts({ delivered: [delivered(START, quantity)], returned: [returned(addDays(START, count), quantity)] }), START, END);
      // Lines are rounded month by month, so two lines may each round the other way.
      expect(stay(days + 1)).toBeGreaterThanOrEqual(stay(days) - 1);
    }));
  });

  it("charges as many pieces as were there, a day at a time, where every day has one price", () => {
    fc.assert(fc.property(story, (given) => {
      const there = Array.from({ length: daysBetween(START, END) + 1 }, (_, index) => addDays(START, index)).reduce((sum, on) => {
        const count = (list: readonly { on: Day; quantity: number }[], isIn: (day: Day) => boolean) => list.reduce((pieces, fact) => pieces + (isIn(fact.on) ? fact.quantity : 0), 0);
        return sum + count(given.delivered, (day) => day <= on) - count(given.returned, (day) => day < on);
      }, 0);
      expect(total(someTerms(), given, START, END)).toBe(there * 60);
    }));
  });

  it("does not depend on the order in which the dockets were entered", () => {
    fc.assert(fc.property(terms, story, (versions, given) => {
      const turned = { ...given, delivered: [...given.delivered].reverse(), returned: [...given.returned].reverse() };
      expect(accrue([versions], turned, { from: START, to: END })).toEqual(accrue([versions], given, { from: START, to: END }));
    }));
  });
});
