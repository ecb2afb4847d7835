import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { Quantity } from "#lib/kernel/units.ts";
import { refusal } from "../working.ts";
import type { Refusal } from "../working.ts";

export type Inches = Quantity<"in">;

export const PLY_THICKNESSES = ["15/32", "1/2", "19/32", "5/8", "23/32", "3/4", "7/8", "1", "1-1/8"] as const;
export type PlyThickness = (typeof PLY_THICKNESSES)[number];

export const PLY_GRADES = ["class-i", "class-ii", "structural-i"] as const;
export type PlyGrade = (typeof PLY_GRADES)[number];

/** across: face grain at right angles to the supports; along: parallel to them. */
export const FACE_GRAINS = ["across", "along"] as const;
export type FaceGrain = (typeof FACE_GRAINS)[number];

const SOURCE = "APA concrete-form plywood section properties, as printed by Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010), viewer page 256";

/** Per foot of width: I in in4, KS in in3, Ib/Q in in2. */
export type ApaSection = { readonly inertia: number; readonly sectionModulus: number; readonly rollingShear: number; readonly thickness: Inches };

type Row = readonly [number, number, number];
const ACROSS: Readonly<Record<PlyThickness, Row>> = {
  "15/32": [0.066, 0.244, 4.743], "1/2": [0.077, 0.268, 5.153], "19/32": [0.115, 0.335, 5.438], "5/8": [0.13, 0.358, 5.717], "23/32": [0.18, 0.43, 7.009],
  "3/4": [0.199, 0.455, 7.187], "7/8": [0.296, 0.584, 8.555], "1": [0.427, 0.737, 9.374], "1-1/8": [0.554, 0.849, 10.43],
};
const CLASS_I_ALONG: Readonly<Record<PlyThickness, Row>> = {
  "15/32": [0.018, 0.107, 2.419], "1/2": [0.024, 0.13, 2.739], "19/32": [0.029, 0.146, 2.834], "5/8": [0.038, 0.175, 3.094], "23/32": [0.072, 0.247, 3.798],
  "3/4": [0.092, 0.306, 4.063], "7/8": [0.151, 0.422, 6.028], "1": [0.27, 0.634, 7.014], "1-1/8": [0.398, 0.799, 8.419],
};
const STRUCTURAL_I_ALONG: Readonly<Partial<Record<PlyThickness, Row>>> = {
  "15/32": [0.021, 0.147, 2.405], "1/2": [0.029, 0.178, 2.725], "19/32": [0.034, 0.199, 2.811], "5/8": [0.045, 0.238, 3.073], "23/32": [0.085, 0.338, 3.78], "3/4": [0.108, 0.418, 4.047],
};
const INCHES: Readonly<Record<PlyThickness, number>> = { "15/32": 15 / 32, "1/2": 0.5, "19/32": 19 / 32, "5/8": 0.625, "23/32": 23 / 32, "3/4": 0.75, "7/8": 0.875, "1": 1, "1-1/8": 1.125 };

function rowOf(thickness: PlyThickness, grade: PlyGrade, grain: FaceGrain): Row | undefined {
  if (grade === "class-i") return (grain === "across" ? ACROSS : CLASS_I_ALONG)[thickness];
  return grade === "structural-i" && grain === "along" ? STRUCTURAL_I_ALONG[thickness] : undefined;
}

/**
 * Section properties of US concrete-form plywood, per foot of width.
 *
 * Formula: table by thickness, grade and direction of the face grain.
 * Parameters: thickness [in], named; grade [-] class-i, class-ii or structural-i; grain [-] across the supports or along them.
 * Result: I [in4], KS [in3], Ib/Q [in2], thickness [in].
 * Limits: only what was read: class I both ways, structural I with the grain along up to 3/4 in. Everything else is refused. One edition
 *   throughout; older tables print other numbers.
 * Example: 7/8 in. class I along: 0.151, 0.422, 6.028.
 * Source: APA concrete-form plywood, as printed by Peurifoy and Oberlender, 4th ed. (2010), viewer page 256.
 */
export function apaSection(thickness: PlyThickness, grade: PlyGrade, grain: FaceGrain): Result<ApaSection, Refusal> {
  const row = rowOf(thickness, grade, grain);
  if (row !== undefined) return ok({ inertia: row[0], sectionModulus: row[1], rollingShear: row[2], thickness: INCHES[thickness] as Inches });
  return fail(refusal({ limit: "ply section", given: `${thickness} in. ${grade}, face grain ${grain}`, allowed: "class I both ways; structural I along, up to 3/4 in.", source: SOURCE, message: "No published section properties are kept for it: enter the supplier's own values." }));
}

/** In psi; `stiffness` for bending deflection where shear deflection is reckoned apart, with `shearStiffness`. */
export type ApaStresses = { readonly bending: number; readonly shear: number; readonly stiffness: number; readonly shearStiffness: number };

/**
 * Allowable stresses of US concrete-form plywood, wet, short load.
 *
 * Formula: table by grade; for forms used again, bending and shear divided by 1.25.
 * Parameters: grade [-]; reused [-].
 * Result: F_b, F_s, E, E_e [psi]: class I and structural I 1930, 72 (102), 1 650 000, 1 500 000; class II 1330, 72, 1 430 000, 1 300 000.
 * Limits: wet service, load of days. The factor 1.25 for short load is in; class II and 102 psi from memory.
 * Example: class I, reused: F_b = 1544, F_s = 57.6 psi.
 * Source: Peurifoy and Oberlender, 4th ed. (2010), viewer page 261; re-use: construction lectures (Allen), week 8; class II from memory.
 */
export function apaStresses(grade: PlyGrade, reused: boolean): ApaStresses {
  const again = reused ? 1.25 : 1;
  const shear = (grade === "structural-i" ? 102 : 72) / again;
  return grade === "class-ii"
    ? { bending: 1330 / again, shear, stiffness: 1_430_000, shearStiffness: 1_300_000 }
    : { bending: 1930 / again, shear, stiffness: 1_650_000, shearStiffness: 1_500_000 };
}
