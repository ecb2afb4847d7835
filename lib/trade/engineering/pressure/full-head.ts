import { kPa } from "#lib/kernel/units.ts";
import type { KilonewtonsPerCubicMetre, Kilopascals, Metres } from "#lib/kernel/units.ts";
import { term } from "../working.ts";
import type { LimitingPressure } from "./limiting-pressure.ts";

export const FULL_HEAD_EDITION = "Full liquid head";
export const HEAD_SOURCE = "Hydrostatic pressure; full head for columns filled fast: Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), p. 325";
export const BASE_PUMPING = "ACI 347-04 cl. 2.2.2 (25 % over the head when pumped from the base), from memory";

/**
 * Liquid head of fresh concrete, the pressure no set concrete relieves.
 *
 * Formula: p = f w h, with f = 1.25 when the form is pumped from its base, else 1.
 * Parameters: density w [kN/m3], over 0; pourHeight h [m], over 0; fromBase [-] pumped from the base.
 * Result: p [kPa] at the foot of the pour; straight down to it from zero at the surface.
 * Limits: none from above; 25 % is the least that base pumping adds, and pump pressure must still be checked by its designer.
 * Example: w = 24.6 kN/m3, h = 3.35 m: 82.41 kPa.
 * Source: hydrostatics; Peurifoy and Oberlender, 4th ed. (2010), p. 325; ACI 347-04 cl. 2.2.2 for base pumping, from memory.
 */
export function fullHead(density: KilonewtonsPerCubicMetre, pourHeight: Metres, fromBase: boolean): LimitingPressure<Kilopascals> {
  const factor = fromBase ? 1.25 : 1;
  const pressure = kPa(factor * density * pourHeight);
  return {
    limit: pressure,
    governs: "liquid head",
    working: {
      title: "Lateral pressure, full liquid head",
      inputs: [term("w", density, "kN/m3"), term("h", pourHeight, "m")],
      formula: fromBase ? "p = 1.25 w h" : "p = w h",
      steps: fromBase ? [term("pumped from the base", factor, "")] : [],
      result: term("p", pressure, "kPa"),
      source: fromBase ? `${HEAD_SOURCE}; ${BASE_PUMPING}` : HEAD_SOURCE,
    },
  };
}
