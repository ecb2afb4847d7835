import type { Millimetres } from "#lib/kernel/units.ts";

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
