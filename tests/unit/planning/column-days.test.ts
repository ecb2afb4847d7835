import { describe, expect, it } from "vitest";
import { toDay } from "#lib/kernel/days.ts";
import { columnDays } from "#lib/trade/planning/pours/column-days.ts";

const nothing = { plannedStoodOn: null, plannedPouredOn: null, stoodAt: null, pouredAt: null, strippedAt: null };

describe("the days of a column", () => {
  it("are unknown until somebody plans or records them", () =>
    expect(columnDays(nothing, "Australia/Brisbane")).toEqual({ stood: null, poured: null, stripped: null }));

  it("are the recorded ones where there are any, the planned ones otherwise", () => {
    const given = { ...nothing, plannedStoodOn: toDay("2031-03-03"), plannedPouredOn: toDay("2031-03-04"), stoodAt: "2031-03-05T01:00:00Z" };
    expect(columnDays(given, "Australia/Brisbane")).toEqual({
      stood: { on: "2031-03-05", isRecorded: true }, poured: { on: "2031-03-04", isRecorded: false }, stripped: null,
    });
  });

  // Brisbane is ten hours ahead of UTC all year (IANA tz database, Australia/Brisbane).
  it("fall on the day of the site, not of the server", () =>
    expect(columnDays({ ...nothing, pouredAt: "2031-03-04T14:30:00Z" }, "Australia/Brisbane").poured?.on).toBe("2031-03-05"));
});
