import { z } from "zod";
import { FACE_LETTERS, rests } from "../gear.ts";
import { id, instant, line } from "../fields.ts";

const face = z.enum(FACE_LETTERS, { message: "Name a face: A, B, C or D." });
const MOST_LINES = 600;

/** `whole` plans anew what was accepted before and is not made up yet; else that stays and only the rest is planned. */
export const reuseInput = z.object({ projectId: id, whole: z.boolean().default(false) });

const source = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("panel"), itemId: id }),
  z.object({ kind: z.literal("after"), columnId: id, face }),
  z.object({ kind: z.literal("new") }),
]);
/** Lines of a plan as they were shown. */
export const acceptReuseInput = z.object({
  projectId: id,
  whole: z.boolean(),
  lines: z.array(z.object({ columnId: id, face, source })).min(1, "Choose at least one line.").max(MOST_LINES, `Not more than ${MOST_LINES} lines at once.`)
    .refine((lines) => new Set(lines.map(({ columnId, face: letter }) => `${columnId} ${letter}`)).size === lines.length, "One panel to a face."),
});
export type ReuseLine = z.output<typeof acceptReuseInput>["lines"][number];

export const reservedInput = z.object({ projectId: id, columnId: id.optional() });
export const withdrawReservedInput = z.object({ projectId: id, reservationIds: z.array(id).min(1, "Choose at least one line.").max(MOST_LINES), reason: line(200) });
export const cutReservedInput = z.object({ projectId: id, reservationId: id, happenedAt: instant, rests });
