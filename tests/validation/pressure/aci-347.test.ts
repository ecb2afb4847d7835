/**
 * ACI 347-04 and ACI 347R-14, column equation.
 * Numbers of CASE-M and of the two tables are computed from the published equation (bodies: Nunnally, construction methods text,
 * ch. 12, eq. 12-1; coefficients: construction lectures (Allen), week 7; minimum and liquid-head bound: a mill's reprint of the APA
 * tables; the SI text and C_w, C_c tables from memory of the standard). They are arithmetic, not published figures.
 */
import { describe, expect, it } from "vitest";
import { degC, kN_per_m3, m, m_per_h } from "#lib/kernel/units.ts";
import { aciChemistryCoefficient, aciUnitWeightCoefficientSi, aciUnitWeightCoefficientUs } from "#lib/trade/engineering/pressure/aci-347-coefficients.ts";
import { aciColumnPressureSi, aciColumnPressureUs } from "#lib/trade/engineering/pressure/aci-347-column.ts";
import { degF, ft, ft_per_h, pcf } from "#lib/trade/engineering/engineering-units.ts";

const us = (rate: number, temperature: number, height: number, density = 150, chemistry = 1) => {
  const answer = aciColumnPressureUs({ riseRate: ft_per_h(rate), temperature: degF(temperature), density: pcf(density), pourHeight: ft(height), chemistry });
  if (!answer.ok) throw new Error(answer.failure.message);
  return answer.value;
};
const si = (rate: number, temperature: number, height = 100, density = 23.5) => {
  const answer = aciColumnPressureSi({ riseRate: m_per_h(rate), temperature: degC(temperature), density: kN_per_m3(density), pourHeight: m(height), chemistry: 1 });
  if (!answer.ok) throw new Error(answer.failure.message);
  return answer.value;
};

describe("ACI 347 column equation, US units", () => {
  it("CASE-M1: R 6 ft/h, 60 degF, 12 ft, 150 pcf: 1050 psf within 1", () => expect(Math.abs(us(6, 60, 12).limit - 1050)).toBeLessThanOrEqual(1));
  it("CASE-M3: 120 pcf and C_c 1.2: C_w 0.9138, 1151 psf within 1", () => {
    expect(Math.abs(aciUnitWeightCoefficientUs(pcf(120)) - 0.9138)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(us(6, 60, 12, 120, aciChemistryCoefficient("portland", true)).limit - 1151)).toBeLessThanOrEqual(1);
  });
  it("CASE-M4: a pour of 8 ft is bounded by its own head: 1200, not 1436 psf", () => {
    expect(us(10, 70, 8)).toMatchObject({ limit: 1200, governs: "liquid head" });
    expect(Math.abs(us(10, 70, 100).limit - 1436)).toBeLessThanOrEqual(1);
  });
  it("CASE-M5: the minimum of 600 psf never lifts a pour of 3 ft over its head of 450 psf", () => {
    expect(us(2, 80, 3)).toMatchObject({ limit: 450, governs: "liquid head" });
    expect(us(2, 80, 30)).toMatchObject({ limit: 600, governs: "minimum" });
  });
  it.each([
    [4, [1050, 870, 750, 664, 600, 600]],
    [6, [1500, 1230, 1050, 921, 825, 750]],
    [8, [1950, 1590, 1350, 1179, 1050, 950]],
    [10, [2400, 1950, 1650, 1436, 1275, 1150]],
  ])("table at R %d ft/h, 40 to 90 degF, within 1 psf", (rate, row) => {
    row.forEach((expected, index) => expect(Math.abs(us(rate, 40 + 10 * index, 100).limit - expected)).toBeLessThanOrEqual(1));
  });
  it("the caps of the text before 2001 (3000 psf for columns) are gone", () => expect(us(15, 40, 100).limit).toBeCloseTo(150 + (9000 * 15) / 40, 6));
});

describe("ACI 347 column equation, SI units", () => {
  it("CASE-M2: R 1.8288 m/h, 15.556 degC: 50.24 kPa within 0.05", () => expect(Math.abs(si(1.8288, 15.556).limit - 50.24)).toBeLessThanOrEqual(0.05));
  it.each([
    [2, [76.1, 63.7, 55.1, 48.7, 43.9, 40.0]],
    [3, [110.5, 91.9, 79.0, 69.5, 62.2, 56.5]],
    [5, [179.3, 148.4, 126.9, 111.0, 98.9, 89.3]],
  ])("table at R %d m/h, 5 to 30 degC, within 0.06 kPa", (rate, row) => {
    row.forEach((expected, index) => expect(Math.abs(si(rate, 5 + 5 * index).limit - expected)).toBeLessThanOrEqual(0.06));
  });
  it("keeps the SI minimum of 30 kPa apart from 600 psf", () => expect(si(0.5, 25)).toMatchObject({ limit: 30, governs: "minimum" }));
  it("coefficients of density: 0.80 at least, 1 from 2240 to 2400 kg/m3, rho / 2320 over that (table from memory)", () => {
    const cw = (kilograms: number) => aciUnitWeightCoefficientSi(kN_per_m3((kilograms * 9.80665) / 1000));
    expect([cw(1200), cw(2240), cw(2400)]).toEqual([0.8, 1, 1]);
    expect(cw(2000)).toBeCloseTo(0.5 * (1 + 2000 / 2320), 9);
    expect(cw(2549)).toBeCloseTo(2549 / 2320, 9);
  });
  it("chemistry table (from memory)", () => {
    const row = (group: "portland" | "blend-low" | "blend-high") => [aciChemistryCoefficient(group, false), aciChemistryCoefficient(group, true)];
    expect([row("portland"), row("blend-low"), row("blend-high")]).toEqual([[1, 1.2], [1.2, 1.4], [1.4, 1.4]]);
  });
});
