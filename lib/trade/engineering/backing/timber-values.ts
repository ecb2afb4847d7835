import { N_per_mm2 } from "#lib/kernel/units.ts";
import type { Millimetres, NewtonsPerSquareMillimetre } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { SafetyFormat } from "../safety-format.ts";
import { refusal, term } from "../working.ts";
import type { Refusal, Working } from "../working.ts";
import type { En338Class, NdsFactors, TimberChoice } from "./timber-choice.ts";

export type TimberValues = { readonly bendingStress: NewtonsPerSquareMillimetre; readonly shearStress: NewtonsPerSquareMillimetre; readonly modulus: NewtonsPerSquareMillimetre; readonly working: Working };
type Stresses = { readonly bending: NewtonsPerSquareMillimetre; readonly shear: NewtonsPerSquareMillimetre; readonly modulus: NewtonsPerSquareMillimetre };

/** f_m,k, f_v,k and E_0,mean. */
const EN_338: Readonly<Record<En338Class, readonly [number, number, number]>> = {
  C14: [14, 3.0, 7000], C16: [16, 3.2, 8000], C18: [18, 3.4, 9000], C20: [20, 3.6, 9500], C22: [22, 3.8, 10_000], C24: [24, 4.0, 11_000], C27: [27, 4.0, 11_500], C30: [30, 4.0, 12_000],
};
const CRACKS = 0.67;

/**
 * Design values of softwood by its EN 338 class.
 *
 * Formula: f_m,d = k_mod f_m,k / gamma_M; f_v,d = k_cr k_mod f_v,k / gamma_M with k_cr = 0.67; E = E_0,mean.
 * Parameters: strengthClass [-] C14 to C30; kMod [-], 0.3 to 1.1; gammaM [-], 1.0 to 1.5.
 * Result: f_m,d, f_v,d and E [N/mm2], for the partial-factor format.
 * Limits: factors outside those ranges are refused by `timberValues`. The depth factor of shallow timbers is not taken: it would only raise f_m.
 * Example: C18, k_mod = 0.7, gamma_M = 1.3: f_m,d = 9.692, f_v,d = 1.2266, E = 9000 N/mm2.
 * Source: EN 338:2016 Table 1 and EN 1995-1-1:2004 + A1 cl. 6.1.7, from memory.
 */
export function en338DesignValues(strengthClass: En338Class, kMod: number, gammaM: number): Stresses {
  const [bending, shear, modulus] = EN_338[strengthClass];
  return { bending: N_per_mm2((kMod * bending) / gammaM), shear: N_per_mm2((CRACKS * kMod * shear) / gammaM), modulus: N_per_mm2(modulus) };
}

/**
 * Allowable values of lumber by reference values and named factors.
 *
 * Formula: F_b' = F_b C_D C_M C_F C_fu C_r; F_v' = F_v C_D C_M; E' = E C_M, each C_M its own.
 * Parameters: reference F_b, F_v and E [N/mm2 or psi], over 0; factors [-], each 1 where it does not apply.
 * Result: F_b', F_v', E' in the unit given [N/mm2 or psi], for the permissible-stress format.
 * Limits: dimension lumber; temperature, incising and stability factors are 1 (dry heat, untreated, backing held by its ply).
 * Example: F_b = 850, C_D 1.25, C_M 0.85, C_F 1.3, C_fu 1.05, C_r 1: 1232.8 psi.
 * Source: construction lectures (Allen), weeks 7 and 8, after the National Design Specification for Wood Construction (2005 and later).
 */
export function ndsAdjustedValues(reference: Stresses, factors: NdsFactors): Stresses {
  const { loadDuration, wetBending, wetShear, wetModulus, size, flatUse, repetitive } = factors;
  return {
    bending: N_per_mm2(reference.bending * loadDuration * wetBending * size * flatUse * repetitive),
    shear: N_per_mm2(reference.shear * loadDuration * wetShear),
    modulus: N_per_mm2(reference.modulus * wetModulus),
  };
}

/**
 * Allowable bearing stress of lumber across its grain.
 *
 * Formula: F_cp' = F_cp C_M; the load-duration factor does not apply.
 * Parameters: reference F_cp [N/mm2 or psi], over 0; wet C_M [-].
 * Result: F_cp' in the unit given [N/mm2 or psi].
 * Limits: no bearing-length factor is taken: it would only raise the value.
 * Example: 565 psi, C_M 0.67: 378.55 psi.
 * Source: construction lectures (Allen), week 8, after the National Design Specification for Wood Construction (2005 and later).
 */
export const ndsBearingStress = (reference: NewtonsPerSquareMillimetre, wet: number): NewtonsPerSquareMillimetre => N_per_mm2(reference * wet);

/**
 * Depth factor of BS 5268, K7.
 *
 * Formula: 1.17 up to 72 mm; (300 / h)^0.11 to 300 mm.
 * Parameters: depth h [mm], 1 to 300.
 * Result: K7 [-].
 * Limits: deeper timbers answer with 1, which is at or over the standard's value only at 300 mm: they are refused by `timberValues`.
 * Example: h = 122 mm: (300 / 122)^0.11 = 1.1040.
 * Source: BS 5268-2:2002 cl. 2.10.6; as on a column formwork sheet to BS 5975:2008.
 */
export const bs5268DepthFactor = (depth: Millimetres): number => (depth <= 72 ? 1.17 : Math.max(1, (300 / depth) ** 0.11));

