import type { Millimetres, NewtonsPerSquareMillimetre } from "#lib/kernel/units.ts";

export const EN_338_CLASSES = ["C14", "C16", "C18", "C20", "C22", "C24", "C27", "C30"] as const;
export type En338Class = (typeof EN_338_CLASSES)[number];

/** Factors of the US national design specification, each 1 where it does not apply. */
export type NdsFactors = {
  readonly loadDuration: number;
  readonly wetBending: number;
  readonly wetShear: number;
  readonly wetModulus: number;
  readonly size: number;
  readonly flatUse: number;
  readonly repetitive: number;
};

/**
 * own: permissible or design values as the format asks, every factor in.
 * en-338: characteristic values by class, brought to design values by k_mod and gamma_M; partial-factor format only.
 * nds: reference values times the named factors; permissible-stress format only.
 * bs-5268: grade stresses times K2 (wet), K3 (duration), K7 (depth), K8 (load sharing); permissible-stress format only.
 */
export type TimberChoice =
  | { readonly kind: "own"; readonly bendingStress: NewtonsPerSquareMillimetre; readonly shearStress: NewtonsPerSquareMillimetre; readonly modulus: NewtonsPerSquareMillimetre }
  | { readonly kind: "en-338"; readonly strengthClass: En338Class; readonly kMod: number; readonly gammaM: number }
  | { readonly kind: "nds"; readonly bending: NewtonsPerSquareMillimetre; readonly shear: NewtonsPerSquareMillimetre; readonly modulus: NewtonsPerSquareMillimetre; readonly factors: NdsFactors }
  | {
      readonly kind: "bs-5268";
      readonly bending: NewtonsPerSquareMillimetre;
      readonly shear: NewtonsPerSquareMillimetre;
      readonly modulus: NewtonsPerSquareMillimetre;
      readonly wet: { readonly bending: number; readonly shear: number; readonly modulus: number };
      readonly duration: number;
      readonly loadSharing: number;
      /** The standard puts K7 on bending; some sheets put it on shear too. */
      readonly depthFactorInShear: boolean;
    };

/** Solid and rectangular; the breadth lies along the ply, the depth goes away from it. */
export type BackingTimberInput = { readonly breadth: Millimetres; readonly depth: Millimetres; readonly timber: TimberChoice };
