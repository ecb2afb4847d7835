import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { psf } from "../engineering-units.ts";
import type { PoundsPerSquareFoot } from "../engineering-units.ts";
import { refusal } from "../working.ts";
import type { Refusal } from "../working.ts";
import type { ApaSection, ApaStresses, FaceGrain, Inches } from "./apa-sections.ts";

export const APA_SOURCE =
  "APA concrete-form plywood, span formulas: Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), viewer pages 157, 269, 327 and 369; one and two spans and shear deflection from memory";

export type ApaStrip = {
  readonly section: ApaSection;
  readonly stresses: ApaStresses;
  readonly grain: FaceGrain;
  readonly centres: Inches;
  readonly supportWidth: Inches;
  readonly spans: 1 | 2 | 3;
  readonly deflectionRatio: number;
};
export type ApaPressures = { readonly bending: PoundsPerSquareFoot; readonly shear: PoundsPerSquareFoot; readonly deflection: PoundsPerSquareFoot; readonly allowed: PoundsPerSquareFoot };

const COEFFICIENTS = { 1: { bending: 96, shear: 24, deflection: 921.6 }, 2: { bending: 96, shear: 19.2, deflection: 2220 }, 3: { bending: 120, shear: 20, deflection: 1743 } } as const;

/**
 * Largest pressure that US concrete-form plywood carries on equal spans.
 *
 * Formula: bending k_b F_b KS / l1^2; rolling shear k_s F_s (Ib/Q) / l2; deflection (l1 / n) / (l3^4 / (k_d E I) + C t^2 l2^2 / (1270 E_e I));
 *   k_b, k_s, k_d: one span 96, 24, 921.6; two 96, 19.2, 2220; three and more 120, 20, 1743; C = 120 across, 60 along.
 * Parameters: centres l1 [in], over supportWidth; l2 = l1 - supportWidth [in]; l3 = l2 + 1/4 in. on supports under 3 in., else + 5/8 in.;
 *   section (I [in4], KS [in3], Ib/Q [in2], t [in]); stresses [psi]; deflectionRatio n [-], over 0; spans [-] 1, 2 or 3 for more.
 * Result: pressures [psf] at which each limit is reached, and the least.
 * Limits: supports that touch are refused. Uniform load, equal spans. The published column headed 20 in. is 19.2 in., a panel in five.
 * Example: 5/8 in. class I across, 14 in. centres, 1.5 in. supports, n = 360: bending 423.0, shear 658.6, deflection 387.9 psf.
 * Source: APA concrete-form plywood; Peurifoy and Oberlender, 4th ed. (2010), viewer pages 157, 269, 327; one and two spans from memory.
 */
export function apaPressures(strip: ApaStrip): Result<ApaPressures, Refusal> {
  const { section, stresses, grain, centres, supportWidth, spans, deflectionRatio } = strip;
  const clear = centres - supportWidth;
  if (!(supportWidth > 0 && clear > 0 && deflectionRatio > 0))
    return fail(refusal({ limit: "centres of supports (in.)", given: centres, allowed: `over the supports' width of ${supportWidth} in.`, source: APA_SOURCE, message: "The supports would touch." }));
  const k = COEFFICIENTS[spans];
  const bent = clear + (supportWidth < 3 ? 0.25 : 0.625);
  const shape = grain === "across" ? 120 : 60;
  const perPound = bent ** 4 / (k.deflection * stresses.stiffness * section.inertia) + (shape * section.thickness ** 2 * clear * clear) / (1270 * stresses.shearStiffness * section.inertia);
  const bending = (k.bending * stresses.bending * section.sectionModulus) / (centres * centres);
  const shear = (k.shear * stresses.shear * section.rollingShear) / clear;
  const deflection = centres / deflectionRatio / perPound;
  return ok({ bending: psf(bending), shear: psf(shear), deflection: psf(deflection), allowed: psf(Math.min(bending, shear, deflection)) });
}

/**
 * Largest pressure on a board's free end beyond the outer support.
 *
 * Formula: bending 24 F_b KS / a^2; rolling shear 12 F_s (Ib/Q) / (a - b / 2) on a strip of 12 in.
 * Parameters: section (KS [in3], Ib/Q [in2]); stresses [psi]; overhang a [in], 0 or more, from the support's centre; supportWidth b [in].
 * Result: pressures [psf] at which each limit is reached; infinite without an overhang.
 * Limits: uniform load; the deflection of the free end is not limited.
 * Example: 5/8 in. class I across, a = 4.5 in., b = 1.5 in.: bending 818.9, shear 1317.2 psf.
 * Source: statics of a cantilever, w a^2 / 2 and w a (equations of equilibrium), in the units of the APA formulas.
 */
export function apaOverhangPressures(section: ApaSection, stresses: ApaStresses, overhang: Inches, supportWidth: Inches): { readonly bending: PoundsPerSquareFoot; readonly shear: PoundsPerSquareFoot } {
  const free = Math.max(0, overhang - supportWidth / 2);
  return {
    bending: psf(overhang > 0 ? (24 * stresses.bending * section.sectionModulus) / (overhang * overhang) : Infinity),
    shear: psf(free > 0 ? (12 * stresses.shear * section.rollingShear) / free : Infinity),
  };
}
