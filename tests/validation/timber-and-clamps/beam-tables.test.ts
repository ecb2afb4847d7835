/**
 * Uniform-load coefficients of continuous beams, in every table of beams. One and three spans: construction lectures (Allen), week 8, and
 * Peurifoy and Oberlender, 4th ed. (2010), p. 153; two spans from memory. Printed as fractions: 1/185 and 1/145 are rounded (184.6, 145.3).
 */
import { describe, expect, it } from "vitest";
import { kN_per_m, m } from "#lib/kernel/units.ts";
import { continuousBeam } from "#lib/trade/engineering/backing/continuous-beam.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";
import { spanCoefficients } from "#lib/trade/engineering/backing/span-coefficients.ts";

function beamOf(spans: number, length: number, load: number, stiffness: number) {
  const answer = continuousBeam({
    length: m(spans * length),
    supports: Array.from({ length: spans + 1 }, (_, index) => m(index * length)),
    load: [{ at: m(0), load: kN_per_m(load) }, { at: m(spans * length), load: kN_per_m(load) }],
    stiffness: kN_m2(stiffness),
  });
  if (!answer.ok) throw new Error(answer.failure.message);
  return answer.value;
}

describe("the exact beam gives the tabulated coefficients", () => {
  it.each([1, 2, 3])("%d equal spans: moment, shear, deflection", (spans) => {
    const [length, load, stiffness] = [1.37, 8.3, 5.9];
    const { stretches } = beamOf(spans, length, load, stiffness);
    const table = spanCoefficients(spans);
    const largest = (pick: (stretch: (typeof stretches)[number]) => number) => Math.max(...stretches.map(pick));
    expect(largest((stretch) => stretch.moment) / (load * length ** 2)).toBeCloseTo(table.moment, 6);
    expect(largest((stretch) => Math.max(stretch.shearFrom, stretch.shearTo)) / (load * length)).toBeCloseTo(table.shear, 6);
    const deflection = (largest((stretch) => stretch.deflection) * stiffness) / (load * length ** 4);
    expect(Math.abs(deflection / table.deflection - 1)).toBeLessThanOrEqual(0.003);
  });
  it("two spans: reactions 3/8, 10/8, 3/8 of w L", () => {
    const { reactions } = beamOf(2, 1.3, 7, 1);
    [3 / 8, 10 / 8, 3 / 8].forEach((share, index) => expect(reactions[index]).toBeCloseTo(share * 7 * 1.3, 9));
  });
  it.each([
    ["three", [0.4, 1.1, 1.1, 0.4], [-0.1, -0.1]],
    ["four", [0.393, 1.143, 0.929, 1.143, 0.393], [-0.1071, -0.0714, -0.1071]],
    ["five", [0.395, 1.132, 0.974, 0.974, 1.132, 0.395], [-0.1053, -0.0789, -0.0789, -0.1053]],
  ])("%s spans: reactions in w L and support moments in w L2 (beam tables to three and four places, from memory)", (_, reactions, moments) => {
    const [length, load] = [1.7, 4.6];
    const beam = beamOf(reactions.length - 1, length, load, 2.4);
    reactions.forEach((share, index) => expect(Math.abs((beam.reactions[index] ?? 0) / (load * length) - share)).toBeLessThanOrEqual(0.0006));
    moments.forEach((share, index) => expect(Math.abs((beam.supportMoments[index + 1] ?? 0) / (load * length ** 2) - share)).toBeLessThanOrEqual(0.00006));
  });
  it("load on an overhang a alone: free end sinks w a3 (4 L + 3 a) / 24 EI, far support is pulled by w a2 / 2 L, span rises 0.03208 w a2 L2 / EI (beam tables, from memory)", () => {
    const [span, a, w, stiffness] = [2.3, 0.7, 6.4, 3.1];
    const answer = continuousBeam({ length: m(span + a), supports: [m(0), m(span)], load: [{ at: m(span), load: kN_per_m(w) }, { at: m(span + a), load: kN_per_m(w) }], stiffness: kN_m2(stiffness) });
    if (!answer.ok) throw new Error(answer.failure.message);
    const [held, free] = answer.value.stretches;
    expect(free?.deflection).toBeCloseTo((w * a ** 3 * (4 * span + 3 * a)) / (24 * stiffness), 9);
    expect(answer.value.reactions[0]).toBeCloseTo((-w * a * a) / (2 * span), 9);
    expect(Math.abs((held?.deflection ?? 0) / ((w * a * a * span * span) / stiffness) - 0.03208)).toBeLessThanOrEqual(0.00001);
  });
  it("triangular load on one span: w L2 / (9 sqrt 3), reactions 1/6 and 1/3, deflection 0.00652 w L4 / EI (beam tables, from memory)", () => {
    const answer = continuousBeam({ length: m(2.1), supports: [m(0), m(2.1)], load: [{ at: m(0), load: kN_per_m(0) }, { at: m(2.1), load: kN_per_m(11) }], stiffness: kN_m2(4) });
    if (!answer.ok) throw new Error(answer.failure.message);
    const [span] = answer.value.stretches;
    expect(span?.moment).toBeCloseTo((11 * 2.1 ** 2) / (9 * Math.sqrt(3)), 9);
    expect(answer.value.reactions[0]).toBeCloseTo((11 * 2.1) / 6, 9);
    expect(answer.value.reactions[1]).toBeCloseTo((11 * 2.1) / 3, 9);
    expect(((span?.deflection ?? 0) * 4) / (11 * 2.1 ** 4)).toBeCloseTo(0.00652, 5);
  });
  it("the same triangular load given in three lengths deflects the same", () => {
    const load = [0, 0.4, 1.3, 2.1].map((at) => ({ at: m(at), load: kN_per_m((11 * at) / 2.1) }));
    const answer = continuousBeam({ length: m(2.1), supports: [m(0), m(2.1)], load, stiffness: kN_m2(4) });
    if (!answer.ok) throw new Error(answer.failure.message);
    expect(((answer.value.stretches[0]?.deflection ?? 0) * 4) / (11 * 2.1 ** 4)).toBeCloseTo(0.00652, 5);
  });
  it("overhanging beam, overhang a both sides of L: w a2 / 2 over the supports, w (L2 / 8 - a2 / 2) in the middle (statics)", () => {
    const answer = continuousBeam({ length: m(4.3), supports: [m(0.6), m(3.7)], load: [{ at: m(0), load: kN_per_m(6) }, { at: m(4.3), load: kN_per_m(6) }], stiffness: kN_m2(3) });
    if (!answer.ok) throw new Error(answer.failure.message);
    expect(answer.value.supportMoments[0]).toBeCloseTo((-6 * 0.36) / 2, 9);
    expect(answer.value.stretches[1]?.moment).toBeCloseTo(6 * (3.1 ** 2 / 8 - 0.36 / 2), 9);
  });
});
