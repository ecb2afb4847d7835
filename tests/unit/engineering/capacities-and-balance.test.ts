import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kN_per_m, kPa, m, mm, N_per_mm2 } from "#lib/kernel/units.ts";
import { KPA_PER_PSF, MM_PER_INCH } from "#lib/kernel/us-units.ts";
import { EN_338_CLASSES } from "#lib/trade/engineering/backing/timber-choice.ts";
import type { NdsFactors } from "#lib/trade/engineering/backing/timber-choice.ts";
import { timberCapacity } from "#lib/trade/engineering/backing/timber-capacity.ts";
import type { TimberSection } from "#lib/trade/engineering/backing/timber-capacity.ts";
import { bs5268DepthFactor, en338DesignValues, ndsAdjustedValues } from "#lib/trade/engineering/backing/timber-values.ts";
import { apaPressures } from "#lib/trade/engineering/sheathing/apa-pressure.ts";
import { apaSection, apaStresses } from "#lib/trade/engineering/sheathing/apa-sections.ts";
import type { Inches, PlyThickness } from "#lib/trade/engineering/sheathing/apa-sections.ts";
import { backingWorking } from "#lib/trade/engineering/workings/backing.ts";
import type { BackingInput } from "#lib/trade/engineering/workings/backing.ts";
import { sheathingWorking } from "#lib/trade/engineering/workings/sheathing.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const THICKNESSES: readonly PlyThickness[] = ["15/32", "1/2", "19/32", "5/8", "23/32", "3/4", "7/8", "1", "1-1/8"];

describe("US concrete-form plywood", () => {
  const strips = fc.record({ grain: fc.constantFrom("across" as const, "along" as const), centres: between(4, 32), supportWidth: between(0.75, 3.5), spans: fc.constantFrom(1 as const, 2 as const, 3 as const), ratio: between(180, 480), reused: fc.boolean() });
  const pressures = (strip: { grain: "across" | "along"; centres: number; supportWidth: number; spans: 1 | 2 | 3; ratio: number; reused: boolean }, thickness: PlyThickness) =>
    valueOf(apaPressures({
      section: valueOf(apaSection(thickness, "class-i", strip.grain)), stresses: apaStresses("class-i", strip.reused), grain: strip.grain, centres: strip.centres as Inches,
      supportWidth: strip.supportWidth as Inches, spans: strip.spans, deflectionRatio: strip.ratio,
    }));

  it("carries no more on wider centres, with a stricter deflection, or used again", () =>
    fc.assert(
      fc.property(strips, fc.constantFrom(...THICKNESSES), between(0, 8), (strip, thickness, more) => {
        if (strip.centres <= strip.supportWidth) return;
        const allowed = pressures(strip, thickness).allowed;
        expect(pressures({ ...strip, centres: strip.centres + more }, thickness).allowed).toBeLessThanOrEqual(allowed + 1e-9);
        expect(pressures({ ...strip, ratio: strip.ratio + more }, thickness).allowed).toBeLessThanOrEqual(allowed + 1e-9);
        expect(pressures({ ...strip, reused: true }, thickness).allowed).toBeLessThanOrEqual(pressures({ ...strip, reused: false }, thickness).allowed + 1e-9);
      }),
    ));
  it("bends and breaks at higher pressures the thicker it is, and with the grain across the supports", () =>
    fc.assert(
      fc.property(strips, fc.integer({ min: 1, max: THICKNESSES.length - 1 }), (strip, index) => {
        if (strip.centres <= strip.supportWidth) return;
        const [thin, thick] = [pressures(strip, THICKNESSES[index - 1] ?? "3/4"), pressures(strip, THICKNESSES[index] ?? "3/4")];
        expect(thick.bending).toBeGreaterThan(thin.bending);
        expect(thick.shear).toBeGreaterThan(thin.shear);
        const [along, across] = (["along", "across"] as const).map((grain) => pressures({ ...strip, grain }, THICKNESSES[index] ?? "3/4").bending);
        expect(across).toBeGreaterThan(along ?? NaN);
      }),
    ));
  it("asked for in metres and kilopascals answers as in inches and pounds: units cancel", () =>
    fc.assert(
      fc.property(strips, fc.constantFrom(...THICKNESSES), (strip, thickness) => {
        if (strip.centres <= strip.supportWidth + 0.01) return;
        const metres = (inches: number) => m((inches * MM_PER_INCH) / 1000);
        const answer = valueOf(sheathingWorking({
          board: { kind: "apa", thickness, grade: "class-i", grain: strip.grain, reused: strip.reused }, pressure: kPa(20), centres: metres(strip.centres),
          spans: strip.spans, supportWidth: metres(strip.supportWidth), overhang: m(0), deflectionRatio: strip.ratio,
        }));
        expect(answer.allowedPressure / (pressures(strip, thickness).allowed * KPA_PER_PSF)).toBeCloseTo(1, 9);
      }),
    ));
});

