/** The exact beam against two other methods on random beams; the linear algebra of both is a general-purpose package's. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kN_per_m, m } from "#lib/kernel/units.ts";
import { continuousBeam } from "#lib/trade/engineering/backing/continuous-beam.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";
import { anyDrawnBeam } from "#tests/support/builders/any-beam.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { finiteBeam, type FiniteNode } from "./finite-elements.ts";
import { threeMoments } from "./three-moments.ts";

const near = (ours: number, theirs: number, within: number) => expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(within);
const largest = (values: readonly number[]) => Math.max(1, ...values.map(Math.abs));

/** The deepest of evenly spaced values, and how much deeper a parabola through it and its neighbours goes. */
function peakOf(drops: readonly number[]): number {
  const sizes = drops.map(Math.abs);
  const top = sizes.indexOf(Math.max(...sizes));
  const [a, b, c] = [sizes[top - 1], sizes[top] ?? 0, sizes[top + 1]];
  if (a === undefined || c === undefined || a - 2 * b + c === 0) return b;
  return b - (c - a) ** 2 / (8 * (a - 2 * b + c));
}

describe("two other methods, checked on a beam worked by hand", () => {
  // Two spans of 1.2 m under 10 kN/m, EI 5: M = w L2 / 8 = 1.8, reactions 4.5, 15, 4.5; deflection w L4 / 185 EI is 22.4 mm.
  const beam = { length: m(2.4), supports: [m(0), m(1.2), m(2.4)], load: [{ at: m(0), load: kN_per_m(10) }, { at: m(2.4), load: kN_per_m(10) }], stiffness: kN_m2(5) };
  it("finite elements", () => {
    const nodes = finiteBeam(beam, [], 24);
    expect(nodes.filter(({ reaction }) => reaction > 1e-6).map(({ reaction }) => Number(reaction.toFixed(6)))).toEqual([4.5, 15, 4.5]);
    expect(Math.min(...nodes.map(({ momentBefore }) => momentBefore))).toBeCloseTo(-1.8, 6);
    near(-Math.min(...nodes.map(({ drop }) => drop)), (10 * 1.2 ** 4) / (185 * 5), 0.0001);
  });
  it("three moments", () => {
    const { moments, reactions } = threeMoments(beam);
    [0, -1.8, 0].forEach((moment, index) => expect(moments[index]).toBeCloseTo(moment, 12));
    [4.5, 15, 4.5].forEach((reaction, index) => expect(reactions[index]).toBeCloseTo(reaction, 12));
  });
});

describe("the exact beam", () => {
  it("has the support moments and reactions of the three-moment equations, to 1e-9 of the largest", () =>
    fc.assert(
      fc.property(anyDrawnBeam, (beam) => {
        const ours = valueOf(continuousBeam(beam));
        const theirs = threeMoments(beam);
        ours.supportMoments.forEach((moment, index) => near(moment, theirs.moments[index] ?? Number.NaN, 1e-9 * largest(theirs.moments)));
        ours.reactions.forEach((reaction, index) => near(reaction, theirs.reactions[index] ?? Number.NaN, 1e-9 * largest(theirs.reactions)));
      }),
      { numRuns: 300 },
    ));

  it("has the reactions, shears and largest moments of finite elements", () =>
    fc.assert(
      fc.property(anyDrawnBeam, (beam) => {
        const ours = valueOf(continuousBeam(beam));
        const nodes = finiteBeam(beam, ours.stretches.map(({ momentAt }) => momentAt), 4);
        const nodeAt = (place: number): FiniteNode => nodes.reduce((a, b) => (Math.abs(b.at - place) < Math.abs(a.at - place) ? b : a));
        const scale = largest(nodes.map(({ reaction }) => reaction));
        beam.supports.forEach((support, index) => near(ours.reactions[index] ?? Number.NaN, nodeAt(support).reaction, 1e-6 * scale));
        for (const stretch of ours.stretches) {
          const within = nodes.filter(({ at }) => at >= stretch.from - 1e-9 && at <= stretch.to + 1e-9);
          const moments = within.flatMap((node) => [node.at > stretch.from + 1e-9 ? node.momentBefore : 0, node.at < stretch.to - 1e-9 ? node.momentBeyond : 0]);
          near(stretch.shearFrom, Math.abs(nodeAt(stretch.from).shearBeyond), 1e-6 * scale);
          near(stretch.shearTo, Math.abs(nodeAt(stretch.to).shearBefore), 1e-6 * scale);
          // A node stands where ours is largest: there it agrees, and nowhere is it larger.
          near(stretch.moment, Math.max(...moments.map(Math.abs)), 1e-6 * largest(moments));
        }
      }),
      { numRuns: 60 },
    ), 60_000);

  it("has the deflections of finite elements within each stretch", () =>
    fc.assert(
      fc.property(anyDrawnBeam, (beam) => {
        const ours = valueOf(continuousBeam(beam));
        for (const stretch of ours.stretches) {
          const steps = 40;
          const asked = Array.from({ length: steps + 1 }, (_, step) => stretch.from + ((stretch.to - stretch.from) * step) / steps);
          const nodes = finiteBeam(beam, asked, 1);
          const drops = asked.map((place) => nodes.reduce((a, b) => (Math.abs(b.at - place) < Math.abs(a.at - place) ? b : a)).drop);
          const deepest = Math.max(...drops.map(Math.abs));
          const scale = largest(nodes.map(({ drop }) => drop));
          expect(stretch.deflection).toBeGreaterThanOrEqual(deepest * (1 - 1e-6) - 1e-7 * scale);
          near(stretch.deflection, Math.max(deepest, peakOf(drops)), 2e-3 * deepest + 1e-7 * scale);
        }
      }),
      { numRuns: 15 },
    ), 60_000);
});
