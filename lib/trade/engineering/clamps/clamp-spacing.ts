import { mm, type Millimetres } from "#lib/kernel/units.ts";

export type ClampSpacing = {
  readonly module: Millimetres;
  /** Height of the lowest clamp above the foot of the form. */
  readonly firstMin: Millimetres;
  readonly firstMax: Millimetres;
  /** From the top clamp to the top of the form. */
  readonly topMax: Millimetres;
  readonly smallestGap: Millimetres;
  readonly largestGap: Millimetres;
};

/**
 * Height of a step of the module above the foot of the form, without the dust that multiplying 25.4 leaves.
 * Formula: height = step × module.
 * Parameters: step [-], module [mm].
 * Result: height [mm], to a millionth of a millimetre.
 * Limits: none here; the module is held by the shutter rule.
 * Example: step 82 of 25.4 mm: 2082.8 mm.
 * Source: an inch is 25.4 mm exactly (NIST SP 811, 2008 ed., appendix B.8); the rest is arithmetic.
 */
export const heightOf = (step: number, module: Millimetres): Millimetres => mm(Math.round(step * module * 1e6) / 1e6);
