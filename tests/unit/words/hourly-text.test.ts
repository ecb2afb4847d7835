import { describe, expect, it } from "vitest";
import { hourlyText, readHourlyText } from "#app/(work)/projects/[projectId]/workings/strip-time/hourly-text.ts";

describe("a temperature record as it is typed or pasted", () => {
  it("takes spaces, commas, semicolons and lines between readings", () => {
    expect(readHourlyText("18 19.5, 20;21\n 22.5\t−1")).toEqual([18, 19.5, 20, 21, 22.5, -1]);
  });
  it("passes over the days and times of day a logger writes", () => {
    expect(readHourlyText("2031-04-17 06:00 14.5\n2031-04-17T07:00:00Z 15\n17/04/2031 08:00 pm\t16")).toEqual([14.5, 15, 16]);
  });
  it("knows a gap from something that is no temperature", () => {
    expect(readHourlyText("18 gap - 19")).toEqual([18, null, null, 19]);
    expect(readHourlyText("18 warm")).toEqual([18, Number.NaN]);
  });
  it("reads back what it writes", () => {
    const hourly = [...Array.from({ length: 13 }, (_, hour) => hour / 2), null, -4];
    expect(readHourlyText(hourlyText(hourly, 1))).toEqual(hourly);
  });
});
