import type { KilonewtonsPerCubicMetre } from "#lib/kernel/units.ts";
import type { PoundsPerCubicFoot } from "../engineering-units.ts";
import type { CementGroup, PressureClause } from "../pour-conditions.ts";
import { refusal } from "../working.ts";
import type { Refusal } from "../working.ts";

export const ACI_347_SOURCE = "ACI 347-04 cl. 2.2.2 and ACI 347R-14 cl. 4.2.2 (coefficient tables and SI text from memory of the standard)";
const GRAVITY = 9.80665;

/**
 * Chemistry coefficient of the concrete, C_c.
 *
 * Formula: table, by cement group and retarder: portland 1.0 / 1.2, blend-low 1.2 / 1.4, blend-high 1.4 / 1.4 (without / with).
 * Parameters: cement [-] portland (types I, II, III), blend-low (other types, under 70 % slag or 40 % fly ash), blend-high (over
 *   those shares); retarder [-] any admixture that delays set, retarding superplasticizers included.
 * Result: C_c [-], 1.0 to 1.4.
 * Limits: the three groups only; every combination has a value.
 * Example: a blend with 35 % slag and a retarder: 1.4.
 * Source: ACI 347-04 Table 2.2 / ACI 347R-14 Table 4.2.2.1a(b), from memory.
 */
export function aciChemistryCoefficient(cement: CementGroup, retarder: boolean): number {
  if (cement === "portland") return retarder ? 1.2 : 1.0;
  if (cement === "blend-low") return retarder ? 1.4 : 1.2;
  return 1.4;
}

/** Both unit families share the shape; their steps lie at rounded values of their own, so the steps are arguments. */
function unitWeightCoefficient(density: number, light: number, heavy: number, reference: number): number {
  if (density < light) return Math.max(0.8, 0.5 * (1 + density / reference));
  return density <= heavy ? 1 : density / reference;
}

/**
 * Unit-weight coefficient of the concrete in US units, C_w.
 *
 * Formula: w < 140: max(0.80, 0.5 (1 + w / 145)); 140 to 150: 1.0; over 150: w / 145.
 * Parameters: density w [pcf], over 0.
 * Result: C_w [-], not under 0.80.
 * Limits: it steps up by 3 % where w passes 150 pcf, as printed.
 * Example: w = 120 pcf: 0.5 (1 + 120 / 145) = 0.9138.
 * Source: ACI 347-04 Table 2.1 / ACI 347R-14 Table 4.2.2.1a(a), from memory.
 */
export const aciUnitWeightCoefficientUs = (density: PoundsPerCubicFoot): number => unitWeightCoefficient(density, 140, 150, 145);

/**
 * Unit-weight coefficient of the concrete in SI units, C_w.
 *
 * Formula: rho < 2240: max(0.80, 0.5 (1 + rho / 2320)); 2240 to 2400: 1.0; over 2400: rho / 2320, with rho = 1000 w / 9.80665.
 * Parameters: density w [kN/m3], over 0.
 * Result: C_w [-], not under 0.80.
 * Limits: it steps up by 3 % where rho passes 2400 kg/m3 (23.54 kN/m3), as printed.
 * Example: w = 25 kN/m3: rho = 2549.3 kg/m3, C_w = 2549.3 / 2320 = 1.0988.
 * Source: ACI 347-04 Table 2.1 / ACI 347R-14 Table 4.2.2.1a(a), SI text, from memory.
 */
export const aciUnitWeightCoefficientSi = (density: KilonewtonsPerCubicMetre): number =>
  unitWeightCoefficient(Math.round((density * 1e9) / GRAVITY) / 1e6, 2240, 2400, 2320);

/**
 * Bounds of the pressure equations.
 *
 * Formula: p = min( max(formula, minimum), head ), in this order: a short pour may lie under the minimum, never over its own head.
 * Parameters: formula, minimum and head [psf or kPa], each 0 or more and in one unit.
 * Result: p [psf or kPa] and the rule that governs.
 * Limits: none.
 * Example: formula 375, minimum 600, head 450 psf: 450 psf, the liquid head governs.
 * Source: ACI 347-04 cl. 2.2.2; "need not exceed w h": a mill's reprint of the APA tables.
 */
export function aciBoundedPressure(formula: number, minimum: number, head: number): { limit: number; governs: PressureClause } {
  const raised = Math.max(formula, minimum);
  if (head <= raised) return { limit: head, governs: "liquid head" };
  return { limit: raised, governs: minimum > formula ? "minimum" : "formula" };
}

const outside = (limit: string, given: number, allowed: string, message: string): Refusal => refusal({ limit, given, allowed, source: ACI_347_SOURCE, message });

/** The published tables end there; null where the temperature lies within them. */
export const outsideAciTemperatureUs = (temperature: number): Refusal | null =>
  temperature >= 40 && temperature <= 90 ? null : outside("concrete temperature (degF)", temperature, "40 to 90 degF", "Above 90 degF enter 90: it is on the safe side. Below 40 degF use the full liquid head.");
export const outsideAciTemperatureSi = (temperature: number): Refusal | null =>
  temperature >= 5 && temperature <= 32 ? null : outside("concrete temperature (degC)", temperature, "5 to 32 degC", "Above 32 degC enter 32: it is on the safe side. Below 5 degC use the full liquid head.");
