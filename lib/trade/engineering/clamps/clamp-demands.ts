import type { KilonewtonMetres, Kilonewtons, Metres, Millimetres } from "#lib/kernel/units.ts";
import { kN, kN_m, kN_per_m, m, mm } from "#lib/kernel/units.ts";
import { ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { heldBeam, worstOfBeam } from "../backing/held-beam.ts";
import type { LoadCorner } from "../backing/beam-pieces.ts";
import { kN_m2 } from "../engineering-units.ts";
import type { PressureEnvelope } from "../pour-conditions.ts";
import { pressureAt } from "../pressure-envelope.ts";
import type { Refusal } from "../working.ts";

export const BACKING_SOURCE =
  "Continuous beam by the stiffness method; shear one depth from the support: Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), p. 153";

/** The worst of one kind along the form, per metre of face width, with its height above the foot. */
export type Worst<Unit> = { readonly value: Unit; readonly at: Millimetres };
export type ClampDemands = {
  readonly moment: Worst<KilonewtonMetres>;
  readonly shear: Worst<Kilonewtons>;
  /** Deflection over span for EI = 1 kN.m2. */
  readonly deflectionOverSpan: Worst<number>;
  /** Per clamp, lowest first; 0 where the timber would come away from the clamp. */
  readonly reactions: readonly Kilonewtons[];
  readonly largestReaction: Worst<Kilonewtons>;
};

/**
 * The pressure line turned into a load along the form.
 *
 * Formula: place = h - depth; load = pressure on one metre of width.
 * Parameters: envelope with corners (depth [m], pressure [kPa]) and pour height h [m].
 * Result: corners from the foot up, place [m] and load [kN/m].
 * Limits: none.
 * Example: corners (0, 0), (2.9 m, 70.9 kPa), (3.6 m, 70.9 kPa): (0, 70.9), (0.7 m, 70.9), (3.6 m, 0).
 * Source: geometry of the pressure line (equations of equilibrium).
 */
export const loadUp = (envelope: PressureEnvelope): LoadCorner[] =>
  envelope.points.map((point) => ({ at: m(envelope.pourHeight - point.depth), load: kN_per_m(point.pressure) })).reverse();

/**
 * What a clamp layout asks of the backing timbers and of the clamps, per metre of face width.
 *
 * Formula: the backing as a continuous beam over the clamps under p(z); V taken one timber depth from the clamp, V - p d with p at the
 *   upper end of that length; deflection over its span, over twice its length for an overhang.
 * Parameters: envelope; formHeight [mm], over 0; heights [mm] of the clamps above the foot, ascending, two or more; backingDepth d [m].
 * Result: per metre of face width the worst moment [kN.m], shear [kN], deflection over span [-] (for EI = 1 kN.m2) and reactions [kN], each with its
 *   height [mm]. Times the timber's share of the face they are the timber's; times the concrete side the reactions are the clamp's.
 * Limits: fewer than two clamps are refused. A clamp cannot pull: one that would is taken as carrying nothing. Clamps taken as unyielding.
 * Example: 40 kPa all over a form of 2.6 m, clamps at 0, 1.3 and 2.6 m, d = 0.05 m: moment 40 x 1.3^2 / 8 = 8.45 kN.m, middle reaction
 *   1.25 x 40 x 1.3 = 65 kN, shear 0.625 x 40 x 1.3 - 40 x 0.05 = 30.5 kN, per metre.
 * Source: elastic theory of continuous beams; shear section: Peurifoy and Oberlender, 4th ed. (2010), p. 153.
 */
export function clampDemands(envelope: PressureEnvelope, formHeight: Millimetres, heights: readonly Millimetres[], backingDepth: Metres): Result<ClampDemands, Refusal> {
  const solved = heldBeam({ length: m(formHeight / 1000), supports: heights.map((height) => m(height / 1000)), load: loadUp(envelope), stiffness: kN_m2(1) });
  if (!solved.ok) return solved;
  const { beam, held } = solved.value;
  const worst = worstOfBeam(beam, (place) => pressureAt(envelope, mm(place * 1000)), backingDepth);
  const reactions = heights.map(() => kN(0));
  held.forEach((index, place) => (reactions[index] = kN(Math.max(0, beam.reactions[place] ?? 0))));
  const largest = Math.max(...reactions);
  return ok({
    moment: { value: kN_m(worst.moment), at: mm(worst.momentAt * 1000) },
    shear: { value: kN(worst.shear), at: mm(worst.shearAt * 1000) },
    deflectionOverSpan: { value: worst.bend, at: mm(worst.bendAt * 1000) },
    reactions,
    largestReaction: { value: kN(largest), at: heights[reactions.findIndex((reaction) => reaction === largest)] ?? mm(0) },
  });
}
