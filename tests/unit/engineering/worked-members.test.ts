/** The example in the comments of boards, timbers, beams and clamps, worked by hand from its inputs. */
import { describe, expect, it } from "vitest";
import { kN, kN_per_m, m, mm, N_per_mm2 } from "#lib/kernel/units.ts";
import { beamSamples } from "#lib/trade/engineering/backing/beam-samples.ts";
import { continuousBeam } from "#lib/trade/engineering/backing/continuous-beam.ts";
import { heldBeam, worstOfBeam } from "#lib/trade/engineering/backing/held-beam.ts";
import type { TimberChoice } from "#lib/trade/engineering/backing/timber-choice.ts";
import { bs5268DepthFactor, bs5268PermissibleValues, en338DesignValues, ndsAdjustedValues, ndsBearingStress, timberValues } from "#lib/trade/engineering/backing/timber-values.ts";
import type { CubicCentimetres } from "#lib/trade/engineering/clamps/clamp-capacity.ts";
import { armMoment, clampChecks, cornerPull, reactionAllowed, sideForceAllowed } from "#lib/trade/engineering/clamps/clamp-strength.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";
import { apaOverhangPressures, apaPressures } from "#lib/trade/engineering/sheathing/apa-pressure.ts";
import { apaSection, apaStresses, type Inches } from "#lib/trade/engineering/sheathing/apa-sections.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

const inch = (value: number) => value as Inches;
const rounded = (values: readonly number[], places: number) => values.map((value) => value.toFixed(places));

describe("worked boards", () => {
  const section = valueOf(apaSection("5/8", "class-i", "across"));
  const stresses = apaStresses("class-i", false);
  it("5/8 in. at 14 in.: 120 x 1930 x 0.358 / 14^2 = 423.0; 20 x 72 x 5.717 / 12.5 = 658.6; deflection 387.9 psf", () => {
    const { bending, shear, deflection, allowed } = valueOf(apaPressures({ section, stresses, grain: "across", centres: inch(14), supportWidth: inch(1.5), spans: 3, deflectionRatio: 360 }));
    expect(rounded([bending, shear, deflection], 1)).toEqual(["423.0", "658.6", "387.9"]);
    // (14 / 360) / (12.75^4 / (1743 x 1.65e6 x 0.13) + 120 x 0.625^2 x 12.5^2 / (1270 x 1.5e6 x 0.13))
    expect(deflection).toBeCloseTo(14 / 360 / (12.75 ** 4 / (1743 * 1.65e6 * 0.13) + (120 * 0.625 ** 2 * 12.5 ** 2) / (1270 * 1.5e6 * 0.13)), 6);
    expect(allowed).toBe(deflection);
  });
  it("overhang of 4.5 in.: 24 x 1930 x 0.358 / 4.5^2 = 818.9; 12 x 72 x 5.717 / 3.75 = 1317.2 psf", () => {
    const { bending, shear } = apaOverhangPressures(section, stresses, inch(4.5), inch(1.5));
    expect(rounded([bending, shear], 1)).toEqual(["818.9", "1317.2"]);
    expect(apaOverhangPressures(section, stresses, inch(0), inch(1.5))).toEqual({ bending: Infinity, shear: Infinity });
  });
  it("refuses what was never read: class II, structural I across, 7/8 in. structural I along", () => {
    expect([apaSection("3/4", "class-ii", "across").ok, apaSection("3/4", "structural-i", "across").ok, apaSection("7/8", "structural-i", "along").ok]).toEqual([false, false, false]);
    expect(apaStresses("class-i", true)).toMatchObject({ bending: 1544, shear: 57.6 });
  });
});

