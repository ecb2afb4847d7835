import { describe, expect, it } from "vitest";
import { addDays, type Day, toDay } from "#lib/kernel/days.ts";
import { formTime } from "#lib/trade/planning/demand/form-times.ts";
import { type GearHolder, gearDemand, pinnedBy } from "#lib/trade/planning/demand/gear-demand.ts";
import { betweenDays, callBy, firstCollection, truckDays } from "#lib/trade/planning/demand/truck-days.ts";

const monday = toDay("2026-03-02");
const on = (days: number): Day => addDays(monday, days);

/** Four columns a day stood, in form for `daysInForm` days (stood, poured, stripped), eight clamps each. */
const fourADay = (daysInForm: number): GearHolder[] => Array.from({ length: 40 }, (_, index) => {
  const stood = Math.floor(index / 4);
  return { columnId: `C${index + 1}`, from: on(stood), to: on(stood + daysInForm - 1), gear: [{ itemId: "clamp", count: 8 }] };
});
const days = { from: monday, to: on(12), floatPercent: 5 };
const peak = (holders: readonly GearHolder[], floatPercent: number) => Math.max(...gearDemand(holders, "clamp", { ...days, floatPercent }).map(({ needed }) => needed));

describe("what columns need of an item", () => {
  // Worked by hand, common practice, no source: 4 columns x 3 days x 8 clamps = 96; with 5 % float 100.8, so 101 pieces.
  it("is 96 clamps at four columns a day, three days in form, and 101 with the float", () => {
    expect(peak(fourADay(3), 0)).toBe(96);
    expect(peak(fourADay(3), 5)).toBe(101);
  });

  // 4 x 4 x 8 = 128; 134.4 with the float.
  it("is 128 when they are stripped a day late, and 135 with the float", () => {
    expect(peak(fourADay(4), 0)).toBe(128);
    expect(peak(fourADay(4), 5)).toBe(135);
  });

  it("rises and falls by the day", () => {
    expect(gearDemand(fourADay(3), "clamp", days).map(({ inForms }) => inForms)).toEqual([32, 64, 96, 96, 96, 96, 96, 96, 96, 96, 64, 32, 0]);
  });

  it("counts from today what began earlier", () => {
    expect(gearDemand(fourADay(3), "clamp", { ...days, from: on(5), to: on(6) }).map(({ inForms }) => inForms)).toEqual([96, 96]);
  });

  // On the third day columns 1 to 12 stand: 101 needed of 120, so 19 to spare.
  it("is held at its peak by the columns of that day", () => {
    expect(pinnedBy(fourADay(3), "clamp", 120, days)).toEqual({ on: on(2), needed: 101, spare: 19, columnIds: Array.from({ length: 12 }, (_, index) => `C${index + 1}`) });
    expect(pinnedBy(fourADay(3), "prop", 120, days)).toBeNull();
  });
});

describe("the days a column holds its gear", () => {
  // Stood on the 3rd day, poured on the 5th, stripped a day after the pour.
  const planned = { stoodOn: on(3), pouredOn: on(5) };
  const never = { stoodOn: null, pouredOn: null, strippedOn: null };
  const days = (recorded: Partial<typeof never | Record<keyof typeof never, Day>>, today: Day, rule = { stripDays: 1, cleaningDays: 0 }) => formTime({ planned, recorded: { ...never, ...recorded } }, today, rule);

  it("are the planned ones with cleaning", () => expect(days({}, monday, { stripDays: 1, cleaningDays: 1 })).toEqual({ from: on(3), to: on(7) }));
  it("are longer where the concrete stays in its form for longer", () => expect(days({}, monday, { stripDays: 3, cleaningDays: 1 })).toEqual({ from: on(3), to: on(9) }));
  it("are the recorded ones where there are", () => expect(days({ stoodOn: on(2), pouredOn: on(3), strippedOn: on(4) }, on(8))).toEqual({ from: on(2), to: on(4) }));
  it("end after the pour that happened, not the one that was planned", () => {
    expect(days({ stoodOn: on(2), pouredOn: on(3) }, on(3))).toEqual({ from: on(2), to: on(4) });
    expect(formTime({ planned: { stoodOn: null, pouredOn: null }, recorded: { ...never, pouredOn: on(3) } }, on(3), { stripDays: 2, cleaningDays: 1 })).toEqual({ from: on(3), to: on(6) });
  });
  it("move with a form that is not stood on its day", () => expect(days({}, on(5))).toEqual({ from: on(5), to: on(8) }));
  // Planned for day 5 and not poured by day 9: poured today at the earliest, stripped on day 10.
  it("move with a pour that did not happen on its day", () => expect(days({ stoodOn: on(3) }, on(9))).toEqual({ from: on(3), to: on(10) }));
  it("last till today at least while it is not stripped", () => expect(days({ stoodOn: on(3), pouredOn: on(5) }, on(9), { stripDays: 1, cleaningDays: 1 })).toEqual({ from: on(3), to: on(10) }));
  it("have no end where nobody says when it is poured", () => {
    expect(formTime({ planned: { stoodOn: on(3), pouredOn: null }, recorded: never }, monday, { stripDays: 1, cleaningDays: 1 })).toEqual({ from: on(3), to: null });
    expect(formTime({ planned: { stoodOn: null, pouredOn: null }, recorded: { ...never, stoodOn: monday } }, on(2), { stripDays: 1, cleaningDays: 1 })).toEqual({ from: monday, to: null });
  });
  it("are unknown without a plan or a record", () => expect(formTime({ planned: { stoodOn: null, pouredOn: null }, recorded: never }, monday, { stripDays: 1, cleaningDays: 1 })).toBeNull());
});

describe("the days of the truck", () => {
  const week = { weekdays: [1, 2, 3, 4, 5], daysOff: [toDay("2026-03-09")] };

  it("begin today and end with the first on or after the last day, days off left out", () => {
    expect(truckDays(toDay("2026-03-05"), toDay("2026-03-08"), week)).toEqual(["2026-03-05", "2026-03-06", "2026-03-10"]);
    expect(truckDays(toDay("2026-03-06"), toDay("2026-03-20"), { weekdays: [5], daysOff: [] })).toEqual(["2026-03-06", "2026-03-13", "2026-03-20"]);
  });

  // Friday 13 March back over seven working days, the 9th off: 12, 11, 10, 6, 5, 4, 3.
  it("are called ahead by working or calendar days", () => {
    expect(callBy(toDay("2026-03-13"), { days: 7, counted: "working" }, week)).toBe("2026-03-03");
    expect(callBy(toDay("2026-03-13"), { days: 7, counted: "calendar" }, week)).toBe("2026-03-06");
  });

  it("open with the first that can still be called", () => {
    const some = truckDays(toDay("2026-03-05"), toDay("2026-03-13"), week);
    expect(some[firstCollection(some, toDay("2026-03-05"), { days: 3, counted: "working" }, week)]).toBe("2026-03-11");
    expect(firstCollection(some, toDay("2026-03-05"), { days: 60, counted: "calendar" }, week)).toBe(-1);
  });

  it("need between them the most of the days they span", () => expect(betweenDays([0, 3, 4], [5, 9, 2, 7])).toEqual([9, 7]));
});
