import type { Metres } from "#lib/kernel/units.ts";
import { ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { Refusal } from "../working.ts";
import { continuousBeam } from "./continuous-beam.ts";
import type { BeamAnswer, BeamInput } from "./continuous-beam.ts";

export type HeldBeam = { readonly beam: BeamAnswer; /** Which of the supports carry. */ readonly held: readonly number[] };

/**
 * A beam on supports that hold outwards only.
 *
 * Formula: `continuousBeam`; while a support would pull and more than two are left, the one that pulls most is taken out and the beam solved again.
 * Parameters: beam, with length [m], supports [m] ascending, load corners [m, kN/m], stiffness [kN.m2].
 * Result: the beam as solved last, forces [kN], moments [kN.m], places and deflections [m], and which of the supports carry [-].
 * Limits: those of `continuousBeam`; of two supports left one may still pull: its reaction is then negative.
 * Example: 0.4 kN/m over the first metre of three, supports at 0, 1 and 3 m: the third would pull and is taken out; 0.2 kN on each of the two left.
 * Source: unilateral supports, elastic beam theory.
 */
export function heldBeam(beam: BeamInput): Result<HeldBeam, Refusal> {
  let held = beam.supports.map((_, index) => index);
  for (;;) {
    const answer = continuousBeam({ ...beam, supports: held.map((index) => (beam.supports[index] ?? 0) as Metres) });
    if (!answer.ok) return answer;
    const { reactions } = answer.value;
    let pulled = 0;
    for (let place = 1; place < reactions.length; place += 1) if ((reactions[place] ?? 0) < (reactions[pulled] ?? 0)) pulled = place;
    if ((reactions[pulled] ?? 0) >= -1e-9 || held.length <= 2) return ok({ beam: answer.value, held });
    held = held.filter((_, place) => place !== pulled);
  }
}

/** The worst of one kind along the beam, and where [m]. */
export type BeamWorst = {
  readonly moment: number;
  readonly momentAt: number;
  readonly shear: number;
  readonly shearAt: number;
  readonly bend: number;
  readonly bendAt: number;
};

/**
 * Largest moment, shear and deflection of a solved beam.
 *
 * Formula: shear one timber depth d from the support, V - w d with w at the upper end of that length, d at most half the span; deflection over
 *   its span, over twice its length for an overhang.
 * Parameters: beam; loadAt [kN/m] by place [m], taken as not rising with it; depth d [m], 0 or more.
 * Result: moment [kN.m], shear [kN], deflection over span [-], each with its place [m].
 * Limits: loads that rise along the beam make the shear relief too large: take d = 0 there.
 * Example: one span of 1.7 m under 9 kN/m, d = 0.05 m: shear 9 x 0.85 - 9 x 0.05 = 7.2 kN.
 * Source: Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), p. 153 (shear at one depth).
 */
export function worstOfBeam(beam: BeamAnswer, loadAt: (place: number) => number, depth: Metres): BeamWorst {
  const worst = { moment: 0, momentAt: 0, shear: 0, shearAt: 0, bend: 0, bendAt: 0 };
  for (const stretch of beam.stretches) {
    const length = stretch.to - stretch.from;
    const relief = Math.min(depth, length / 2);
    const lower = stretch.shearFrom - loadAt(stretch.from + relief) * relief;
    const upper = stretch.shearTo - loadAt(stretch.to) * relief;
    const shear = Math.max(lower, upper);
    const bend = stretch.deflection / (stretch.overhang ? 2 * length : length);
    if (stretch.moment > worst.moment) {
      worst.moment = stretch.moment;
      worst.momentAt = stretch.momentAt;
    }
    if (shear > worst.shear) {
      worst.shear = shear;
      worst.shearAt = lower >= upper ? stretch.from : stretch.to;
    }
    if (bend > worst.bend) {
      worst.bend = bend;
      worst.bendAt = (stretch.from + stretch.to) / 2;
    }
  }
  return worst;
}