describe("worked timbers", () => {
  const permissible = { kind: "permissible-stress" } as const;
  const design = { kind: "partial-factor", loadFactor: 1.5 } as const;
  const bs: Extract<TimberChoice, { kind: "bs-5268" }> = { kind: "bs-5268", bending: N_per_mm2(7.5), shear: N_per_mm2(0.71), modulus: N_per_mm2(6000), wet: { bending: 0.8, shear: 0.9, modulus: 0.8 }, duration: 1.4, loadSharing: 1, depthFactorInShear: false };
  const c18: TimberChoice = { kind: "en-338", strengthClass: "C18", kMod: 0.7, gammaM: 1.3 };
  const nds = { loadDuration: 1.25, wetBending: 0.85, wetShear: 0.97, wetModulus: 0.9, size: 1.3, flatUse: 1.05, repetitive: 1 };

  it("EN 338 C18: 0.7 x 18 / 1.3 = 9.692; 0.67 x 0.7 x 3.4 / 1.3 = 1.2266 N/mm2", () => {
    const { bending, shear, modulus } = en338DesignValues("C18", 0.7, 1.3);
    expect([bending.toFixed(3), shear.toFixed(4), modulus]).toEqual(["9.692", "1.2266", 9000]);
  });
  it("National Design Specification: 850 x 1.25 x 0.85 x 1.3 x 1.05 = 1232.8; bearing 565 x 0.67 = 378.55; the load's duration leaves E alone", () => {
    const values = ndsAdjustedValues({ bending: N_per_mm2(850), shear: N_per_mm2(180), modulus: N_per_mm2(1.6e6) }, nds);
    expect(values.bending).toBeCloseTo(1232.8, 1);
    expect(values.modulus).toBeCloseTo(1.44e6, 6);
    expect(ndsBearingStress(N_per_mm2(565), 0.67)).toBeCloseTo(378.55, 9);
  });
  it("BS 5268: K7 (300 / 122)^0.11 = 1.1040; 7.5 x 0.8 x 1.4 x 1.1040 = 9.274 N/mm2; K7 on shear only where the sheet takes it there", () => {
    expect(bs5268DepthFactor(mm(122))).toBeCloseTo(1.104, 4);
    expect([bs5268DepthFactor(mm(60)), bs5268DepthFactor(mm(72)), bs5268DepthFactor(mm(300))]).toEqual([1.17, 1.17, 1]);
    expect(bs5268PermissibleValues(bs, mm(122)).bending).toBeCloseTo(9.274, 3);
    expect(bs5268PermissibleValues({ ...bs, depthFactorInShear: true }, mm(122)).shear / bs5268PermissibleValues(bs, mm(122)).shear).toBeCloseTo(1.104, 4);
  });
  it.each([
    ["EN 338 against permissible stresses", c18, 100, permissible, "safety format"],
    ["BS 5268 with partial factors", bs, 100, design, "safety format"],
    ["k_mod 1.2", { ...c18, kMod: 1.2 }, 100, design, "k_mod"],
    ["K3 0.9", { ...bs, duration: 0.9 }, 100, permissible, "K3"],
    ["BS 5268 deeper than 300 mm", bs, 301, permissible, "timber depth (mm)"],
  ] as const)("refuses %s", (_, choice, depth, format, limit) => {
    const answer = timberValues(choice, mm(depth), format);
    expect(answer.ok ? null : answer.failure.limit).toBe(limit);
  });
});

