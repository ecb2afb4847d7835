import { mm } from "#lib/kernel/units.ts";
import type { Millimetres } from "#lib/kernel/units.ts";
import { fail, ok } from "#lib/kernel/result.ts";
import type { Result } from "#lib/kernel/result.ts";
import { fitLevel } from "../plumb/level-fit.ts";
import type { LevelFit, LevelReadings, MillimetresPerMetre, PlumbFace } from "../plumb/level-fit.ts";
import { PLUMB_RULES, plumbTolerance } from "../plumb/plumb-tolerance.ts";
import type { PlumbToleranceChoice, Provenance } from "../plumb/plumb-tolerance.ts";
import { refusal, term } from "../working.ts";
import type { Refusal, Working } from "../working.ts";

export type PlumbInput = {
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly formHeight: Millimetres;
  readonly bottom: LevelReadings;
  readonly top: LevelReadings;
  readonly tolerance: PlumbToleranceChoice;
};

/** Move the top towards a face, by so much at the top of the form; the prop stands on the side the push comes from. */
export type Knock = { readonly towards: PlumbFace; readonly by: Millimetres; readonly propOn: PlumbFace };
export type Corner = "AB" | "BC" | "CD" | "DA";

export type PlumbAnswer = {
  readonly bottom: LevelFit;
  readonly top: LevelFit;
  /** Of the top of the form over its foot; x to the right, y up on plan. */
  readonly leanX: Millimetres;
  readonly leanY: Millimetres;
  readonly lean: Millimetres;
  readonly allowed: Millimetres;
  readonly allowedFrom: { readonly source: string; readonly provenance: Provenance | "own" };
  readonly passes: boolean;
  /** Top of the form against its foot, anticlockwise; shown, not judged: no rule on it was found. */
  readonly twist: MillimetresPerMetre | null;
  readonly knocks: readonly Knock[];
  /** How each corner of the top has to move to stand plumb over its foot, turn included where it is known. */
  readonly corners: readonly { readonly corner: Corner; readonly x: Millimetres; readonly y: Millimetres }[];
  readonly working: readonly Working[];
};

export type PlumbWorking = (input: PlumbInput) => Result<PlumbAnswer, Refusal>;

/** Less than a tape can tell. */
const UNSEEN = 0.5;
const CORNERS: readonly { readonly corner: Corner; readonly x: 1 | -1; readonly y: 1 | -1 }[] = [
  { corner: "AB", x: 1, y: 1 }, { corner: "BC", x: 1, y: -1 }, { corner: "CD", x: -1, y: -1 }, { corner: "DA", x: -1, y: 1 },
];

function invalid(input: PlumbInput): Refusal | null {
  const { width, depth, formHeight, bottom, top } = input;
  const levels: readonly (readonly [LevelReadings, "bottom" | "top"])[] = [[bottom, "bottom"], [top, "top"]];
  const offsets = levels.flatMap(([level, name]) =>
    level.faces.flatMap((reading): (readonly [string, number, number, number])[] => {
      const half = (reading.face === "A" || reading.face === "C" ? width : depth) / 2 + 50;
      return [[`offset on face ${reading.face} at the ${name} (mm)`, reading.offset, -300, 300], [`place along face ${reading.face} at the ${name} (mm)`, reading.along, -half, half]];
    }),
  );
  const diagonal = Math.hypot(width, depth);
  const diagonals = levels.flatMap(([level, name]): (readonly [string, number, number, number])[] =>
    level.diagonals === null ? [] : [level.diagonals.cdToAb, level.diagonals.bcToDa].map((length) => [`diagonal at the ${name} (mm)`, length, diagonal - 300, diagonal + 300]),
  );
  const bounds: readonly (readonly [string, number, number, number])[] = [
    ["column width (mm)", width, 50, 5000],
    ["column depth (mm)", depth, 50, 5000],
    ["form height (mm)", formHeight, 300, 20_000],
    ["height of the bottom readings (mm)", bottom.height, 0, formHeight],
    ["height of the top readings (mm)", top.height, bottom.height + Math.min(300, formHeight / 4), formHeight],
    ...offsets,
    ...diagonals,
  ];
  const broken = bounds.find(([, given, least, most]) => !(given >= least && given <= most));
  if (broken === undefined) return null;
  const [limit, given, least, most] = broken;
  return refusal({ limit, given, allowed: `${Math.round(least)} to ${Math.round(most)}`, source: "input", message: "Correct the readings." });
}

