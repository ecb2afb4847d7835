import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kN_per_m, m } from "#lib/kernel/units.ts";
import { continuousBeam } from "#lib/trade/engineering/backing/continuous-beam.ts";
import type { BeamInput } from "#lib/trade/engineering/backing/continuous-beam.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";
import { anyBeam } from "#tests/support/builders/any-beam.ts";

const solve = (beam: BeamInput) => {
  const answer = continuousBeam(beam);
  if (!answer.ok) throw new Error(answer.failure.message);
  return answer.value;
};

/** Total load and its moment about the beam's start, trapezoid by trapezoid. */
function resultant(load: BeamInput["load"]): { force: number; moment: number } {
  let force = 0;
  let moment = 0;
  for (let index = 1; index < load.length; index += 1) {
    const a = load[index - 1];
    const b = load[index];
    if (a === undefined || b === undefined) continue;
    const length = b.at - a.at;
    force += ((a.load + b.load) / 2) * length;
    moment += (length / 6) * (a.load * (2 * a.at + b.at) + b.load * (a.at + 2 * b.at));
  }
  return { force, moment };
}

describe("continuous beam", () => {
  it("reactions balance the load in force and in moment to 1e-9", () =>
    fc.assert(
      fc.property(anyBeam, (beam) => {
        const { reactions } = solve(beam);
        const { force, moment } = resultant(beam.load);
        const sum = reactions.reduce((total, reaction) => total + reaction, 0);
        const about = reactions.reduce((total, reaction, index) => total + reaction * (beam.supports[index] ?? 0), 0);
        expect(Math.abs(sum - force)).toBeLessThanOrEqual(1e-9 * Math.max(1, force));
        expect(Math.abs(about - moment)).toBeLessThanOrEqual(1e-9 * Math.max(1, moment));
      }),
    ));
  it("turned end for end it answers the same, turned", () =>
    fc.assert(
      fc.property(anyBeam, (beam) => {
        const turned = solve({
          ...beam,
          supports: [...beam.supports].reverse().map((at) => m(beam.length - at)),
          load: [...beam.load].reverse().map((corner) => ({ at: m(beam.length - corner.at), load: corner.load })),
        });
        const straight = solve(beam);
        const scale = Math.max(1, ...straight.reactions.map(Math.abs));
        straight.reactions.forEach((reaction, index) => expect(Math.abs(reaction - (turned.reactions[straight.reactions.length - 1 - index] ?? 0))).toBeLessThanOrEqual(1e-8 * scale));
        const most = (answer: typeof straight) => Math.max(...answer.stretches.map((stretch) => stretch.moment));
        expect(most(turned)).toBeCloseTo(most(straight), 6);
      }),
    ));
  it("a beam and a load that are their own mirror image answer with their own mirror image", () =>
    fc.assert(
      fc.property(anyBeam, (half) => {
        // The half beam, then its mirror image; the load's corners likewise.
        const length = m(2 * half.length);
        const both = <T extends number>(places: readonly T[]) => [...places, ...[...places].reverse().map((at) => m(length - at))];
        const supports = both(half.supports).filter((at, index, all) => index === 0 || at - (all[index - 1] ?? 0) > 1e-6);
        const load = [...half.load, ...[...half.load].reverse().map((corner) => ({ at: m(length - corner.at), load: corner.load }))];
        const { reactions, stretches: all } = solve({ ...half, length, supports, load });
        const stretches = all.filter((stretch) => stretch.to - stretch.from > 1e-6);
        const scale = Math.max(1, ...reactions.map(Math.abs));
        reactions.forEach((reaction, index) => expect(Math.abs(reaction - (reactions[reactions.length - 1 - index] ?? 0))).toBeLessThanOrEqual(1e-8 * scale));
        stretches.forEach((stretch, index) => expect(Math.abs(stretch.moment - (stretches[stretches.length - 1 - index]?.moment ?? 0))).toBeLessThanOrEqual(1e-8 * scale));
      }),
    ));
  it("is linear in the load, and no load gives nothing", () =>
    fc.assert(
      fc.property(anyBeam, fc.double({ min: 0, max: 4, noNaN: true }), (beam, factor) => {
        const scaled = solve({ ...beam, load: beam.load.map((corner) => ({ ...corner, load: kN_per_m(corner.load * factor) })) });
        solve(beam).stretches.forEach((stretch, index) => {
          expect(scaled.stretches[index]?.moment).toBeCloseTo(stretch.moment * factor, 6);
          expect(scaled.stretches[index]?.deflection).toBeCloseTo(stretch.deflection * factor, 4);
        });
      }),
    ));
  it("a load corner on a straight line changes nothing", () =>
    fc.assert(
      fc.property(anyBeam, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (beam, share) => {
        const [a, b] = [beam.load[0], beam.load[1]];
        if (a === undefined || b === undefined) throw new Error("a load needs two corners");
        const between = { at: m(a.at + share * (b.at - a.at)), load: kN_per_m(a.load + share * (b.load - a.load)) };
        const divided = solve({ ...beam, load: [a, between, ...beam.load.slice(1)] });
        solve(beam).stretches.forEach((stretch, index) => {
          expect(divided.stretches[index]?.moment).toBeCloseTo(stretch.moment, 6);
          expect(Math.abs((divided.stretches[index]?.deflection ?? 0) - stretch.deflection)).toBeLessThanOrEqual(1e-4 * stretch.deflection + 1e-9);
        });
      }),
    ));
  it("agrees with a second way of solving: the three-moment equation under uniform load", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 2, noNaN: true }), fc.double({ min: 0.3, max: 2, noNaN: true }), fc.double({ min: 1, max: 80, noNaN: true }), (left, right, load) => {
        const { supportMoments } = solve({ length: m(left + right), supports: [m(0), m(left), m(left + right)], load: [{ at: m(0), load: kN_per_m(load) }, { at: m(left + right), load: kN_per_m(load) }], stiffness: kN_m2(2) });
        expect(supportMoments[1]).toBeCloseTo((-load * (left ** 3 + right ** 3)) / (8 * (left + right)), 8);
      }),
    ));
  it.each([
    ["one support", { supports: [m(1)] }, "supports"],
    ["supports out of order", { supports: [m(1), m(0.5)] }, "place of a support"],
    ["a support beyond the beam", { supports: [m(0), m(3)] }, "place of a support"],
    ["loads out of order", { load: [{ at: m(1), load: kN_per_m(1) }, { at: m(0), load: kN_per_m(1) }] }, "place of a load corner"],
    ["no stiffness", { stiffness: kN_m2(0) }, "stiffness"],
  ])("refuses %s", (_, change, limit) => {
    const answer = continuousBeam({ length: m(2), supports: [m(0), m(2)], load: [], stiffness: kN_m2(1), ...change });
    expect(answer.ok).toBe(false);
    if (!answer.ok) expect(answer.failure.limit).toContain(limit);
  });
});
