import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degC, hours, N_per_mm2 } from "#lib/kernel/units.ts";
import { HARDENING_CLASSES } from "#lib/trade/engineering/strip-time/maturity.ts";
import type { StripRule } from "#lib/trade/engineering/strip-time/strip-rule.ts";
import { stripTimeWorking } from "#lib/trade/engineering/workings/strip-time.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ages = fc.oneof(
  fc.record({ kind: fc.constant("arrhenius" as const), activationEnergyKjPerMol: between(25, 60), reference: between(15, 25).map(degC) }),
  fc.record({ kind: fc.constant("astm-c1074" as const), q: between(3000, 7000), reference: between(15, 25).map(degC) }),
  fc.constant({ kind: "en-1992" as const }),
);
const maturity = fc.record({ kind: fc.constant("maturity" as const), datum: between(-11, 0).map(degC), required: between(100, 900) });
const equivalentAge = fc.record({ kind: fc.constant("equivalent-age" as const), age: ages, required: between(5, 40).map(hours) });
const rules: fc.Arbitrary<StripRule> = fc.oneof(
  fc.constant({ kind: "aci-347" as const }),
  fc.record({ kind: fc.constant("is-456" as const), hours: between(16, 24).map(hours) }),
  fc.constant({ kind: "bs-8110" as const }),
  fc.record({ kind: fc.constant("project-hours" as const), hours: between(5, 60).map(hours), leastTemperature: fc.option(between(-5, 15).map(degC)) }),
  maturity,
  equivalentAge,
  fc.record({
    kind: fc.constant("strength" as const), hardening: fc.constantFrom(...HARDENING_CLASSES), meanStrength28: between(25, 60).map(N_per_mm2),
    stressOnRelease: between(0.2, 2).map(N_per_mm2), leastStrength: between(1, 5).map(N_per_mm2),
  }),
);
/** Within what every rule here takes. */
const records = fc.array(between(3, 20), { minLength: 24 * 12, maxLength: 24 * 12 });
const timed = (rule: StripRule, temperatures: readonly number[]) => stripTimeWorking({ rule, hourly: temperatures.map(degC), measured: "concrete" });

describe("strip time, by every rule", () => {
  it("never comes later in warmer concrete, and nothing gathered is lost", () => {
    let compared = 0;
    fc.assert(
      fc.property(rules, records, fc.array(between(0, 5), { minLength: 24 * 12, maxLength: 24 * 12 }), (rule, cold, warmer) => {
        const [before, after] = [timed(rule, cold), timed(rule, cold.map((temperature, hour) => temperature + (warmer[hour] ?? 0)))];
        if (!before.ok) return;
        compared += 1;
        expect(valueOf(after).earliest).toBeLessThanOrEqual(before.value.earliest + 1e-9);
        before.value.progress.forEach((gathered, hour) => expect(gathered).toBeGreaterThanOrEqual((before.value.progress[hour - 1] ?? 0) - 1e-9));
      }),
      { numRuns: 60 },
    );
    expect(compared).toBeGreaterThan(20);
  });

  it("is met at the moment it names and not a minute before", () =>
    fc.assert(
      fc.property(rules, records, (rule, temperatures) => {
        const answer = timed(rule, temperatures);
        if (!answer.ok) return;
        const { earliest, progress, required } = answer.value;
        expect(progress[Math.ceil(earliest - 1e-9) - 1] ?? Infinity).toBeGreaterThanOrEqual(required - 1e-6);
        const whole = Math.floor(earliest - 1e-6);
        // BS 8110 and the clocks have a least time as well, which no warmth shortens.
        if (rule.kind === "maturity" || rule.kind === "equivalent-age" || rule.kind === "strength") expect(whole === 0 ? 0 : (progress[whole - 1] ?? 0)).toBeLessThan(required);
      }),
      { numRuns: 60 },
    ));

  it("does not run past a gap in the record, nor past its end", () =>
    fc.assert(
      fc.property(rules, records, (rule, temperatures) => {
        const answer = timed(rule, temperatures);
        if (!answer.ok) {
          expect(answer.failure.limit).toBe("length of the temperature record (h)");
          return;
        }
        const needed = Math.ceil(answer.value.earliest - 1e-9);
        const hourly = temperatures.map(degC);
        expect(stripTimeWorking({ rule, hourly: hourly.slice(0, needed - 1), measured: "concrete" }).ok).toBe(false);
        expect(stripTimeWorking({ rule, hourly: hourly.map((temperature, hour) => (hour === needed - 1 ? null : temperature)), measured: "concrete" })).toMatchObject({ ok: false, failure: { limit: "temperature record" } });
        expect(valueOf(stripTimeWorking({ rule, hourly: hourly.map((temperature, hour) => (hour >= needed ? null : temperature)), measured: "concrete" })).earliest).toBe(answer.value.earliest);
      }),
      { numRuns: 60 },
    ));
});

describe("maturity and equivalent age", () => {
  const gathered = (rule: StripRule, temperatures: readonly number[]): number => valueOf(timed(rule, temperatures)).progress.at(-1) ?? Number.NaN;
  const soon = (rule: StripRule & { required: number }): StripRule => ({ ...rule, required: 1 }) as StripRule;
  const day = fc.array(between(8, 30), { minLength: 12, maxLength: 40 });

  it("of two records one after the other is the sum of both, in whatever order the hours came", () =>
    fc.assert(
      fc.property(fc.oneof(maturity, equivalentAge), day, day, (rule, first, second) => {
        const both = gathered(soon(rule), [...first, ...second]);
        expect(gathered(soon(rule), first) + gathered(soon(rule), second)).toBeCloseTo(both, 6);
        expect(gathered(soon(rule), [...second, ...first].sort((a, b) => a - b))).toBeCloseTo(both, 6);
      }),
    ));
  it("at the reference temperature an hour counts for an hour", () =>
    fc.assert(
      fc.property(equivalentAge, fc.integer({ min: 10, max: 60 }), (rule, count) => {
        if (rule.age.kind === "en-1992") return;
        const { reference } = rule.age;
        expect(gathered(soon(rule), Array.from({ length: count }, () => reference))).toBeCloseTo(count, 9);
      }),
    ));
  it("by EN 1992-1-1 Annex B the age at 20 degC is the age within a quarter of a percent: its constants are rounded (as printed, from memory)", () =>
    expect(gathered({ kind: "equivalent-age", age: { kind: "en-1992" }, required: hours(1) }, Array.from({ length: 48 }, () => 20)) / 48).toBeCloseTo(1, 2));
  it("both Arrhenius forms are one formula: Q = E / R", () =>
    fc.assert(
      fc.property(between(25, 60), between(15, 25).map(degC), day, (energy, reference, temperatures) => {
        const arrhenius = gathered({ kind: "equivalent-age", age: { kind: "arrhenius", activationEnergyKjPerMol: energy, reference }, required: hours(1) }, temperatures);
        expect(gathered({ kind: "equivalent-age", age: { kind: "astm-c1074", q: (energy * 1000) / 8.314, reference }, required: hours(1) }, temperatures)).toBeCloseTo(arrhenius, 6);
      }),
    ));
  it("hours under the datum add nothing", () => {
    const rule: StripRule = { kind: "maturity", datum: degC(0), required: 1 };
    expect(gathered(rule, [10, -5, 10])).toBe(20);
  });
});
