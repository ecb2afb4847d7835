import { kN, kN_per_m, kPa, m } from "#lib/kernel/units.ts";
import type { Kilonewtons, KilonewtonsPerMetre, Kilopascals, Metres, Millimetres, SquareMetres } from "#lib/kernel/units.ts";
import type { PressureEnvelope } from "../pour-conditions.ts";

export type Resultant = { readonly force: KilonewtonsPerMetre; readonly height: Metres; readonly average: Kilopascals };

/**
 * The whole pressure on one metre of face width, as one force.
 *
 * Formula: F = p (h - z1 / 2); moment about the foot p ((h - z1)^2 / 2 + z1 (h - z1) / 2 + z1^2 / 6); height = moment / F; average = F / h.
 * Parameters: envelope, with limit p [kPa], liquid depth z1 [m] and pour height h [m].
 * Result: force F [kN/m], its height above the foot [m], average pressure [kPa].
 * Limits: straight line from the surface to z1, constant below: every envelope here has that shape.
 * Example: p = 44.9 kPa, z1 = 1.796 m, h = 3 m: F = 44.9 x 2.102 = 94.38 kN/m, average 31.46 kPa.
 * Source: statics; average pressure as on a project sheet to Singapore CP 23:2000 cl. 3.4.3.
 */
export function pressureResultant(envelope: Pick<PressureEnvelope, "limit" | "liquidDepth" | "pourHeight">): Resultant {
  const { limit: p, liquidDepth: z1, pourHeight: h } = envelope;
  const full = h - z1;
  const force = p * (h - z1 / 2);
  const moment = p * ((full * full) / 2 + (z1 * full) / 2 + (z1 * z1) / 6);
  return { force: kN_per_m(force), height: m(moment / force), average: kPa(force / h) };
}

/**
 * Uplift on a face that leans inwards.
 *
 * Formula: U = F b / 1000, F the resultant on the face, b the batter; pressure stands at right angles to the face.
 * Parameters: force F [kN/m], 0 or more; batterPerMetre b [mm/m], 0 or more.
 * Result: U [kN/m] upwards, per metre of face width.
 * Limits: F is taken over the upright height, so it holds for small batters; pressure under the foot through an open joint is not in it:
 *   the joint has to be sealed.
 * Example: F = 94.38 kN/m, b = 35 mm/m: 3.303 kN/m.
 * Source: statics of fluid pressure on an inclined face (equations of equilibrium).
 */
export const batterUplift = (force: KilonewtonsPerMetre, batterPerMetre: Millimetres): KilonewtonsPerMetre => kN_per_m((force * batterPerMetre) / 1000);

/**
 * Uplift on a form under whose foot the concrete gets.
 *
 * Formula: U = p A, p the pressure at the foot, A the area of the panels' lower edges.
 * Parameters: pressure p [kPa], 0 or more; edges A [m2], 0 or more.
 * Result: U [kN] upwards, on the whole form.
 * Limits: the most there can be: a sealed foot takes none of it. An open joint between sheets lifts by its own edges in the same way.
 * Example: p = 80.4 kPa under panels of 18 mm round 430 x 520 mm: 80.4 x (0.466 x 0.556 - 0.43 x 0.52) = 2.854 kN.
 * Source: statics of fluid pressure on a level face; that a foot is sealed and held down is common practice, no source.
 */
export const footUplift = (pressure: Kilopascals, edges: SquareMetres): Kilonewtons => kN(pressure * edges);
