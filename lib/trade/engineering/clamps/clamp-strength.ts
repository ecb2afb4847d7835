import { kN, kN_m } from "#lib/kernel/units.ts";
import type { KilonewtonMetres, Kilonewtons, Metres, Millimetres } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { refusal } from "../working.ts";
import type { Refusal } from "../working.ts";
import type { ClampCapacity, ClampSides } from "./clamp-capacity.ts";

export const CLAMP_SOURCE = "Arm as a simple beam between its wedges (statics); Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), p. 339 for the yoke loaded all along";
const DATA = "Capacities as the hirer states them";
const refuse = (limit: string, given: number, allowed: string): { ok: false; failure: Refusal } => fail(refusal({ limit, given, allowed, source: DATA, message: "Ask the hirer for the clamp's data." }));

/**
 * Moment in a clamp's arm between its wedges.
 *
 * Formula: M = F (2 x - s) / 8, the side's force F spread over the concrete width s in the middle of the span x; F x / 8 where s = x.
 * Parameters: force F [kN]; wedgeSpan x [m], at least s; side s [m], over 0.
 * Result: M [kN.m].
 * Limits: arm free to turn at both wedges: a fixed corner would only relieve it.
 * Example: F = 17 kN, x = 0.62 m, s = 0.43 m: 17 x 0.81 / 8 = 1.721 kN.m.
 * Source: statics of a simple beam; Peurifoy and Oberlender, 4th ed. (2010), p. 339, for s = x.
 */
export const armMoment = (force: Kilonewtons, wedgeSpan: Metres, side: Metres): KilonewtonMetres => kN_m((force * (2 * wedgeSpan - side)) / 8);

/**
 * Pull that one side of the column puts on each of its two wedged corners.
 *
 * Formula: F / 2; the two pulls at a corner add up at right angles to sqrt(Fa^2 + Fb^2) / 2.
 * Parameters: force F [kN] of the side; other Fb [kN] of the side round the corner.
 * Result: pull [kN] and corner resultant [kN].
 * Limits: load even over the side; a pour kept to one side pulls harder there.
 * Example: 19 and 13 kN: pull 9.5 kN, resultant 11.51 kN.
 * Source: statics; corner resultant as in the construction lectures (Allen), week 8 (equations of equilibrium).
 */
export const cornerPull = (force: Kilonewtons, other: Kilonewtons): { readonly pull: Kilonewtons; readonly resultant: Kilonewtons } => ({ pull: kN(force / 2), resultant: kN(Math.hypot(force, other) / 2) });

/**
 * Force that one side may put on a clamp.
 *
 * Formula: least of the side capacity and of the listed load at the next longer span; nothing is read between lines.
 * Parameters: capacity with loads [kN] by span [mm]; wedgeSpan [mm].
 * Result: force [kN].
 * Limits: a span beyond the last line, and loads of 0 or less, are refused.
 * Example: lines 600 mm 30 kN and 900 mm 22 kN, span 640 mm: 22 kN.
 * Source: as the hirer states it; reading to the next longer line is common practice, no source; equations none.
 */
export function sideForceAllowed(capacity: ClampCapacity, wedgeSpan: Millimetres): Result<Kilonewtons, Refusal> {
  const lines = capacity.capacityBySpan ?? [];
  if (!(capacity.sideCapacity > 0)) return refuse("clamp capacity (kN)", capacity.sideCapacity, "over 0");
  if (lines.length === 0) return ok(capacity.sideCapacity);
  const reaching = lines.filter((line) => line.span >= wedgeSpan).map((line) => ({ ...line }));
  const longest = Math.max(...lines.map((line) => line.span));
  if (reaching.length === 0) return refuse("span between wedges (mm)", wedgeSpan, `up to ${longest} mm`);
  const next = reaching.reduce((a, b) => (b.span < a.span ? b : a));
  return next.load > 0 ? ok(kN(Math.min(capacity.sideCapacity, next.load))) : refuse("clamp load (kN)", next.load, "over 0");
}

export type ClampPart = "clamp" | "arm" | "wedge";
/** One check of one side: what it may take, and what a reaction of 1 kN per metre of face puts on it. */
export type ClampCheck = { readonly part: ClampPart; readonly side: keyof ClampSides; readonly perReaction: number; readonly capacity: number; readonly unit: string };

/**
 * All checks of a clamp on both sides of a column, as multiples of the reaction.
 *
 * Formula: force s R of the allowed force; arm s R (2 x - s) / 8 of W f; wedge s R / 2 of its pull.
 * Parameters: capacity, with section modulus W [cm3], stress f [N/mm2], pull [kN]; sides, concrete side s and wedge span x [mm].
 * Result: checks, each with what 1 kN/m of reaction puts on it [kN] or [kN.m] and its capacity.
 * Limits: a wedge span under the concrete side and values of 0 or less are refused.
 * Example: s = 430 mm, x = 620 mm, W = 21 cm3, f = 160 N/mm2: arm capacity 3.36 kN.m, 0.0435 kN.m per kN/m.
 * Source: statics; capacities as the hirer states them (equations of equilibrium).
 */
export function clampChecks(capacity: ClampCapacity, sides: ClampSides): Result<readonly ClampCheck[], Refusal> {
  const checks: ClampCheck[] = [];
  for (const name of ["across", "along"] as const) {
    const { side, wedgeSpan } = sides[name];
    if (!(side > 0 && wedgeSpan >= side)) return fail(refusal({ limit: "span between wedges (mm)", given: wedgeSpan, allowed: `the concrete side of ${side} mm or more`, source: DATA, message: "Correct the clamp's sides." }));
    const allowed = sideForceAllowed(capacity, wedgeSpan);
    if (!allowed.ok) return allowed;
    const metres = side / 1000;
    checks.push({ part: "clamp", side: name, perReaction: metres, capacity: allowed.value, unit: "kN" });
    const { arm, wedgeCapacity } = capacity;
    if (arm !== undefined) checks.push({ part: "arm", side: name, perReaction: armMoment(kN(metres), (wedgeSpan / 1000) as Metres, metres as Metres), capacity: (arm.sectionModulus * arm.stress) / 1000, unit: "kN.m" });
    if (wedgeCapacity !== undefined) checks.push({ part: "wedge", side: name, perReaction: metres / 2, capacity: wedgeCapacity, unit: "kN" });
  }
  const weak = checks.find((check) => !(check.capacity > 0 && Number.isFinite(check.capacity)));
  return weak === undefined ? ok(checks) : fail(refusal({ limit: `${weak.part} capacity (${weak.unit})`, given: weak.capacity, allowed: "over 0", source: DATA, message: "Ask the hirer for the clamp's data." }));
}

/**
 * Reaction that a clamp may take, per metre of face width.
 *
 * Formula: least of capacity over what 1 kN/m puts on each check.
 * Parameters: checks with capacity [kN] or [kN.m].
 * Result: reaction [kN/m].
 * Limits: as of the checks.
 * Example: 24 kN on a side of 0.48 m: 50 kN/m.
 * Source: proportion (equations of equilibrium).
 */
export const reactionAllowed = (checks: readonly ClampCheck[]): number => Math.min(...checks.map((check) => check.capacity / check.perReaction));
