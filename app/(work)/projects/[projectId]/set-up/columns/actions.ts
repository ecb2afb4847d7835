"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { addColumns, changeMarkOnLevel } from "#lib/server/columns/change-columns.ts";
import { paths } from "#app/paths.ts";

export async function addColumnsAction(input: Parameters<typeof addColumns>[1]) {
  const added = await addColumns(await currentCaller(), input);
  if (added.ok) revalidatePath(paths.project(input.projectId), "layout");
  return added;
}

export async function changeMarkOnLevelAction(input: Parameters<typeof changeMarkOnLevel>[1]) {
  const changed = await changeMarkOnLevel(await currentCaller(), input);
  if (changed.ok) revalidatePath(paths.project(input.projectId), "layout");
  return changed;
}