/**
 * Permissible values of softwood by BS 5268 grade stresses.
 *
 * Formula: f = grade K2 K3 K7 K8; f_v = grade K2 K3 K8 (times K7 where the sheet takes it there too); E = grade K2.
 * Parameters: choice with grade stresses [N/mm2], wet K2 [-] each, duration K3 [-], loadSharing K8 [-]; depth h [mm], up to 300.
 * Result: f, f_v, E [N/mm2], for the permissible-stress format.
 * Limits: solid timber up to 300 mm deep.
 * Example: 7.5 N/mm2, K2 0.8, K3 1.4, K8 1, h = 122 mm: 9.274 N/mm2.
 * Source: BS 5268-2:2002; column formwork sheet to BS 5975:2008+A1 and the Concrete Society guide, 2nd ed.
 */
export function bs5268PermissibleValues(choice: Extract<TimberChoice, { kind: "bs-5268" }>, depth: Millimetres): Stresses {
  const { bending, shear, modulus, wet, duration, loadSharing } = choice;
  const deep = bs5268DepthFactor(depth);
  return {
    bending: N_per_mm2(bending * wet.bending * duration * deep * loadSharing),
    shear: N_per_mm2(shear * wet.shear * duration * (choice.depthFactorInShear ? deep : 1) * loadSharing),
    modulus: N_per_mm2(modulus * wet.modulus),
  };
}

const FORMAT_OF = { "en-338": "partial-factor", nds: "permissible-stress", "bs-5268": "permissible-stress" } as const;
const SOURCES = {
  own: "Values as entered, every factor in",
  "en-338": "EN 338:2016 and EN 1995-1-1:2004 + A1, from memory",
  nds: "National Design Specification for Wood Construction, as in the construction lectures (Allen)",
  "bs-5268": "BS 5268-2:2002, as on a column formwork sheet to BS 5975:2008",
} as const;

/** In the order of the choice's own fields; a factor of 0 or one far off is a slip. */
function factorsOf(choice: TimberChoice): readonly (readonly [string, number, number, number])[] {
  switch (choice.kind) {
    case "own": return [];
    case "en-338": return [["k_mod", choice.kMod, 0.3, 1.1], ["gamma_M", choice.gammaM, 1, 1.5]];
    case "nds": {
      const f = choice.factors;
      return [["C_D", f.loadDuration, 0.5, 2], ["C_M bending", f.wetBending, 0.5, 1], ["C_M shear", f.wetShear, 0.5, 1], ["C_M modulus", f.wetModulus, 0.5, 1], ["C_F", f.size, 0.5, 1.6], ["C_fu", f.flatUse, 0.5, 1.3], ["C_r", f.repetitive, 1, 1.15]];
    }
    case "bs-5268": return [["K2 bending", choice.wet.bending, 0.3, 1], ["K2 shear", choice.wet.shear, 0.3, 1], ["K2 modulus", choice.wet.modulus, 0.3, 1], ["K3", choice.duration, 1, 1.75], ["K8", choice.loadSharing, 1, 1.1]];
  }
}

const stressesOf = (choice: TimberChoice, depth: Millimetres): Stresses => {
  switch (choice.kind) {
    case "own": return { bending: choice.bendingStress, shear: choice.shearStress, modulus: choice.modulus };
    case "en-338": return en338DesignValues(choice.strengthClass, choice.kMod, choice.gammaM);
    case "nds": return ndsAdjustedValues(choice, choice.factors);
    case "bs-5268": return bs5268PermissibleValues(choice, depth);
  }
};

/**
 * What a timber may be stressed to, in one safety format.
 *
 * Formula: by the kind of the choice: own, EN 338, NDS or BS 5268.
 * Parameters: choice; depth [mm]; format [-], permissible-stress or partial-factor.
 * Result: bending and shear stress and modulus [N/mm2] and the working.
 * Limits: a choice of one format in the other is refused: EN 338 goes with partial factors, NDS and BS 5268 with permissible stresses; factors
 *   outside their usual ranges and BS 5268 depths over 300 mm are refused.
 * Example: C18, k_mod = 0.7, gamma_M = 1.3, partial factors: 9.692 N/mm2 in bending.
 * Source: as of the kind: EN 338:2016, National Design Specification (2005), BS 5268-2:2002.
 */
export function timberValues(choice: TimberChoice, depth: Millimetres, format: SafetyFormat): Result<TimberValues, Refusal> {
  const source = SOURCES[choice.kind];
  const refuse = (limit: string, given: number | string, allowed: string) => fail(refusal({ limit, given, allowed, source, message: "Correct the timber, or choose the other safety format." }));
  if (choice.kind !== "own" && FORMAT_OF[choice.kind] !== format.kind) return refuse("safety format", format.kind, `${FORMAT_OF[choice.kind]} for ${choice.kind} values`);
  const factors = factorsOf(choice);
  const odd = factors.find(([, given, least, most]) => !(given >= least && given <= most));
  if (odd !== undefined) return refuse(odd[0], odd[1], `${odd[2]} to ${odd[3]}`);
  if (choice.kind === "bs-5268" && depth > 300) return refuse("timber depth (mm)", depth, "up to 300 mm");
  const { bending, shear, modulus } = stressesOf(choice, depth);
  const working: Working = {
    title: `Timber, ${format.kind} format`,
    inputs: [term("kind", choice.kind === "en-338" ? choice.strengthClass : choice.kind, ""), ...factors.map(([name, value]) => term(name, value, ""))],
    formula: "values times their factors",
    steps: [term("shear stress", shear, "N/mm2"), term("E", modulus, "N/mm2")],
    result: term("bending stress", bending, "N/mm2"),
    source,
  };
  return ok({ bendingStress: bending, shearStress: shear, modulus, working });
}