describe("timber values", () => {
  it("EN 338 classes rise in bending, shear and stiffness; k_mod raises, gamma_M lowers", () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: EN_338_CLASSES.length - 1 }), between(0.3, 1), between(1, 1.4), between(0, 0.1), (index, kMod, gammaM, more) => {
        const values = (at: number, k = kMod, gamma = gammaM) => en338DesignValues(EN_338_CLASSES[at] ?? "C24", k, gamma);
        const [low, high] = [values(index - 1), values(index)];
        expect(high.bending).toBeGreaterThan(low.bending);
        expect(high.shear).toBeGreaterThanOrEqual(low.shear);
        expect(high.modulus).toBeGreaterThan(low.modulus);
        for (const what of ["bending", "shear"] as const) {
          expect(values(index, kMod + more)[what]).toBeGreaterThanOrEqual(high[what]);
          expect(values(index, kMod, gammaM + more)[what]).toBeLessThanOrEqual(high[what]);
        }
      }),
    ));
  it("NDS values rise with each of their factors, and with none but theirs", () => {
    const ONE: NdsFactors = { loadDuration: 1, wetBending: 1, wetShear: 1, wetModulus: 1, size: 1, flatUse: 1, repetitive: 1 };
    const reference = { bending: N_per_mm2(6.2), shear: N_per_mm2(1.24), modulus: N_per_mm2(11_000) };
    const ACTS: Readonly<Record<keyof NdsFactors, readonly (keyof typeof reference)[]>> = {
      loadDuration: ["bending", "shear"], wetBending: ["bending"], wetShear: ["shear"], wetModulus: ["modulus"], size: ["bending"], flatUse: ["bending"], repetitive: ["bending"],
    };
    fc.assert(
      fc.property(fc.constantFrom(...(Object.keys(ACTS) as (keyof NdsFactors)[])), between(0.5, 1.6), (name, factor) => {
        const values = ndsAdjustedValues(reference, { ...ONE, [name]: factor });
        for (const what of ["bending", "shear", "modulus"] as const) expect(values[what] / reference[what]).toBeCloseTo(ACTS[name].includes(what) ? factor : 1, 12);
      }),
    );
  });
  it("BS 5268's depth factor never rises with depth", () =>
    fc.assert(fc.property(between(20, 300), between(0, 200), (depth, more) => void expect(bs5268DepthFactor(mm(depth + more))).toBeLessThanOrEqual(bs5268DepthFactor(mm(depth))))));
  it("a timber carries more in a larger section and in better wood: M with the square of its depth, EI with the cube", () =>
    fc.assert(
      fc.property(fc.record({ breadth: between(30, 150).map(mm), depth: between(30, 250).map(mm), modulus: between(5000, 13_000).map(N_per_mm2), bendingStress: between(4, 20).map(N_per_mm2), shearStress: between(0.5, 3).map(N_per_mm2) }), between(1, 2), (section: TimberSection, factor) => {
        const [one, deeper, wider] = [section, { ...section, depth: mm(section.depth * factor) }, { ...section, breadth: mm(section.breadth * factor) }].map((each) => valueOf(timberCapacity(each)));
        if (one === undefined || deeper === undefined || wider === undefined) throw new Error("no capacity");
        expect([deeper.moment / one.moment, deeper.shear / one.shear, deeper.stiffness / one.stiffness]).toEqual([factor ** 2, factor, factor ** 3].map((ratio) => expect.closeTo(ratio, 9) as number));
        for (const what of ["moment", "shear", "stiffness"] as const) expect(wider[what] / one[what]).toBeCloseTo(factor, 9);
      }),
    ));
});

