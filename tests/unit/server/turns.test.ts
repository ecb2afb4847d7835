import { expect, it } from "vitest";
import { createTurns } from "#lib/server/platform/turns.ts";

// Own rule, no source; RFC 9110 section 10.2.3 has Retry-After in whole seconds.
it("gives so many turns a window to each, and tells the whole seconds until the next", () => {
  let now = 5_000;
  const turn = createTurns({ most: 2, windowMs: 60_000, nowMs: () => now });
  expect([turn("a"), turn("a"), turn("b")]).toEqual([0, 0, 0]);
  now += 30_500;
  // Half a minute and half a second later 29.5 s are left, so 30.
  expect([turn("a"), turn("b"), turn("b")]).toEqual([30, 0, 30]);
  now += 29_499;
  expect(turn("a")).toBe(1);
  now += 1;
  expect([turn("a"), turn("a"), turn("a")]).toEqual([0, 0, 60]);
});

it("keeps nobody for longer than their window", () => {
  let now = 0;
  const turn = createTurns({ most: 1, windowMs: 1_000, nowMs: () => now });
  for (let each = 0; each < 1_500; each += 1) turn(`person ${each}`);
  now = 1_000;
  for (let each = 0; each < 1_500; each += 1) expect(turn(`person ${each}`)).toBe(0);
});
