import { z } from "zod";
import { mm } from "#lib/kernel/units.ts";
import type { LevelFit, LevelReadings } from "#lib/trade/engineering/plumb/level-fit.ts";
import { PLUMB_TOLERANCES } from "#lib/trade/engineering/plumb/plumb-tolerance.ts";
import type { PlumbAnswer, PlumbInput } from "#lib/trade/engineering/workings/plumb.ts";
import { amount, told } from "./amounts.ts";
import { tellWorking, workings } from "./answer-parts.ts";

const face = z.enum(["A", "B", "C", "D"]).describe("A and C lie across the width, lettered clockwise on plan: A above, B right, C below, D left.");
const length = (about: string) => amount(0.1, 100_000, about);

const level = z.strictObject({
  height_mm: amount(0, 100_000, "Of the readings above the foot of the form."),
  faces: z.array(z.strictObject({
    face,
    along_mm: amount(-10_000, 10_000, "From the face's centre line, to the right or up on plan."),
    offset_mm: amount(-10_000, 10_000, "Outside (+) or inside (-) the right place of the face."),
  })).min(1).max(40),
  diagonals: z.strictObject({ cd_to_ab_mm: length("Inside, from corner CD to AB."), bc_to_da_mm: length("Inside, from corner BC to DA.") }).nullable().default(null),
});

const shape = z.strictObject({
  width_mm: length("Of the concrete."),
  depth_mm: length("Of the concrete."),
  form_height_mm: length("From foot to top."),
  bottom: level,
  top: level,
  tolerance: z.discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("rule"), rule: z.enum(PLUMB_TOLERANCES) }),
    z.strictObject({ kind: z.literal("own"), limit_mm: amount(0.1, 1000, "The project's own limit for the whole height.") }),
  ]),
});

const toLevel = ({ height_mm, faces, diagonals }: z.output<typeof level>): LevelReadings => ({
  height: mm(height_mm),
  faces: faces.map((reading) => ({ face: reading.face, along: mm(reading.along_mm), offset: mm(reading.offset_mm) })),
  diagonals: diagonals === null ? null : { cdToAb: mm(diagonals.cd_to_ab_mm), bcToDa: mm(diagonals.bc_to_da_mm) },
});

export const plumbInput = shape.transform((given): PlumbInput => ({
  width: mm(given.width_mm),
  depth: mm(given.depth_mm),
  formHeight: mm(given.form_height_mm),
  bottom: toLevel(given.bottom),
  top: toLevel(given.top),
  tolerance: given.tolerance.kind === "own" ? { kind: "own", limit: mm(given.tolerance.limit_mm) } : given.tolerance,
}));

const fit = z.strictObject({
  x_mm: told("To the right on plan."), y_mm: told("Up on plan."),
  turn_mm_per_m: told("Anticlockwise.").nullable().describe("Null where the readings do not tell."),
  out_of_square_mm_per_m: told("How far the angle at corner AB is under a right angle.").nullable().describe("Null where the readings do not tell."),
  residual_mm: told("Root mean square of what the fit leaves over."),
});

export const plumbAnswer = z.strictObject({
  passes: z.boolean(),
  lean_x_mm: told("Of the top over the foot, to the right on plan."), lean_y_mm: told("Up on plan."), lean_mm: told("Both together."), allowed_mm: told("Over the whole height."),
  allowed_source: z.string(),
  allowed_provenance: z.enum(["read", "memory", "own"]).describe("memory: the standard has to be read before it is relied on."),
  twist_mm_per_m: told("Of the top against the foot, anticlockwise; shown, not judged.").nullable().describe("Null where the readings do not tell."),
  bottom: fit,
  top: fit,
  knocks: z.array(z.strictObject({ towards: face, by_mm: told("At the top of the form."), prop_on: face })),
  corners: z.array(z.strictObject({ corner: z.enum(["AB", "BC", "CD", "DA"]), x_mm: told("How far this corner of the top has to move."), y_mm: told("Up on plan.") })),
  working: workings,
});
export type PlumbTold = z.output<typeof plumbAnswer>;

const tellFit = ({ x, y, turn, outOfSquare, residual }: LevelFit): z.output<typeof fit> =>
  ({ x_mm: x, y_mm: y, turn_mm_per_m: turn, out_of_square_mm_per_m: outOfSquare, residual_mm: residual });

export const tellPlumb = (answer: PlumbAnswer): PlumbTold => ({
  passes: answer.passes, lean_x_mm: answer.leanX, lean_y_mm: answer.leanY, lean_mm: answer.lean, allowed_mm: answer.allowed,
  allowed_source: answer.allowedFrom.source, allowed_provenance: answer.allowedFrom.provenance, twist_mm_per_m: answer.twist,
  bottom: tellFit(answer.bottom), top: tellFit(answer.top),
  knocks: answer.knocks.map(({ towards, by, propOn }) => ({ towards, by_mm: by, prop_on: propOn })),
  corners: answer.corners.map(({ corner, x, y }) => ({ corner, x_mm: x, y_mm: y })),
  working: tellWorking(answer.working),
});

export const plumbExample = {
  width_mm: 520, depth_mm: 380, form_height_mm: 3350,
  bottom: { height_mm: 150, faces: [{ face: "A", along_mm: -200, offset_mm: 1 }, { face: "A", along_mm: 200, offset_mm: 0 }, { face: "B", along_mm: 0, offset_mm: -1 }] },
  top: { height_mm: 3200, faces: [{ face: "A", along_mm: -200, offset_mm: 7 }, { face: "A", along_mm: 200, offset_mm: 4 }, { face: "B", along_mm: 0, offset_mm: -6 }] },
  tolerance: { kind: "own", limit_mm: 8 },
} satisfies z.input<typeof shape>;
