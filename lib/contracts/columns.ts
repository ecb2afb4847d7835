import { z } from "zod";
import { id, line, optionalLine, wholeMm } from "./fields.ts";
import { section } from "./projects.ts";

const heightMm = wholeMm(300, 15_000).nullable().default(null);

export const addColumnsInput = z.object({
  projectId: id,
  markId: id,
  gridRefs: z.array(line(40)).min(1, "Name at least one grid position.").max(500, "Not more than 500 positions at once."),
  fromLevelId: id,
  toLevelId: id,
  headedBy: z.enum(["slab", "beam"]),
  formHeightMm: heightMm,
});

export const changeColumnInput = z.object({
  projectId: id,
  columnId: id,
  version: z.number().int(),
  ...section,
  headedBy: z.enum(["slab", "beam"]),
  formHeightMm: heightMm,
  concrete: optionalLine(40),
  remarks: optionalLine(300),
  /** A column that has been stood changes only with a reason. */
  reason: optionalLine(300),
});

/** Size and height of every column of a mark on one lift, or on that lift and all above it. */
export const changeMarkOnLevelInput = z.object({
  projectId: id,
  markId: id,
  fromLevelId: id,
  andAbove: z.boolean().default(false),
  ...section,
  headedBy: z.enum(["slab", "beam"]),
  formHeightMm: heightMm,
});

export const removeColumnsInput = z.object({
  projectId: id,
  columnIds: z.array(id).min(1).max(5000),
  reason: line(300),
});
export const columnInput = z.object({ projectId: id, columnId: id });

export const scheduleFileInput = z.object({
  projectId: id,
  fileName: z.string().trim().min(1).max(255),
  file: z.instanceof(Uint8Array),
});
/** `digest` is the preview's: the import is refused when file or project have changed since it was drawn. */
export const importScheduleInput = scheduleFileInput.extend({ digest: z.string().regex(/^[0-9a-f]{64}$/) });
export const importFileInput = z.object({ projectId: id, importId: id });
