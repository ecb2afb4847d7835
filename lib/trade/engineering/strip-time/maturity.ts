import type { DegreesCelsius, NewtonsPerSquareMillimetre, Quantity } from "#lib/kernel/units.ts";
import { N_per_mm2 } from "#lib/kernel/units.ts";

export type DegreeHours = Quantity<"degC.h">;

const GAS_CONSTANT = 8.314;
const KELVIN = 273.15;

/**
 * Maturity of one hour by Nurse and Saul.
 *
 * Formula: M = max(0, T - T0) per hour; hours below the datum add nothing.
 * Parameters: temperature T [degC]; datum T0 [degC].
 * Result: maturity of the hour [degC.h].
 * Limits: none here; records with gaps are refused by `stripTime`.
 * Example: 13 degC with a datum of -10 degC: 23 degC.h.
 * Source: ASTM C1074-19 (datum 0 degC for type I without admixture, from memory); -10 or -11 degC in older practice.
 */
export const nurseSaulHour = (temperature: DegreesCelsius, datum: DegreesCelsius): DegreeHours => Math.max(0, temperature - datum) as DegreeHours;

/**
 * Equivalent age of one hour by Freiesleben Hansen and Pedersen.
 *
 * Formula: exp( E / R (1 / T_ref - 1 / T) ), kelvin, R = 8.314 J/(mol.K).
 * Parameters: temperature T [degC]; reference T_ref [degC]; activationEnergy E [kJ/mol].
 * Result: factor [-]: hours at the reference temperature that one hour counts for.
 * Limits: none here; the range of E and of temperature is held by `stripTime`.
 * Example: 14 degC, reference 20 degC, 35 kJ/mol: exp(4209.8 x (1 / 293.15 - 1 / 287.15)) = 0.7408.
 * Source: Freiesleben Hansen and Pedersen (1977), as stated in public teaching text.
 */
export const arrheniusFactor = (temperature: DegreesCelsius, reference: DegreesCelsius, activationEnergy: number): number =>
  Math.exp(((activationEnergy * 1000) / GAS_CONSTANT) * (1 / (KELVIN + reference) - 1 / (KELVIN + temperature)));

/**
 * Equivalent age of one hour by ASTM C1074.
 *
 * Formula: exp( -Q (1 / T_a - 1 / T_s) ), kelvin.
 * Parameters: temperature T_a [degC]; reference T_s [degC]; q Q [K].
 * Result: factor [-].
 * Limits: none here; the range of Q and of temperature is held by `stripTime`.
 * Example: 17 degC, reference 23 degC, 4700 K: exp(-4700 x (1 / 290.15 - 1 / 296.15)) = 0.7202.
 * Source: ASTM C1074-19 eq. (2), from memory.
 */
export const astmAgeFactor = (temperature: DegreesCelsius, reference: DegreesCelsius, q: number): number => Math.exp(-q * (1 / (KELVIN + temperature) - 1 / (KELVIN + reference)));

/**
 * Equivalent age of one hour by EN 1992-1-1 Annex B.
 *
 * Formula: exp( -(4000 / (273 + T) - 13.65) ).
 * Parameters: temperature T [degC], 0 to 80.
 * Result: factor [-]; 0.998 at 20 degC as printed.
 * Limits: 0 to 80 degC; held by `stripTime`.
 * Example: 16 degC: exp(-(4000 / 289 - 13.65)) = 0.8259.
 * Source: EN 1992-1-1:2004 Annex B eq. (B.10), from memory.
 */
export const en1992AgeFactor = (temperature: DegreesCelsius): number => Math.exp(-(4000 / (273 + temperature) - 13.65));

export const HARDENING_CLASSES = ["R", "N", "S"] as const;
/** Rapid, normal and slow hardening cement of EN 1992-1-1. */
export type HardeningClass = (typeof HARDENING_CLASSES)[number];
const HARDENING = { R: 0.2, N: 0.25, S: 0.38 } as const;

/**
 * Strength at an age as a share of the 28-day strength.
 *
 * Formula: beta_cc = exp( s (1 - sqrt(28 / t)) ), s = 0.20 R, 0.25 N, 0.38 S.
 * Parameters: ageDays t [d], over 0; hardening [-] R, N or S.
 * Result: beta_cc [-].
 * Limits: under 3 days the code asks for tests: an answer there is for planning only, and `stripTime` says so.
 * Example: 4.5 d, class S: exp(0.38 (1 - sqrt(28 / 4.5))) = 0.5667.
 * Source: EN 1992-1-1:2004 eq. (3.2), cl. 3.1.2(6); the 3-day sentence of cl. 3.1.2(5) from memory.
 */
export const en1992StrengthShare = (ageDays: number, hardening: HardeningClass): number => Math.exp(HARDENING[hardening] * (1 - Math.sqrt(28 / ageDays)));

/**
 * Strength from maturity by Plowman's line.
 *
 * Formula: per cent = A + B log10(M / 1000); strength = S28 x per cent / 100.
 * Parameters: maturity M [degC.h], over 0, datum -11 degC; a A [-]; b B [-]; strength28 S28 [N/mm2].
 * Result: strength [N/mm2].
 * Limits: the line is fitted to one concrete; the percentage refers to 19 800 degC.h. Below 0 it answers 0.
 * Example: M = 3500 degC.h, A = 32, B = 54, S28 = 33 N/mm2: 61.38 %, 20.26 N/mm2.
 * Source: Plowman's relation as printed in an article on maturity after textbook practice; A and B for 17.5 to 35 N/mm2 from memory (equations of 1956).
 */
export const plowmanStrength = (maturity: DegreeHours, a: number, b: number, strength28: NewtonsPerSquareMillimetre): NewtonsPerSquareMillimetre =>
  N_per_mm2((strength28 * Math.max(0, a + b * Math.log10(maturity / 1000))) / 100);
