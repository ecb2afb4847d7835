import type { Millimetres } from "#lib/kernel/units.ts";

export const PLUMB_TOLERANCES = ["aci-117-90", "aci-117-90-exposed-corner", "aci-117-10", "en-13670-class-1", "as-3600"] as const;
export type PlumbToleranceRule = (typeof PLUMB_TOLERANCES)[number];

/** A named rule, or the project's own limit for the whole height. */
export type PlumbToleranceChoice = { readonly kind: "rule"; readonly rule: PlumbToleranceRule } | { readonly kind: "own"; readonly limit: Millimetres };
