import type { KilonewtonMetres, Kilonewtons, KilonewtonsPerMetre, Metres, Millimetres, NewtonsPerSquareMillimetre } from "#lib/kernel/units.ts";
import { kN, kN_m, kN_per_m, m } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { beamReactions } from "./continuous-beam.ts";
import { kN_m2 } from "../engineering-units.ts";
import type { KilonewtonSquareMetres } from "../engineering-units.ts";
import { refusal } from "../working.ts";
import type { Refusal } from "../working.ts";

const SOURCE = "Rectangular section, elastic theory";

export type TimberSection = {
  /** Along the face of the ply. */
  readonly breadth: Millimetres;
  /** Away from the ply, towards the clamp. */
  readonly depth: Millimetres;
  readonly modulus: NewtonsPerSquareMillimetre;
  readonly bendingStress: NewtonsPerSquareMillimetre;
  readonly shearStress: NewtonsPerSquareMillimetre;
};
export type TimberCapacity = {
  readonly moment: KilonewtonMetres;
  readonly shear: Kilonewtons;
  readonly stiffness: KilonewtonSquareMetres;
  readonly depth: Metres;
};

/**
 * What one backing timber can carry.
 *
 * Formula: M = f b d2 / 6, V = (2/3) f_v b d, EI = E b d3 / 12.
 * Parameters: breadth b [mm] along the ply, depth d [mm] away from it, modulus E, bendingStress f, shearStress f_v [N/mm2], each over 0.
 * Result: M [kN.m], V [kN], EI [kN.m2], depth [m].
 * Limits: values of 0 or less are refused. Solid rectangular sections; permissible stresses that already hold every factor of their
 *   code (moisture, duration, size, load sharing).
 * Example: b = 94 mm, d = 44 mm, f = 11.2, f_v = 2.0, E = 7300 N/mm2: M = 0.3397 kN.m, V = 5.515 kN, EI = 4.871 kN.m2.
 * Source: elastic theory of the rectangular section; same expressions in Peurifoy and Oberlender, 4th ed. (2010), ch. 5.
 */
export function timberCapacity(section: TimberSection): Result<TimberCapacity, Refusal> {
  const { breadth, depth, modulus, bendingStress, shearStress } = section;
  const least = Math.min(breadth, depth, modulus, bendingStress, shearStress);
  if (!(least > 0)) return fail(refusal({ limit: "backing timber values", given: least, allowed: "over 0", source: SOURCE, message: "Enter the section and its permissible stresses." }));
  return ok({
    moment: kN_m((bendingStress * breadth * depth * depth) / 6e6),
    shear: kN((2 * shearStress * breadth * depth) / 3e3),
    stiffness: kN_m2((modulus * breadth * depth ** 3) / 12e9),
    depth: m(depth / 1000),
  });
}

/**
 * Width of pressed board that the hardest-worked backing timber carries.
 *
 * Formula: the largest reaction of the board as a continuous beam over the timbers under unit pressure.
 * Parameters: timbers [m], centres from the loaded strip's middle, ascending, two or more; loaded [m], width of the concrete, over 0.
 * Result: width [m]; times the pressure it is the timber's line load.
 * Limits: fewer than two timbers are refused. Timbers taken as unyielding; one that gives sheds load to its neighbours.
 * Example: timbers at -0.21, 0, 0.21 m under 0.42 m: the middle one carries 1.25 x 0.21 = 0.2625 m.
 * Source: two-span continuous beam, middle reaction 5/4 w L, elastic theory.
 */
export function widestTimberShare(timbers: readonly Metres[], loaded: Metres): Result<Metres, Refusal> {
  const half = loaded / 2;
  const reach = Math.max(half, ...timbers.map(Math.abs));
  const unit: KilonewtonsPerMetre = kN_per_m(1);
  const answer = beamReactions({
    length: m(2 * reach),
    supports: timbers.map((at) => m(at + reach)),
    load: [{ at: m(reach - half), load: unit }, { at: m(reach + half), load: unit }],
    stiffness: kN_m2(1),
  });
  return answer.ok ? ok(m(Math.max(...answer.value))) : answer;
}
