import { z } from "zod";
import { mm, N_per_mm2 } from "#lib/kernel/units.ts";
import { EN_338_CLASSES } from "#lib/trade/engineering/backing/timber-choice.ts";
import type { BackingTimberInput, TimberChoice } from "#lib/trade/engineering/backing/timber-choice.ts";
import type { SafetyFormat } from "#lib/trade/engineering/safety-format.ts";
import { amount } from "./amounts.ts";

const stress = (about: string) => amount(0.001, 1000, about);
const modulus = amount(1, 1_000_000, "Modulus of elasticity.");
const factor = (about: string) => amount(0.01, 10, about);

const ndsFactors = z.strictObject({
  load_duration: factor("1 where it does not apply, as every factor here."),
  wet_bending: factor("Wet service, bending."), wet_shear: factor("Wet service, shear."), wet_modulus: factor("Wet service, modulus."),
  size: factor("Size."), flat_use: factor("Laid flat."), repetitive: factor("Repetitive members."),
});

const values = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("own"), bending_stress_N_per_mm2: stress("Permissible or design value, as the format asks; every factor in."),
    shear_stress_N_per_mm2: stress("As the bending stress."), modulus_N_per_mm2: modulus,
  }),
  z.strictObject({ kind: z.literal("en-338"), strength_class: z.enum(EN_338_CLASSES), k_mod: factor("Duration and moisture."), gamma_M: factor("Partial factor of the material.") }),
  z.strictObject({
    kind: z.literal("nds"), bending_N_per_mm2: stress("Reference value."), shear_N_per_mm2: stress("Reference value."), modulus_N_per_mm2: modulus, factors: ndsFactors,
  }),
  z.strictObject({
    kind: z.literal("bs-5268"), bending_N_per_mm2: stress("Grade stress."), shear_N_per_mm2: stress("Grade stress."), modulus_N_per_mm2: modulus,
    wet: z.strictObject({ bending: factor("K2, bending."), shear: factor("K2, shear."), modulus: factor("K2, modulus.") }),
    duration: factor("K3."), load_sharing: factor("K8."), depth_factor_in_shear: z.boolean().describe("The standard puts K7 on bending; some sheets put it on shear too."),
  }),
]);

export const timberShape = z.strictObject({
  breadth_mm: amount(1, 1000, "Along the ply."),
  depth_mm: amount(1, 1000, "Away from the ply."),
  values,
});

function toChoice(given: z.output<typeof values>): TimberChoice {
  switch (given.kind) {
    case "own":
      return { kind: "own", bendingStress: N_per_mm2(given.bending_stress_N_per_mm2), shearStress: N_per_mm2(given.shear_stress_N_per_mm2), modulus: N_per_mm2(given.modulus_N_per_mm2) };
    case "en-338":
      return { kind: "en-338", strengthClass: given.strength_class, kMod: given.k_mod, gammaM: given.gamma_M };
    case "nds": {
      const { load_duration, wet_bending, wet_shear, wet_modulus, size, flat_use, repetitive } = given.factors;
      const factors = { loadDuration: load_duration, wetBending: wet_bending, wetShear: wet_shear, wetModulus: wet_modulus, size, flatUse: flat_use, repetitive };
      return { kind: "nds", ...reference(given), factors };
    }
    case "bs-5268":
      return { kind: "bs-5268", ...reference(given), wet: given.wet, duration: given.duration, loadSharing: given.load_sharing, depthFactorInShear: given.depth_factor_in_shear };
  }
}

const reference = (given: { readonly bending_N_per_mm2: number; readonly shear_N_per_mm2: number; readonly modulus_N_per_mm2: number }) =>
  ({ bending: N_per_mm2(given.bending_N_per_mm2), shear: N_per_mm2(given.shear_N_per_mm2), modulus: N_per_mm2(given.modulus_N_per_mm2) });

export const toTimber = (given: z.output<typeof timberShape>): BackingTimberInput =>
  ({ breadth: mm(given.breadth_mm), depth: mm(given.depth_mm), timber: toChoice(given.values) });

export const formatShape = z
  .discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("permissible-stress") }),
    z.strictObject({ kind: z.literal("partial-factor"), load_factor: factor("On moments, shears and forces.") }),
  ])
  .describe("Loads as they are against permissible values, or loads times a factor against design resistances; never mixed.");

export const toFormat = (given: z.output<typeof formatShape>): SafetyFormat =>
  given.kind === "partial-factor" ? { kind: given.kind, loadFactor: given.load_factor } : given;
