import { kN_per_m, kPa, m, mm } from "#lib/kernel/units.ts";
import type { KilonewtonsPerMetre } from "#lib/kernel/units.ts";
import { heldBeam } from "#lib/trade/engineering/backing/held-beam.ts";
import { clampDemands } from "#lib/trade/engineering/clamps/clamp-demands.ts";
import { kN_m2 } from "#lib/trade/engineering/engineering-units.ts";
import { envelopeOf, usPour } from "#tests/support/builders/a-pour.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

/** Two supports, half a spacing of beam beyond each: what a support of an even row carries, whatever the stiffness. In kN. */
export function tributaryForce(load: KilonewtonsPerMetre, spacing: number): number {
  const corners = [{ at: m(0), load: kN_per_m(load) }, { at: m(2 * spacing), load: kN_per_m(load) }];
  return valueOf(heldBeam({ length: m(2 * spacing), supports: [m(spacing / 2), m(1.5 * spacing)], load: corners, stiffness: kN_m2(1) })).beam.reactions[0] ?? Number.NaN;
}

/** The same of two clamps under an even pressure, per metre of face width [kN/m]. */
export function evenClampLoad(pressure: number, spacing: number): number {
  const height = 2 * spacing;
  const even = { ...envelopeOf(usPour(5, 60), height, 0.5), limit: kPa(pressure), liquidDepth: m(1e-9), points: [{ depth: m(0), pressure: kPa(pressure) }, { depth: m(height), pressure: kPa(pressure) }] };
  return valueOf(clampDemands(even, mm(height * 1000), [mm(spacing * 500), mm(spacing * 1500)], m(0))).largestReaction.value;
}
