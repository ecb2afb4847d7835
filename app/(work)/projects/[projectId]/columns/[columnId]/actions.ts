"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { changeColumn, removeColumns } from "#lib/server/columns/change-columns.ts";
import { paths } from "#app/paths.ts";

export async function changeColumnAction(input: Parameters<typeof changeColumn>[1]) {
  const changed = await changeColumn(await currentCaller(), input);
  if (changed.ok) revalidatePath(paths.project(input.projectId), "layout");
  return changed;
}

/** The page of the column is gone afterwards, so what is to be drawn anew is left to where the browser goes next. */
export async function removeColumnsAction(input: Parameters<typeof removeColumns>[1]) {
  return removeColumns(await currentCaller(), input);
}