function knocksFor(leanX: number, leanY: number): readonly Knock[] {
  const knocks: Knock[] = [];
  if (Math.abs(leanX) >= UNSEEN) knocks.push(leanX > 0 ? { towards: "D", by: mm(leanX), propOn: "B" } : { towards: "B", by: mm(-leanX), propOn: "D" });
  if (Math.abs(leanY) >= UNSEEN) knocks.push(leanY > 0 ? { towards: "C", by: mm(leanY), propOn: "A" } : { towards: "A", by: mm(-leanY), propOn: "C" });
  return knocks;
}

function readingsTerm(level: LevelReadings, name: string) {
  const faces = level.faces.map((reading) => `${reading.face} ${reading.offset} at ${reading.along}`).join("; ");
  const diagonals = level.diagonals === null ? "" : `; diagonals ${level.diagonals.cdToAb} and ${level.diagonals.bcToDa}`;
  return term(`${name}, ${level.height} mm up`, `${faces}${diagonals}`, "mm");
}

/**
 * Plumb, square and twist of a form from readings at two levels, and how to knock it right.
 *
 * Formula: `fitLevel` at both levels; lean and twist = (top - bottom) x form height / height between the readings; a corner of the top moves by
 *   -(lean + twist x its arm).
 * Parameters: input with sides 50 to 5000 [mm], form height 300 to 20 000 [mm], readings up to 300 [mm] from their right place, levels at least
 *   300 mm or a quarter of the form apart; tolerance by rule or own [mm].
 * Result: lean, allowed lean, knocks and moves of the corners [mm]; twist, turn and out-of-square [mm/m], null where the readings do not tell.
 * Limits: refused outside those ranges and where one level has not two faces at right angles. Twist is shown, not judged: no rule on it was found.
 * Example: face A 1 mm out at 150 mm, 7 mm out at 3200 mm, form 3350 mm: leans 6 x 3350 / 3050 = 6.59 mm towards A; prop on A, knock towards C.
 * Source: rigid body on plan, method of least squares (equations of Gauss); tolerance as of `plumbTolerance`.
 */
export const plumbWorking: PlumbWorking = (input) => {
  const wrong = invalid(input);
  if (wrong !== null) return fail(wrong);
  const bottom = fitLevel(input.bottom, input.width, input.depth);
  if (!bottom.ok) return bottom;
  const top = fitLevel(input.top, input.width, input.depth);
  if (!top.ok) return top;
  const allowed = plumbTolerance(input.tolerance, input.formHeight);
  if (!allowed.ok) return allowed;
  const scale = input.formHeight / (input.top.height - input.bottom.height);
  const [leanX, leanY] = [(top.value.x - bottom.value.x) * scale, (top.value.y - bottom.value.y) * scale];
  const twist = top.value.turn === null || bottom.value.turn === null ? null : (top.value.turn - bottom.value.turn) * scale;
  const turned = (twist ?? 0) / 1000;
  const corners = CORNERS.map(({ corner, x, y }) => ({ corner, x: mm(-(leanX - (turned * y * input.depth) / 2)), y: mm(-(leanY + (turned * x * input.width) / 2)) }));
  const lean = Math.hypot(leanX, leanY);
  const rule = input.tolerance.kind === "rule" ? PLUMB_RULES[input.tolerance.rule] : { source: "The project's own limit", provenance: "own" as const };
  const working: Working = {
    title: "Plumb, square and twist",
    inputs: [readingsTerm(input.bottom, "bottom"), readingsTerm(input.top, "top"), term("form height", input.formHeight, "mm")],
    formula: "rigid box on plan at each level by least squares; lean = (top - bottom) x form height / height between the readings",
    steps: [
      term("lean in x", leanX, "mm"), term("lean in y", leanY, "mm"), term("twist", twist ?? "not told by the readings", twist === null ? "" : "mm/m"),
      term("out of square at the bottom", bottom.value.outOfSquare ?? "not told by the readings", bottom.value.outOfSquare === null ? "" : "mm/m"),
      term("out of square at the top", top.value.outOfSquare ?? "not told by the readings", top.value.outOfSquare === null ? "" : "mm/m"),
      term("left over by the fit", Math.max(bottom.value.residual, top.value.residual), "mm"), term("allowed lean", allowed.value, "mm"),
    ],
    result: term("lean of the top over the foot", lean, "mm"),
    source: `Least squares; tolerance: ${rule.source}`,
  };
  return ok({
    bottom: bottom.value, top: top.value, leanX: mm(leanX), leanY: mm(leanY), lean: mm(lean), allowed: allowed.value, allowedFrom: rule,
    passes: lean <= allowed.value, twist: twist as MillimetresPerMetre | null, knocks: knocksFor(leanX, leanY), corners, working: [working],
  });
};
