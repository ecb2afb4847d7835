/** The example in each pressure formula's comment, worked by hand from its inputs. */
import { describe, expect, it } from "vitest";
import { degC, hours, kN_per_m, kN_per_m3, kPa, m, m_per_h, mm } from "#lib/kernel/units.ts";
import { degF, ft, ft_per_h, pcf } from "#lib/trade/engineering/engineering-units.ts";
import { aciPressureBefore2001 } from "#lib/trade/engineering/pressure/aci-347-before-2001.ts";
import { aciEquation, aciWallPressureSi, aciWallPressureUs } from "#lib/trade/engineering/pressure/aci-347-wall.ts";
import { din1980Pressure } from "#lib/trade/engineering/pressure/din-18218-1980.ts";
import { din2010Pressure, dinSettingFactor, dinTemperatureFactor } from "#lib/trade/engineering/pressure/din-18218-2010.ts";
import { batterUplift, pressureResultant } from "#lib/trade/engineering/pressure/resultant.ts";
import { loadFactor } from "#lib/trade/engineering/safety-format.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

describe("worked pressures in the comments", () => {
  it("ACI 347 walls: 1.2 (150 + 43400 / 68 + 2800 x 9.2 / 68) = 1400.5 psf; 1.2 (7.2 + 1156 / 36.8 + 244 x 2.7 / 36.8) = 67.82 kPa", () => {
    expect(valueOf(aciWallPressureUs({ riseRate: ft_per_h(9.2), temperature: degF(68), density: pcf(147), pourHeight: ft(17.5), chemistry: 1.2 })).limit).toBeCloseTo(1400.5, 1);
    expect(valueOf(aciWallPressureSi({ riseRate: m_per_h(2.7), temperature: degC(19), density: kN_per_m3(23.5), pourHeight: m(5.2), chemistry: 1.2 })).limit).toBeCloseTo(67.82, 2);
  });
  it("ACI 347 branches, each side of every step", () => {
    expect([aciEquation("us", 9, 12, 5.5), aciEquation("us", 9, 16, 5.5), aciEquation("us", 9, 16, 16)]).toEqual(["column", "wall", "liquid head"]);
    expect([aciEquation("us", 6.5, 30, 40), aciEquation("us", 6.6, 14, 7), aciEquation("us", 6.6, 14, 6.9), aciEquation("us", 6.6, 14.1, 6.9), aciEquation("us", 6.6, 14, 15)]).toEqual(["column", "wall", "column", "wall", "wall"]);
    expect([aciEquation("si", 2, 9, 12), aciEquation("si", 2.1, 4.2, 2), aciEquation("si", 2.1, 4.3, 2), aciEquation("si", 2.1, 4, 4.6)]).toEqual(["column", "column", "wall", "liquid head"]);
  });
  it("ACI 347 before 2001: a column at 17 ft/h and 47 degF, 150 + 3255.3 = 3405.3, capped at 3000 psf", () => {
    expect(150 + (9000 * 17) / 47).toBeCloseTo(3405.3, 1);
    expect(valueOf(aciPressureBefore2001({ isColumn: true, riseRate: ft_per_h(17), temperature: degF(47), density: pcf(150), pourHeight: ft(26) })).limit).toBe(3000);
  });
  it("DIN 18218: 1980 (16 + 19) x 1.09 = 38.15 kPa; 2010 (14 x 1.7 + 18) x 1.154 x 1.09 x 1.02 = 53.63 kPa", () => {
    expect(valueOf(din1980Pressure({ consistency: "K2", riseRate: m_per_h(1.6), temperature: degC(12), density: kN_per_m3(25), pourHeight: m(3.4) })).limit).toBeCloseTo(38.15, 9);
    expect(valueOf(din2010Pressure({ consistency: "F3", riseRate: m_per_h(1.7), settingEnd: hours(7), temperature: degC(12), density: kN_per_m3(25.5), pourHeight: m(4.3) })).limit).toBeCloseTo(53.63, 2);
    expect(dinSettingFactor("F2", hours(8.5))).toBeCloseTo(1.1855, 9);
    expect(dinTemperatureFactor("F3", degC(11))).toBeCloseTo(1.12, 9);
  });
  it("resultant: 44.9 (3 - 1.796 / 2) = 94.38 kN/m, its height by the two parts of the line; uplift at 35 mm/m 3.303 kN/m", () => {
    const { force, height, average } = pressureResultant({ limit: kPa(44.9), liquidDepth: m(1.796), pourHeight: m(3) });
    expect(force).toBeCloseTo(94.38, 2);
    expect(average).toBeCloseTo(31.46, 2);
    // A rectangle of 1.204 m at 0.602 m, and a triangle of 1.796 m with its third point at 1.204 + 0.5987 m.
    const moment = 44.9 * 1.204 * 0.602 + ((44.9 * 1.796) / 2) * (1.204 + 1.796 / 3);
    expect(height).toBeCloseTo(moment / force, 9);
    expect(batterUplift(kN_per_m(94.38), mm(35))).toBeCloseTo(3.303, 3);
  });
  it("load factor: 1 on a service pressure against permissible stresses, as stated with partial factors, refused outside 1 to 2", () => {
    expect(valueOf(loadFactor({ kind: "permissible-stress" }, "service"))).toBe(1);
    expect(valueOf(loadFactor({ kind: "partial-factor", loadFactor: 1.5 }, "characteristic"))).toBe(1.5);
    expect([0.9, 2.1].map((factor) => loadFactor({ kind: "partial-factor", loadFactor: factor }, "service").ok)).toEqual([false, false]);
  });
});
