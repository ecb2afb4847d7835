import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kN, kN_m, kPa, m, mm } from "#lib/kernel/units.ts";
import { clampDemands } from "#lib/trade/engineering/clamps/clamp-demands.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";
import type { PressureEnvelope } from "#lib/trade/engineering/pour-conditions.ts";
import { clampLayout, THOROUGH_EFFORT } from "#lib/trade/engineering/clamps/clamp-layout.ts";
import { countBound } from "#lib/trade/engineering/clamps/count-bound.ts";
import { layoutUse, limitsOf } from "#lib/trade/engineering/clamps/layout-task.ts";
import type { SpacedTask } from "#lib/trade/engineering/clamps/layout-task.ts";

/** A coarse module on a short form, so that every layout there is can be tried. */
const SPACING = { module: mm(150), firstMin: mm(150), firstMax: mm(300), topMax: mm(300), smallestGap: mm(150), largestGap: mm(750) };

const tasks: fc.Arbitrary<SpacedTask> = fc
  .record({
    height: fc.integer({ min: 7, max: 12 }).map((steps) => steps * 150),
    pressure: fc.integer({ min: 15, max: 70 }),
    share: fc.integer({ min: 10, max: 35 }),
    moment: fc.integer({ min: 10, max: 90 }),
    shear: fc.integer({ min: 15, max: 80 }),
    capacity: fc.integer({ min: 8, max: 45 }),
  })
  .map((drawn) => ({
    envelope: envelopeOf(drawn.height / 1000, drawn.pressure),
    formHeight: mm(drawn.height),
    share: m(drawn.share / 100),
    backing: { moment: kN_m(drawn.moment / 100), shear: kN(drawn.shear / 10), stiffness: kN_m2(9), depth: m(0.05) },
    clampLimit: drawn.capacity / 0.55,
    loadFactor: 1,
    deflectionRatio: 270,
    spacing: SPACING,
  }));

function envelopeOf(height: number, limit: number): PressureEnvelope {
  const liquidDepth = Math.min(height, limit / 25);
  const foot = Math.min(limit, 25 * height);
  const corners = [{ depth: m(0), pressure: kPa(0) }, { depth: m(liquidDepth), pressure: kPa(foot) }];
  const points = liquidDepth < height ? [...corners, { depth: m(height), pressure: kPa(foot) }] : corners;
  return { method: "full-head", edition: "test", valueKind: "service", withdrawn: false, points, pourHeight: m(height), limit: kPa(foot), liquidDepth: m(liquidDepth), governs: "liquid head", working: [] };
}

/** The fewest clamps of all layouts on the module that pass, found by trying every one. */
function trulyFewest(task: SpacedTask): number {
  const { module, firstMin, firstMax, topMax, smallestGap, largestGap } = task.spacing;
  let fewest = Infinity;
  const grow = (heights: number[]) => {
    const last = heights[heights.length - 1] ?? 0;
    if (heights.length >= fewest) return;
    if (heights.length >= 2 && task.formHeight - last <= topMax) {
      const demands = clampDemands(task.envelope, task.formHeight, heights.map(mm), task.backing.depth);
      if (demands.ok && layoutUse(limitsOf(task), demands.value) <= 1) fewest = heights.length;
    }
    for (let next = last + smallestGap; next <= Math.min(task.formHeight, last + largestGap); next += module) grow([...heights, next]);
  };
  for (let first: number = firstMin; first <= firstMax; first += module) grow([first]);
  return fewest;
}

describe("clamp layout against every layout there is", () => {
  it("with all the effort it asks for, finds the fewest there are, and nothing where there is nothing", () =>
    fc.assert(
      fc.property(tasks, (task) => {
        const fewest = trulyFewest(task);
        expect(countBound(task).least).toBeLessThanOrEqual(fewest);
        const answer = clampLayout(task, THOROUGH_EFFORT);
        if (!answer.ok) {
          expect(fewest).toBe(Infinity);
          return;
        }
        expect(answer.value.use).toBeLessThanOrEqual(1);
        expect(answer.value.heights.length).toBe(fewest);
        expect(answer.value.lowerBound).toBe(fewest);
      }),
      { numRuns: 300 },
    ));
  it("with little effort it never claims fewest wrongly: lower bound ≤ true fewest ≤ answer", () =>
    fc.assert(
      fc.property(tasks, fc.integer({ min: 1, max: 60 }), (task, effort) => {
        const fewest = trulyFewest(task);
        const answer = clampLayout(task, effort);
        if (!answer.ok) return;
        expect(answer.value.lowerBound).toBeLessThanOrEqual(fewest);
        expect(answer.value.heights.length).toBeGreaterThanOrEqual(fewest);
      }),
      { numRuns: 200 },
    ));
});
