/**
 * US Army Engineer School subcourse EN5466 edition A, lesson 3 (armyengineer.tpub.com, pages EN5466A0078 and EN5466A0091); the spacings
 * stand in US Navy training manual 14045 too. Pattern only: the two manuals differ on the sheathing.
 */
import { describe, expect, it } from "vitest";
import { kN, kN_per_m3, mm } from "#lib/kernel/units.ts";
import { KN_PER_M3_PER_PCF } from "#lib/kernel/us-units.ts";
import { aciColumnPressureUs } from "#lib/trade/engineering/pressure/aci-347-column.ts";
import { degF, ft, ft_per_h, pcf } from "#lib/trade/engineering/engineering-units.ts";
import { designShutter } from "#lib/trade/shutter/design-shutter.ts";
import { EXAMPLE_CLAMP_KINDS, EXAMPLE_POUR, EXAMPLE_RULE } from "#lib/trade/shutter/example-rule.ts";

describe("US Army Engineer School EN5466", () => {
  it("CASE-A4, contrast: the old chart's 400 psf for R 2.025 ft/h at 70 degF is under the minimum of 600 psf", () => {
    expect((6 * 27) / 80).toBeCloseTo(2.025, 2);
    const answer = aciColumnPressureUs({ riseRate: ft_per_h(2.025), temperature: degF(70), density: pcf(150), pourHeight: ft(12), chemistry: 1 });
    expect(answer.ok && answer.value.limit).toBe(600);
  });
  it("CASE-C10: 9 ft column, 36 in., gaps 8, 8, 10, 11, 12, 15, 17, 17, 10 in. from the base: ours too never close up going up, but for the top one", () => {
    const answer = designShutter({
      section: { shape: "rectangular", width: mm(914.4), depth: mm(914.4) },
      formHeight: mm(9 * 304.8),
      rule: EXAMPLE_RULE,
      pour: { ...EXAMPLE_POUR, concreteDensity: kN_per_m3(150 * KN_PER_M3_PER_PCF) },
      clampKinds: EXAMPLE_CLAMP_KINDS.map((kind) => ({ ...kind, sideCapacity: kN(25) })),
    });
    if (!answer.ok) throw new Error(answer.failure.message);
    const { heights } = answer.value.clamps;
    const gaps = heights.slice(1).map((height, index) => height - (heights[index] ?? 0));
    expect(gaps.length).toBeGreaterThan(3);
    expect(gaps.slice(1, -1).every((gap, index) => gap >= (gaps[index] ?? 0))).toBe(true);
    expect(gaps[gaps.length - 2]).toBeGreaterThan(gaps[0] ?? 0);
  });
});
