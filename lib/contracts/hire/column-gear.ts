import { z } from "zod";
import { id } from "../fields.ts";

const limit = z.number({ message: "Give a length, or leave it empty." }).min(0, "Not under 0.").max(100_000, "Not over 100 m.").nullable();
const under = (over: number | null, upTo: number | null): boolean => over === null || upTo === null || over < upTo;

/** So many pieces for every column between the limits; what the number is, the formwork's design says. */
const row = z
  .object({
    itemId: id, levelId: id.nullable(), sideOverMm: limit, sideUpToMm: limit, heightOverMm: limit, heightUpToMm: limit,
    count: z.number({ message: "Give whole pieces." }).int("Give whole pieces.").min(1, "At least one piece.").max(1000, "Not over 1,000 pieces."),
  })
  .refine(({ sideOverMm, sideUpToMm }) => under(sideOverMm, sideUpToMm), { message: "Must be over the first limit.", path: ["sideUpToMm"] })
  .refine(({ heightOverMm, heightUpToMm }) => under(heightOverMm, heightUpToMm), { message: "Must be over the first limit.", path: ["heightUpToMm"] });

export const columnGear = z.object({ rows: z.array(row).max(200, "Not more than 200 rows.") });
export type ColumnGear = z.output<typeof columnGear>;

export const changeColumnGearInput = z.object({ projectId: id, version: z.number().int(), columnGear });
