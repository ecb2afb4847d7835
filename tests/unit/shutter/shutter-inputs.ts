import fc from "fast-check";
import { kN, kN_per_m3, mm } from "#lib/kernel/units.ts";
import { PRESSURE_METHODS } from "#lib/trade/engineering/pour-conditions.ts";
import { designShutter } from "#lib/trade/shutter/design-shutter.ts";
import { EXAMPLE_CLAMP_KINDS, EXAMPLE_POUR, EXAMPLE_RULE } from "#lib/trade/shutter/example-rule.ts";
import type { FormSet, ShutterInput } from "#lib/trade/shutter/form-set.ts";
import { JOINT_TYPES } from "#lib/trade/shutter/shutter-rule.ts";
import type { ShutterRule } from "#lib/trade/shutter/shutter-rule.ts";

export const rectangular = (width: number, depth: number) => ({ shape: "rectangular" as const, width: mm(width), depth: mm(depth) });

/** A rectangular column of 350 × 550 mm and 3.15 m in the example rule, with what a test wants changed. */
export const anInput = (change: Partial<ShutterInput> = {}, rule: Partial<ShutterRule> = {}): ShutterInput => ({
  section: rectangular(350, 550),
  formHeight: mm(3150),
  rule: { ...EXAMPLE_RULE, ...rule },
  pour: EXAMPLE_POUR,
  clampKinds: EXAMPLE_CLAMP_KINDS,
  ...change,
});

export function formSetOf(input: ShutterInput): FormSet {
  const answer = designShutter(input);
  if (!answer.ok) throw new Error(answer.failure.message);
  return answer.value;
}

export const inputs: fc.Arbitrary<ShutterInput> = fc
  .record({
    width: fc.integer({ min: 220, max: 1000 }),
    depth: fc.integer({ min: 220, max: 1000 }),
    height: fc.integer({ min: 1500, max: 6500 }),
    joint: fc.constantFrom(...JOINT_TYPES),
    overPair: fc.constantFrom("A-C" as const, "B-D" as const),
    thickness: fc.integer({ min: 170, max: 210 }).map((tenths) => tenths / 10),
    proud: fc.integer({ min: 0, max: 17 }),
    orientation: fc.constantFrom("flat" as const, "edge" as const),
    method: fc.constantFrom(...PRESSURE_METHODS),
    density: fc.integer({ min: 23, max: 26 }),
    capacity: fc.integer({ min: 15, max: 60 }),
  })
  .map((drawn) => ({
    section: rectangular(drawn.width, drawn.depth),
    formHeight: mm(drawn.height),
    rule: {
      ...EXAMPLE_RULE,
      joint: drawn.joint,
      overPair: drawn.overPair,
      edgeProud: mm(drawn.proud),
      ply: { ...EXAMPLE_RULE.ply, thickness: mm(drawn.thickness) },
      backing: { ...EXAMPLE_RULE.backing, orientation: drawn.orientation },
    },
    pour: { ...EXAMPLE_POUR, method: drawn.method, concreteDensity: kN_per_m3(drawn.density) },
    clampKinds: EXAMPLE_CLAMP_KINDS.map((kind) => ({ ...kind, sideCapacity: kN(drawn.capacity) })),
  }));