describe("a backing timber over its clamps", () => {
  const beams = fc.record({ gaps: fc.array(fc.integer({ min: 200, max: 800 }), { minLength: 1, maxLength: 8 }), foot: fc.integer({ min: 0, max: 250 }), head: fc.integer({ min: 0, max: 300 }), low: between(1, 40), high: between(0, 1) });
  const inputOf = ({ gaps, foot, head, low, high }: { gaps: readonly number[]; foot: number; head: number; low: number; high: number }): BackingInput => {
    const supports = gaps.reduce<readonly number[]>((places, gap) => [...places, (places.at(-1) ?? 0) + gap], [foot]);
    const length = (supports.at(-1) ?? 0) + head;
    return {
      timber: { breadth: mm(47), depth: mm(95), timber: { kind: "own", bendingStress: N_per_mm2(9), shearStress: N_per_mm2(1.3), modulus: N_per_mm2(7000) } },
      format: { kind: "permissible-stress" },
      load: { kind: "corners", corners: [{ at: m(0), load: kN_per_m(low) }, { at: m(length / 1000), load: kN_per_m(low * high) }] },
      length: mm(length), supports: supports.map(mm), deflectionRatio: 270,
    };
  };

  it("is in balance: clamps hold the load and its moment, and nothing is left at either end", () => {
    let whole = 0;
    fc.assert(
      fc.property(beams, (beam) => {
        const input = inputOf(beam);
        const answer = backingWorking(input);
        if (!answer.ok || input.length < 100) return;
        const { reactions, samples } = answer.value;
        const length = input.length / 1000;
        const [from, to] = [beam.low, beam.low * beam.high];
        const load = ((from + to) / 2) * length;
        const moment = (length * length * (from + 2 * to)) / 6;
        // A clamp that would be pulled holds nothing; with two left one may still be pulled, which is told as 0.
        if (reactions.some(({ force }) => force === 0)) return;
        whole += 1;
        expect(reactions.reduce((sum, { force }) => sum + force, 0) / load).toBeCloseTo(1, 8);
        expect(reactions.reduce((sum, { at, force }) => sum + (force * at) / 1000, 0) / moment).toBeCloseTo(1, 8);
        const [first, last] = [samples[0], samples.at(-1)];
        expect(Math.abs(last?.moment ?? NaN)).toBeLessThan(load * length * 1e-6);
        expect(first?.moment ?? NaN).toBeCloseTo(0, 9);
        if (beam.head > 0) expect(Math.abs(last?.shear ?? NaN)).toBeLessThan(load * 1e-6);
      }),
    );
    expect(whole).toBeGreaterThan(30);
  });

  it("is used twice as hard under twice the load: linear in it", () =>
    fc.assert(
      fc.property(beams, (beam) => {
        const [once, twice] = [backingWorking(inputOf(beam)), backingWorking(inputOf({ ...beam, low: beam.low * 2 }))];
        if (!once.ok || !twice.ok) return;
        once.value.uses.forEach(({ utilisation }, index) => expect(twice.value.uses[index]?.utilisation ?? NaN).toBeCloseTo(2 * utilisation, 6));
      }),
    ));
});
