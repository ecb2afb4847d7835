import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { PressureValueKind } from "./pour-conditions.ts";
import { refusal } from "./working.ts";
import type { Refusal } from "./working.ts";

/**
 * permissible-stress: loads as they are against permissible values that hold every factor.
 * partial-factor: loads times `loadFactor` against design resistances; deflection under the load as it is.
 */
export type SafetyFormat = { readonly kind: "permissible-stress" } | { readonly kind: "partial-factor"; readonly loadFactor: number };

const SOURCE = "DIN 18218:2010-01 gives characteristic values (load factor 1.5 with it), from memory; EN 1990 for the format";

/**
 * Load factor for the strength checks.
 *
 * Formula: permissible-stress: 1; partial-factor: the stated factor.
 * Parameters: format, with loadFactor [-] from 1 to 2; valueKind [-] of the pressure.
 * Result: factor [-] on moments, shears and forces; deflections take 1.
 * Limits: a characteristic pressure in the permissible-stress format is refused, and so is a load factor outside 1 to 2.
 * Example: a characteristic pressure with a stated factor of 1.5: 1.5.
 * Source: EN 1990 (partial factors); DIN 18218:2010-01, characteristic value, from memory.
 */
export function loadFactor(format: SafetyFormat, valueKind: PressureValueKind): Result<number, Refusal> {
  if (format.kind === "permissible-stress")
    return valueKind === "service"
      ? ok(1)
      : fail(refusal({ limit: "safety format", given: "a characteristic pressure against permissible stresses", allowed: "partial factors, with the load factor stated", source: SOURCE, message: "Choose the partial-factor format with design resistances, or another pressure method." }));
  if (!(format.loadFactor >= 1 && format.loadFactor <= 2))
    return fail(refusal({ limit: "load factor", given: format.loadFactor, allowed: "1 to 2", source: SOURCE, message: "State the factor of the project's code." }));
  return ok(format.loadFactor);
}
