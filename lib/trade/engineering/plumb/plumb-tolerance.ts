import { mm } from "#lib/kernel/units.ts";
import type { Millimetres } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { MM_PER_FOOT, MM_PER_INCH } from "#lib/kernel/us-units.ts";
import { refusal } from "../working.ts";
import type { Refusal } from "../working.ts";

export const PLUMB_TOLERANCES = ["aci-117-90", "aci-117-90-exposed-corner", "aci-117-10", "en-13670-class-1", "as-3600"] as const;
export type PlumbToleranceRule = (typeof PLUMB_TOLERANCES)[number];

/** A named rule, or the project's own limit for the whole height. */
export type PlumbToleranceChoice = { readonly kind: "rule"; readonly rule: PlumbToleranceRule } | { readonly kind: "own"; readonly limit: Millimetres };

/** read: read in a public reprint; memory: recalled, the standard has to be read before it is relied on. */
export type Provenance = "read" | "memory";

export const PLUMB_RULES: Readonly<Record<PlumbToleranceRule, { readonly source: string; readonly provenance: Provenance }>> = {
  "aci-117-90": { source: "ACI 117-90 sec. 4, plumb of lines, surfaces and arrises, as reprinted in a US guide specification", provenance: "read" },
  "aci-117-90-exposed-corner": { source: "ACI 117-90 sec. 4, exposed outside corner column, as reprinted in a US guide specification", provenance: "read" },
  "aci-117-10": { source: "ACI 117-10 sec. 4.1, from memory", provenance: "memory" },
  "en-13670-class-1": { source: "EN 13670:2009 fig. 2, tolerance class 1, from memory; h/300 is quoted elsewhere: read the project's edition", provenance: "memory" },
  "as-3600": { source: "AS 3600 cl. 17.5, floor to floor, from memory", provenance: "memory" },
};

const inches = (value: number): number => value * MM_PER_INCH;

function limitOf(rule: PlumbToleranceRule, height: number): number {
  const feet = height / MM_PER_FOOT;
  switch (rule) {
    case "aci-117-90": return feet <= 100 ? inches(1) : Math.min(height / 1000, inches(6));
    case "aci-117-90-exposed-corner": return feet <= 100 ? inches(0.5) : Math.min(height / 2000, inches(3));
    case "aci-117-10": return feet <= 83 + 1 / 3 ? Math.min(0.003 * height, inches(1)) : Math.min(0.001 * height, inches(6));
    case "en-13670-class-1": return height <= 10_000 ? Math.max(15, height / 400) : Math.max(25, height / 600);
    case "as-3600": return Math.max(height / 200, 10);
  }
}

/**
 * How far a column may lean over its height.
 *
 * Formula: ACI 117-90: 1 in. to 100 ft, then h/1000 up to 6 in.; exposed corner 1/2 in., then h/2000 up to 3 in.; ACI 117-10: least of 0.3 % and
 *   1 in. to 83 ft 4 in., then least of 0.1 % and 6 in.; EN 13670 class 1: larger of 15 mm and h/400 to 10 m, then of 25 mm and h/600;
 *   AS 3600: larger of h/200 and 10 mm.
 * Parameters: choice; height h [mm], over 0.
 * Result: limit [mm].
 * Limits: an own limit of 0 or less and a height that is no number are refused. No rule on twist was found: it is shown, not judged.
 * Example: AS 3600, h = 2750 mm: 13.75 mm.
 * Source: ACI 117-90 as reprinted; ACI 117-10, EN 13670:2009 and AS 3600 from memory.
 */
export function plumbTolerance(choice: PlumbToleranceChoice, height: Millimetres): Result<Millimetres, Refusal> {
  const refuse = (limit: string, given: number) => fail(refusal({ limit, given, allowed: "over 0", source: "input", message: "Correct the input." }));
  if (!(height > 0 && Number.isFinite(height))) return refuse("height (mm)", height);
  if (choice.kind === "rule") return ok(mm(limitOf(choice.rule, height)));
  return choice.limit > 0 && Number.isFinite(choice.limit) ? ok(choice.limit) : refuse("own plumb limit (mm)", choice.limit);
}

export const SECTION_TOLERANCES = ["aci-117-90", "is-456", "env-1992"] as const;
export type SectionToleranceRule = (typeof SECTION_TOLERANCES)[number];

/**
 * How far a side of the column may differ from its size.
 *
 * Formula: ACI 117-90: +3/8, -1/4 in. up to 12 in.; IS 456: +12, -6 mm; ENV 1992-1-1: 5 mm to 150, 15 mm at 400, 30 mm from 2500, straight between.
 * Parameters: rule [-]; side [mm], over 0.
 * Result: plus and minus [mm].
 * Limits: ACI 117-90 over 12 in. is refused: its line could not be read.
 * Example: ENV 1992-1-1, side 275 mm: 5 + 10 x 125 / 250 = 10 mm.
 * Source: ACI 117-90 as reprinted; IS 456:2000 cl. 11.1; ENV 1992-1-1:1991 cl. 6.2.2.
 */
export function sectionTolerance(rule: SectionToleranceRule, side: Millimetres): Result<{ readonly plus: Millimetres; readonly minus: Millimetres }, Refusal> {
  if (rule === "is-456") return ok({ plus: mm(12), minus: mm(6) });
  if (rule === "env-1992") {
    const limit = side <= 150 ? 5 : side <= 400 ? 5 + (10 * (side - 150)) / 250 : Math.min(30, 15 + (15 * (side - 400)) / 2100);
    return ok({ plus: mm(limit), minus: mm(limit) });
  }
  if (side <= inches(12)) return ok({ plus: mm(inches(0.375)), minus: mm(inches(0.25)) });
  return fail(refusal({ limit: "side (mm)", given: side, allowed: "up to 12 in. (304.8 mm)", source: PLUMB_RULES["aci-117-90"].source, message: "The line for larger sides could not be read: use the project's own tolerance." }));
}
