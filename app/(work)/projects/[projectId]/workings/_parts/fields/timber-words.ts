import type { z } from "zod";
import type { formatShape, timberShape } from "#lib/contracts/workings/beam-parts.ts";

export type TimberGiven = z.input<typeof timberShape>;
export type FormatGiven = z.input<typeof formatShape>;
export type TimberKind = TimberGiven["values"]["kind"];
type Values<Kind extends TimberKind> = Extract<TimberGiven["values"], { kind: Kind }>;

export const TIMBER_CHOICES = [
  { value: "own", label: "Values of my own", note: "every factor in, as the format asks" },
  { value: "en-338", label: "EN 338 class", note: "k_mod and γ_M; partial factors only" },
  { value: "nds", label: "NDS reference values", note: "named factors; permissible stresses only" },
  { value: "bs-5268", label: "BS 5268 grade stresses", note: "K2, K3, K8; permissible stresses only" },
] as const;

/** What the fields show when another kind of value is chosen: the standards' own or neutral factors, stresses to be read from its tables. */
export const FRESH_VALUES: { readonly [Kind in TimberKind]: Values<Kind> } = {
  "own": { kind: "own", bending_stress_N_per_mm2: Number.NaN, shear_stress_N_per_mm2: Number.NaN, modulus_N_per_mm2: Number.NaN },
  "en-338": { kind: "en-338", strength_class: "C16", k_mod: 0.7, gamma_M: 1.3 },
  "nds": {
    kind: "nds", bending_N_per_mm2: Number.NaN, shear_N_per_mm2: Number.NaN, modulus_N_per_mm2: Number.NaN,
    factors: { load_duration: 1, wet_bending: 1, wet_shear: 1, wet_modulus: 1, size: 1, flat_use: 1, repetitive: 1 },
  },
  "bs-5268": {
    kind: "bs-5268", bending_N_per_mm2: Number.NaN, shear_N_per_mm2: Number.NaN, modulus_N_per_mm2: Number.NaN,
    wet: { bending: 0.8, shear: 0.9, modulus: 0.8 }, duration: 1, load_sharing: 1, depth_factor_in_shear: false,
  },
};

export const NDS_FACTORS = [
  ["load_duration", "C_D duration"], ["wet_bending", "C_M bending"], ["wet_shear", "C_M shear"], ["wet_modulus", "C_M modulus"],
  ["size", "C_F size"], ["flat_use", "C_fu flat use"], ["repetitive", "C_r repetitive"],
] as const;

export const timberLabel = (kind: TimberKind): string => TIMBER_CHOICES.find(({ value }) => value === kind)?.label ?? kind;
