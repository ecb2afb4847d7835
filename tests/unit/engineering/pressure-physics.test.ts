import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degC, hours, kN, kN_per_m3, kPa, m, m_per_h, mm, N_per_mm2 } from "#lib/kernel/units.ts";
import { CEMENT_GROUPS, CONSISTENCY_CLASSES, PRESSURE_METHODS, WORKING_ONLY_METHODS } from "#lib/trade/engineering/pour-conditions.ts";
import type { FormSize, PressureConditions } from "#lib/trade/engineering/pour-conditions.ts";
import { pressureAt, pressureEnvelope } from "#lib/trade/engineering/pressure-envelope.ts";
import { clampDemands } from "#lib/trade/engineering/clamps/clamp-demands.ts";
import { timberInFormat } from "#lib/trade/engineering/workings/backing.ts";
import { clampLayoutWorking } from "#lib/trade/engineering/workings/clamp-layout.ts";
import type { ClampLayoutInput } from "#lib/trade/engineering/workings/clamp-layout.ts";
import { pressureWorking } from "#lib/trade/engineering/workings/pressure.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

const STRIPS = 4000;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pours: fc.Arbitrary<PressureConditions> = fc.record({
  method: fc.constantFrom(...PRESSURE_METHODS, ...WORKING_ONLY_METHODS),
  consistency: fc.constantFrom(...CONSISTENCY_CLASSES),
  settingEnd: between(5, 20).map(hours),
  concreteDensity: between(18, 28).map(kN_per_m3),
  temperature: between(3, 35).map(degC),
  riseRate: between(0.1, 20).map(m_per_h),
  cement: fc.constantFrom(...CEMENT_GROUPS),
  retarder: fc.boolean(),
  slump: between(0, 220).map(mm),
  vibrationDepth: between(300, 1500).map(mm),
  selfCompacting: fc.boolean(),
  externalVibration: fc.constant(false),
  placing: fc.constantFrom("from-top", "pumped-from-base"),
  pourHeight: fc.constant(null),
});
const forms: fc.Arbitrary<FormSize> = fc.record({ height: fc.integer({ min: 400, max: 9000 }).map(mm), largestSide: fc.constantFrom(350, 900, 2000, 2600).map(mm) });

const limitOf = (pour: PressureConditions, form: FormSize): number | null => {
  const answer = pressureEnvelope(pour, form);
  return answer.ok ? answer.value.limit : null;
};
/** What is refused on either side says nothing about the other. */
function neverLower(before: number | null, after: number | null): void {
  if (before !== null && after !== null) expect(after).toBeGreaterThanOrEqual(before - 1e-9);
}

describe("pressure, by every method, for columns and for walls", () => {
  const runs = { numRuns: 2000 };
  it("never falls with the height of the pour", () =>
    fc.assert(fc.property(pours, forms, fc.integer({ min: 1, max: 4000 }), (pour, form, more) => neverLower(limitOf(pour, form), limitOf(pour, { ...form, height: mm(form.height + more) }))), runs));
  it("never falls with the rate of rise", () =>
    fc.assert(fc.property(pours, forms, between(0, 8), (pour, form, more) => neverLower(limitOf(pour, form), limitOf({ ...pour, riseRate: m_per_h(pour.riseRate + more) }, form))), runs));
  it("never rises with the temperature of the concrete", () =>
    fc.assert(fc.property(pours, forms, between(0, 20), (pour, form, warmer) => neverLower(limitOf({ ...pour, temperature: degC(pour.temperature + warmer) }, form), limitOf(pour, form))), runs));
  it("never falls with the weight of the concrete, a retarder or a later end of setting", () =>
    fc.assert(
      fc.property(pours, forms, between(0, 5), (pour, form, more) => {
        neverLower(limitOf(pour, form), limitOf({ ...pour, concreteDensity: kN_per_m3(pour.concreteDensity + more) }, form));
        neverLower(limitOf({ ...pour, retarder: false }, form), limitOf({ ...pour, retarder: true }, form));
        neverLower(limitOf(pour, form), limitOf({ ...pour, settingEnd: hours((pour.settingEnd ?? 5) + more) }, form));
      }),
      runs,
    ));
  it("never passes the liquid head, or a quarter more where the pump is at the base", () =>
    fc.assert(
      fc.property(pours, forms, (pour, form) => {
        const most = (pour.placing === "pumped-from-base" ? 1.25 : 1) * pour.concreteDensity * (form.height / 1000);
        expect(limitOf(pour, form) ?? 0).toBeLessThanOrEqual(most * (1 + 1e-12));
      }),
      runs,
    ));
  it("adds up: the resultant, its height and the uplift are those of the line cut into thin strips", () =>
    fc.assert(
      fc.property(pours, forms, between(0, 300), (pour, form, batter) => {
        const answer = pressureWorking({ pour, form, batterPerMetre: mm(batter) });
        if (!answer.ok) return;
        const { envelope, resultant, resultantHeight, average, uplift } = answer.value;
        const thin = envelope.pourHeight / STRIPS;
        let [force, moment] = [0, 0];
        for (let strip = 0; strip < STRIPS; strip += 1) {
          const height = (strip + 0.5) * thin;
          const pressure = pressureAt(envelope, mm(height * 1000));
          force += pressure * thin;
          moment += pressure * thin * height;
        }
        expect(resultant / force).toBeCloseTo(1, 5);
        expect((resultant * resultantHeight) / moment).toBeCloseTo(1, 5);
        expect((average * envelope.pourHeight) / force).toBeCloseTo(1, 5);
        expect(uplift).toBeCloseTo((resultant * batter) / 1000, 9);
      }),
    ));
});

