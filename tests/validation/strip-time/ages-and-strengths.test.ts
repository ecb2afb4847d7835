/**
 * No published worked example of an equivalent age could be read. The numbers below are arithmetic from the formula as each source states it,
 * written out or worked with logarithms by hand; which sources were only recalled stands at each.
 */
import { describe, expect, it } from "vitest";
import { degC, hours, N_per_mm2 } from "#lib/kernel/units.ts";
import { arrheniusFactor, astmAgeFactor, en1992AgeFactor, en1992StrengthShare, plowmanStrength } from "#lib/trade/engineering/strip-time/maturity.ts";
import type { DegreeHours } from "#lib/trade/engineering/strip-time/maturity.ts";
import type { StripRule } from "#lib/trade/engineering/strip-time/strip-rule.ts";
import { bs8110Hours } from "#lib/trade/engineering/strip-time/strip-rules.ts";
import { stripTimeWorking } from "#lib/trade/engineering/workings/strip-time.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

const gathered = (rule: StripRule, temperatures: readonly number[]): number =>
  valueOf(stripTimeWorking({ rule, hourly: temperatures.map(degC), measured: "concrete" })).progress.at(-1) ?? Number.NaN;
const steady = (count: number, temperature: number): readonly number[] => Array.from({ length: count }, () => temperature);

describe("equivalent age", () => {
  it("[CASE-M11] Freiesleben Hansen and Pedersen (1977): 24 h at 10 degC, 40 kJ/mol, reference 20 degC: 4811.2 x (1/293.15 - 1/283.15) = -0.5796; e^-0.5796 = 0.5601; 13.44 h", () => {
    expect(Math.abs(arrheniusFactor(degC(10), degC(20), 40) - 0.5601)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(gathered({ kind: "equivalent-age", age: { kind: "arrhenius", activationEnergyKjPerMol: 40, reference: degC(20) }, required: hours(1) }, steady(24, 10)) - 13.44)).toBeLessThanOrEqual(0.01);
  });
  it("[CASE-M12] ASTM C1074-19 eq. (2), from memory: 12 h at 30 degC, Q 5000 K, reference 23 degC: -5000 x (1/303.15 - 1/296.15) = 0.3899; e^0.3899 = 1.4768; 17.72 h", () => {
    expect(Math.abs(astmAgeFactor(degC(30), degC(23), 5000) - 1.4768)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(gathered({ kind: "equivalent-age", age: { kind: "astm-c1074", q: 5000, reference: degC(23) }, required: hours(1) }, steady(12, 30)) - 17.72)).toBeLessThanOrEqual(0.01);
  });
  it("[CASE-M13] EN 1992-1-1:2004 eq. (B.10), from memory: 10 degC: 4000 / 283 - 13.65 = 0.4843; e^-0.4843 = 0.6161", () =>
    expect(Math.abs(en1992AgeFactor(degC(10)) - 0.6161)).toBeLessThanOrEqual(0.0005));
});

describe("strength", () => {
  it("[CASE-M14] EN 1992-1-1:2004 eq. (3.2), class N: 0.342, 0.598 and 0.779 of the 28-day strength after 1, 3 and 7 days", () => {
    [[1, 0.342], [3, 0.598], [7, 0.779]].forEach(([days = 0, share = 0]) => expect(Math.abs(en1992StrengthShare(days, "N") - share)).toBeLessThanOrEqual(0.001));
  });
  it("[CASE-M16] Plowman after textbook practice, from memory: 7 days of 12 h at 20 and 12 h at 10 degC: 84 x 31 + 84 x 21 = 4368 degC.h; 32 + 54 log 4.368 = 66.6 %; 26.6 N/mm2 of 40", () => {
    const days = Array.from({ length: 7 }, () => [...steady(12, 20), ...steady(12, 10)]).flat();
    const maturity = gathered({ kind: "maturity", datum: degC(-11), required: 1 }, days);
    expect(maturity).toBe(84 * 31 + 84 * 21);
    expect(Math.abs(plowmanStrength(maturity as DegreeHours, 32, 54, N_per_mm2(40)) - 26.6)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(plowmanStrength(maturity as DegreeHours, 32, 54, N_per_mm2(100)) - 66.6)).toBeLessThanOrEqual(0.1);
  });
});

describe("BS 8110-1:1997 Table 6.2, from memory", () => {
  it("[CASE-M15] 300 / (t + 10): 17.6, 15.0 and 11.5 h at 7, 10 and 16 degC, and 12 h at least when a form is stripped by it", () => {
    [[7, 17.6], [10, 15], [16, 11.5]].forEach(([temperature = 0, time = 0]) => expect(Math.abs(valueOf(bs8110Hours(degC(temperature))) - time)).toBeLessThanOrEqual(0.1));
    const earliest = (temperature: number) => valueOf(stripTimeWorking({ rule: { kind: "bs-8110" }, hourly: steady(30, temperature).map(degC), measured: "concrete" })).earliest;
    expect(Math.abs(earliest(10) - 15)).toBeLessThanOrEqual(0.01);
    expect(earliest(16)).toBeCloseTo(12, 6);
  });
});