describe("worked beams", () => {
  it("0.4 kN/m over the first metre of three: the clamp at 3 m would pull and is let go, the other two carry 0.2 kN each", () => {
    const { beam, held } = valueOf(heldBeam({ length: m(3), supports: [m(0), m(1), m(3)], load: [{ at: m(0), load: kN_per_m(0.4) }, { at: m(1), load: kN_per_m(0.4) }], stiffness: kN_m2(1) }));
    expect(held).toEqual([0, 1]);
    beam.reactions.forEach((reaction) => expect(reaction).toBeCloseTo(0.2, 12));
  });
  it("1.7 m under 9 kN/m, 50 mm deep: shear 9 x 0.85 - 9 x 0.05 = 7.2 kN, moment 9 x 1.7^2 / 8, deflection over span 5 w L3 / 384 EI", () => {
    const beam = valueOf(continuousBeam({ length: m(1.7), supports: [m(0), m(1.7)], load: [{ at: m(0), load: kN_per_m(9) }, { at: m(1.7), load: kN_per_m(9) }], stiffness: kN_m2(6) }));
    const worst = worstOfBeam(beam, () => 9, m(0.05));
    expect(worst.shear).toBeCloseTo(7.2, 9);
    expect(worst.moment).toBeCloseTo((9 * 1.7 ** 2) / 8, 9);
    expect(worst.bend).toBeCloseTo((5 * 9 * 1.7 ** 3) / (384 * 6), 9);
  });
  it("lines to draw: 1.6 m under 5 kN/m, EI 3: 1.6 kN.m and 142.2 mm in the middle, nothing at the ends, shear from 4 to -4 kN", () => {
    const samples = beamSamples(m(1.6), [{ at: m(0), force: kN(4) }, { at: m(1.6), force: kN(4) }], [{ at: m(0), load: kN_per_m(5) }, { at: m(1.6), load: kN_per_m(5) }], kN_m2(3), 10);
    expect(samples[5]?.moment).toBeCloseTo(1.6, 9);
    expect(samples[5]?.deflection).toBeCloseTo((1000 * 5 * 5 * 1.6 ** 4) / (384 * 3), 6);
    expect([samples[0]?.shear, samples[5]?.shear].map((shear) => Number(shear?.toFixed(9)))).toEqual([4, 0]);
    expect([samples[0]?.deflection, samples[10]?.deflection].map((drop) => Math.abs(drop ?? 1))).toEqual([0, 0]);
  });
});

describe("worked clamps", () => {
  it("arm: 17 (2 x 0.62 - 0.43) / 8 = 1.721 kN.m, F x / 8 where the side fills the span", () => {
    expect(armMoment(kN(17), m(0.62), m(0.43))).toBeCloseTo(1.721, 3);
    expect(armMoment(kN(17), m(0.62), m(0.62))).toBeCloseTo((17 * 0.62) / 8, 12);
  });
  it("corner: 19 and 13 kN: pull 9.5 kN, resultant sqrt(19^2 + 13^2) / 2 = 11.51 kN", () => {
    const { pull, resultant } = cornerPull(kN(19), kN(13));
    expect([pull.toFixed(2), resultant.toFixed(2)]).toEqual(["9.50", "11.51"]);
  });
  it("listed loads: 640 mm between wedges takes the line of 900 mm, 22 kN; beyond the last line is refused", () => {
    const capacity = { sideCapacity: kN(40), capacityBySpan: [{ span: mm(600), load: kN(30) }, { span: mm(900), load: kN(22) }] };
    expect([valueOf(sideForceAllowed(capacity, mm(640))), valueOf(sideForceAllowed(capacity, mm(600))), sideForceAllowed(capacity, mm(901)).ok]).toEqual([22, 30, false]);
  });
  it("checks: 21 cm3 x 160 N/mm2 = 3.36 kN.m; 0.43 x 0.81 / 8 = 0.0435 kN.m for 1 kN/m; 24 kN on 0.48 m is 50 kN/m", () => {
    const sides = { across: { side: mm(430), wedgeSpan: mm(620) }, along: { side: mm(430), wedgeSpan: mm(620) } };
    const checks = valueOf(clampChecks({ sideCapacity: kN(40), arm: { sectionModulus: 21 as CubicCentimetres, stress: N_per_mm2(160) } }, sides));
    const arm = checks.find(({ part }) => part === "arm");
    expect(arm?.capacity).toBeCloseTo(3.36, 9);
    expect(arm?.perReaction).toBeCloseTo(0.0435, 4);
    expect(reactionAllowed([{ part: "clamp", side: "across", perReaction: 0.48, capacity: 24, unit: "kN" }])).toBe(50);
  });
});