const layouts: fc.Arbitrary<ClampLayoutInput> = fc
  .record({ pour: pours, largestSide: fc.constantFrom(300, 450, 700), height: fc.integer({ min: 8, max: 24 }).map((steps) => steps * 250), gap: fc.integer({ min: 200, max: 700 }), capacity: between(12, 60), share: between(0.12, 0.32) })
  .map(({ pour, largestSide, height, gap, capacity, share }) => {
    const sides = { side: mm(largestSide), wedgeSpan: mm(largestSide + 240) };
    return {
      pressure: { pour: { ...pour, selfCompacting: false, temperature: degC(15) }, form: { height: mm(height), largestSide: mm(largestSide) }, batterPerMetre: mm(0) },
      format: { kind: "partial-factor", loadFactor: 1.35 },
      timber: { breadth: mm(47), depth: mm(95), timber: { kind: "own", bendingStress: N_per_mm2(13), shearStress: N_per_mm2(1.9), modulus: N_per_mm2(8000) } },
      share: m(share), sides: { across: sides, along: sides }, clamp: { sideCapacity: kN(capacity) }, deflectionRatio: 270,
      layout: { kind: "measured", heights: Array.from({ length: Math.floor((height - 150) / gap) + 1 }, (_, index) => mm(150 + index * gap)) },
      riseRateTemperatures: [degC(8), degC(22)],
    };
  });

describe("the highest rate of rise of a layout", () => {
  const at = (input: ClampLayoutInput, temperature: number, riseRate: number) =>
    clampLayoutWorking({ ...input, riseRateTemperatures: [], pressure: { ...input.pressure, pour: { ...input.pressure.pour, temperature: degC(temperature), riseRate: m_per_h(riseRate) } } });
  const seen = { rate: 0, any: 0, none: 0 };
  /** A continuous beam may be used harder by a smaller load: a rate is given only up to the first pressure that fails, so one below `most` counts. */
  const failsBelow = (input: ClampLayoutInput, most: number): boolean => {
    const { pressure: { pour, form }, sides, share, clamp } = input;
    const timber = valueOf(timberInFormat(input.timber, input.format)).capacity;
    const heights = input.layout.kind === "measured" ? input.layout.heights : [];
    const head = valueOf(pressureEnvelope({ ...pour, method: "full-head" }, form));
    return Array.from({ length: 400 }, (_, step) => (most * (step + 1)) / 400).some((limit) => {
      const liquidDepth = m((head.pourHeight * limit) / head.limit);
      const points = [{ depth: m(0), pressure: kPa(0) }, { depth: liquidDepth, pressure: kPa(limit) }, { depth: head.pourHeight, pressure: kPa(limit) }];
      const { moment, shear, deflectionOverSpan, largestReaction } = valueOf(clampDemands({ ...head, limit: kPa(limit), liquidDepth, points }, mm(form.height), heights, timber.depth));
      const uses = [(moment.value * share * 1.35) / timber.moment, (shear.value * share * 1.35) / timber.shear, (deflectionOverSpan.value * share * 270) / timber.stiffness, (largestReaction.value * (sides.across.side / 1000) * 1.35) / clamp.sideCapacity];
      return Math.max(...uses) > 1 - 1e-3;
    });
  };

  it("really passes, and a bit more really fails; where any rate passes the full head does, where none does the slowest fails", () => {
    fc.assert(
      fc.property(layouts, (input) => {
        const answer = clampLayoutWorking(input);
        if (!answer.ok) return;
        for (const { temperature, riseRate, anyRate, refusal } of answer.value.riseRates) {
          if (refusal !== null) continue;
          if (anyRate) {
            seen.any += 1;
            const head = clampLayoutWorking({ ...input, riseRateTemperatures: [], pressure: { ...input.pressure, pour: { ...input.pressure.pour, method: "full-head" } } });
            expect(head.ok && head.value.passes).toBe(true);
          } else if (riseRate === null) {
            seen.none += 1;
            const slowest = at(input, temperature, 0.01);
            expect(slowest.ok && slowest.value.passes && !failsBelow(input, slowest.value.envelope.limit)).toBe(false);
          } else {
            seen.rate += 1;
            const still = at(input, temperature, riseRate);
            expect(still.ok && still.value.passes).toBe(true);
            const more = at(input, temperature, riseRate + 0.011);
            expect(more.ok && more.value.passes && !failsBelow(input, more.value.envelope.limit)).toBe(false);
          }
        }
      }),
      { numRuns: 250, seed: 7 },
    );
    expect(Math.min(seen.rate, seen.any, seen.none)).toBeGreaterThan(10);
  });
});
