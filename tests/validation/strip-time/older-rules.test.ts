/**
 * Older Indian practice, before the edition of 2000: 24 to 48 h for vertical faces, as the engineer decides (procivilengineer.com, on removing
 * formwork; ammacement.in, building materials). It shows why the edition stands beside every figure.
 */
import { expect, it } from "vitest";
import { degC, hours } from "#lib/kernel/units.ts";
import { stripTimeWorking } from "#lib/trade/engineering/workings/strip-time.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

const mildDays = Array.from({ length: 72 }, () => degC(21));

it("[CASE-D3] the older 48 h are refused under IS 456:2000, whose edition is named, and stay open as the project's own", () => {
  const older = stripTimeWorking({ rule: { kind: "is-456", hours: hours(48) }, hourly: mildDays, measured: "air" });
  expect(older).toMatchObject({ ok: false, failure: { limit: "hours by IS 456:2000 (h)", given: 48, allowed: "16 to 24" } });
  const own = valueOf(stripTimeWorking({ rule: { kind: "project-hours", hours: hours(48), leastTemperature: null }, hourly: mildDays, measured: "air" }));
  expect(own.earliest).toBeCloseTo(48, 6);
  expect(own.working.map(({ source }) => source)).toEqual(["The project's own rule"]);
});

it("[CASE-D3] the older 24 h are the longest of the edition of 2000, and its source says so", () => {
  const longest = valueOf(stripTimeWorking({ rule: { kind: "is-456", hours: hours(24) }, hourly: mildDays, measured: "air" }));
  expect(longest.earliest).toBeCloseTo(24, 6);
  expect(longest.working[0]?.source).toMatch(/^IS 456:2000 cl\. 11\.3\.1/);
});
