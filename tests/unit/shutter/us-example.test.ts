import { describe, expect, it } from "vitest";
import { shutterRule } from "#lib/contracts/shutter.ts";
import { mm } from "#lib/kernel/units.ts";
import { designShutter } from "#lib/trade/shutter/design-shutter.ts";
import { EXAMPLE_CLAMP_KINDS, EXAMPLE_POUR_US, EXAMPLE_RULE_US } from "#lib/trade/shutter/example-rule.ts";

const inches = (value: number) => mm(value * 25.4);

/** 1 in. is 25.4 mm exactly (NIST SP 811, 2008 ed., appendix B.8). */
describe("the example rule in inches", () => {
  it("can be kept as it is by the form that asks for it, and with a module of one inch", () => {
    expect(shutterRule.safeParse(EXAMPLE_RULE_US).error).toBeUndefined();
    expect(shutterRule.safeParse({ ...EXAMPLE_RULE_US, clampSpacing: { ...EXAMPLE_RULE_US.clampSpacing, module: 25.43 } }).success).toBe(false);
  });

  it.each([[18, 18, 150], [14, 26, 150], [12, 12, 108], [24, 24, 120]])("boxes %i x %i in., %i in. high, with clamps on whole inches and panels on sixteenths", (width, depth, height) => {
    const answer = designShutter({ section: { shape: "rectangular", width: inches(width), depth: inches(depth) }, formHeight: inches(height), rule: EXAMPLE_RULE_US, pour: EXAMPLE_POUR_US, clampKinds: EXAMPLE_CLAMP_KINDS });
    if (!answer.ok) throw new Error(answer.failure.message);
    for (const clamp of answer.value.clamps.heights) {
      expect(Math.abs(clamp / 25.4 - Math.round(clamp / 25.4))).toBeLessThan(1e-9);
      expect(String(clamp)).toMatch(/^\d+(\.\d)?$/);
    }
    const [over] = answer.value.panels;
    // Two plies of 3/4 in. on a panel that runs over.
    expect((over?.width ?? 0) / 25.4).toBeCloseTo(width + 1.5, 9);
    expect(new Set(answer.value.cutting.flatMap(({ part, material }) => (part === "fillet" ? [material] : [])))).toEqual(new Set(["Fillet 3/4 × 3/4 in"]));
  });
});
