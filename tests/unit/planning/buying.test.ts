import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { toDay, type Day } from "#lib/kernel/days.ts";
import { daysOfSets, setDays, setsNeeded } from "#lib/trade/planning/buying/set-days.ts";
import { stockByDay } from "#lib/trade/planning/buying/stock-by-day.ts";
import { toBuy } from "#lib/trade/planning/buying/to-buy.ts";
import { workingDaysBefore } from "#lib/trade/planning/buying/work-back.ts";

const march = (day: number): Day => toDay(`2031-03-${String(day).padStart(2, "0")}`);
const stay = (stood: number, free: number) => ({ stoodOn: march(stood), freeOn: march(free) });

describe("working days before a day", () => {
  // 3 March 2031 is a Monday: 2000-01-01 was a Saturday, and 11 384 days on, 11 384 = 7 x 1626 + 2, comes a Monday.
  it("leaves out the days nobody works: five before Monday the 10th of a five-day week is Monday the 3rd", () => {
    expect(workingDaysBefore(march(10), 5, [1, 2, 3, 4, 5])).toBe(march(3));
    expect(workingDaysBefore(march(10), 5, [1, 2, 3, 4, 5, 6])).toBe(march(4));
    expect(workingDaysBefore(march(10), 0, [1, 2, 3, 4, 5])).toBe(march(10));
  });
});

describe("the days on which form sets are needed", () => {
  it("makes a new set only where none is free: 3rd and 3rd made, the 6th served again", () => {
    const days = setDays([stay(6, 9), stay(3, 6), stay(3, 6)]);
    expect(days).toEqual({ made: [march(3), march(3)], again: [march(6)], undated: 0 });
    expect(setsNeeded(days)).toBe(2);
  });

  it("keeps a set bound that is not known to come free, and a column without a day its own set", () => {
    const days = setDays([{ stoodOn: march(3), freeOn: null }, stay(20, 23), { stoodOn: null, freeOn: null }]);
    expect(days).toEqual({ made: [march(3), march(20)], again: [], undated: 1 });
    expect(setsNeeded(days)).toBe(3);
  });

  it("gives the earliest days to fewer sets, and more sets the days that would be served again", () => {
    const days = setDays([stay(3, 6), stay(3, 6), stay(6, 9)]);
    expect(daysOfSets(days, 1)).toEqual([march(3)]);
    expect(daysOfSets(days, 3)).toEqual([march(3), march(3), march(6)]);
  });
});

describe("a cutting plan over the days", () => {
  it("cuts first the sheets that the first day asks for", () => {
    // 2 sheets alike give 2 A and 2 B each. The 3rd asks for 2 A: one sheet, which leaves 2 B; the 8th for 2 A and 4 B: the other.
    const layouts = [{ stockId: "s0", count: 2, partIds: ["A", "A", "B", "B"] }];
    expect(stockByDay(layouts, [{ partId: "A", on: march(3), count: 2 }, { partId: "A", on: march(8), count: 2 }, { partId: "B", on: march(8), count: 4 }]))
      .toEqual([{ stockId: "s0", on: march(3), count: 1 }, { stockId: "s0", on: march(8), count: 1 }]);
  });

  it("takes the sheet that gives most, and leaves those without a day to the end", () => {
    // 3 A by the 3rd: one sheet of 3 A does it, the mixed one waits for B, which has no day.
    const layouts = [{ stockId: "mixed", count: 1, partIds: ["A", "B"] }, { stockId: "full", count: 1, partIds: ["A", "A", "A"] }];
    expect(stockByDay(layouts, [{ partId: "A", on: march(3), count: 3 }, { partId: "B", on: null, count: 1 }]))
      .toEqual([{ stockId: "full", on: march(3), count: 1 }, { stockId: "mixed", on: null, count: 1 }]);
  });

  const plan = fc.array(fc.record({ stockId: fc.constantFrom("s0", "s1"), count: fc.integer({ min: 1, max: 4 }), partIds: fc.array(fc.constantFrom("A", "B", "C"), { minLength: 1, maxLength: 5 }) }), { minLength: 1, maxLength: 5 });
  it("sums to the plan, and has cut by every day what that day asks for", () => {
    fc.assert(fc.property(plan, fc.array(fc.integer({ min: 1, max: 28 }), { minLength: 1, maxLength: 20 }), (layouts, days) => {
      const pieces = layouts.flatMap(({ count, partIds }) => new Array<readonly string[]>(count).fill(partIds).flat());
      const wanted = pieces.map((partId, index) => ({ partId, on: march(days[index % days.length] ?? 1), count: 1 }));
      const split = stockByDay(layouts, wanted);
      for (const id of ["s0", "s1"]) {
        const planned = layouts.filter(({ stockId }) => stockId === id).reduce((sum, { count }) => sum + count, 0);
        expect(split.filter(({ stockId }) => stockId === id).reduce((sum, { count }) => sum + count, 0)).toBe(planned);
      }
      // Enough stock by each day: the most pieces any so many sheets can hold are not fewer than what is wanted by then.
      const most = Math.max(...layouts.map(({ partIds }) => partIds.length));
      for (const on of [...new Set(wanted.map((part) => part.on))]) {
        const cut = split.filter((row) => row.on !== null && row.on <= on).reduce((sum, { count }) => sum + count, 0);
        expect(cut * most).toBeGreaterThanOrEqual(wanted.filter((part) => part.on <= on).length);
      }
    }));
  });
});

describe("what is to be bought", () => {
  it("rounds the allowance up once over the run: 12.5 % of 10 and of 20 are 11.25 and 22.5, so 12 and 23 in all", () => {
    const lines = toBuy([{ on: march(3), planned: 10 }, { on: march(10), planned: 10 }], 1250, 5, [{ on: march(2), count: 4 }]);
    expect(lines).toEqual([
      { on: march(3), planned: 10, allowance: 2, fromHand: 5, fromOrders: 4, tooLate: 0, buy: 3 },
      { on: march(10), planned: 10, allowance: 1, fromHand: 0, fromOrders: 0, tooLate: 0, buy: 11 },
    ]);
  });

  it("counts an order that comes later than it is needed, and says so", () => {
    const [line] = toBuy([{ on: march(3), planned: 10 }], 0, 0, [{ on: march(9), count: 20 }, { on: march(1), count: 4 }]);
    expect(line).toEqual({ on: march(3), planned: 10, allowance: 0, fromHand: 0, fromOrders: 10, tooLate: 6, buy: 0 });
  });

  it("covers plan and allowance, whatever is there", () => {
    const needs = fc.array(fc.record({ on: fc.integer({ min: 1, max: 28 }).map(march), planned: fc.integer({ min: 0, max: 90 }) }), { minLength: 1, maxLength: 6 });
    fc.assert(fc.property(needs, fc.integer({ min: 0, max: 10_000 }), fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 200 }), (rows, waste, hand, coming) => {
      const lines = toBuy(rows, waste, hand, [{ on: march(5), count: coming }]);
      const sum = (of: (line: (typeof lines)[number]) => number): number => lines.reduce((all, line) => all + of(line), 0);
      const planned = sum((line) => line.planned);
      expect(sum((line) => line.fromHand + line.fromOrders + line.buy)).toBe(Math.ceil((planned * (10_000 + waste)) / 10_000));
      expect(sum((line) => line.fromHand)).toBeLessThanOrEqual(hand);
      expect(sum((line) => line.fromOrders)).toBeLessThanOrEqual(coming);
      expect(lines.every(({ buy, allowance }) => buy >= 0 && allowance >= 0)).toBe(true);
    }));
  });
});
