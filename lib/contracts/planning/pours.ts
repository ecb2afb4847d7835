import { z } from "zod";
import { day, id, optionalLine } from "../fields.ts";

export const plannedDaysInput = z.object({ projectId: id, levelId: id.optional() });

const plannedDays = z
  .object({ columnId: id, pour: optionalLine(40), stoodOn: day.nullable(), pouredOn: day.nullable() })
  .refine(({ stoodOn, pouredOn }) => stoodOn === null || pouredOn === null || stoodOn <= pouredOn, {
    message: "A column cannot be poured before it is stood.", path: ["pouredOn"],
  });

/** What is planned for these columns from now on; columns not named keep theirs. */
export const savePlannedDaysInput = z.object({
  projectId: id,
  columns: z.array(plannedDays).min(1, "Choose at least one column.").max(5000, "Not more than 5,000 columns at once."),
});
