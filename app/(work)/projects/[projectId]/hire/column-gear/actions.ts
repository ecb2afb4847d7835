"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { changeColumnGear } from "#lib/server/returns/column-gear.ts";
import { paths } from "#app/paths.ts";

export async function changeColumnGearAction(input: Parameters<typeof changeColumnGear>[1]) {
  const changed = await changeColumnGear(await currentCaller(), input);
  if (changed.ok || changed.failure.kind === "conflict") revalidatePath(paths.project(input.projectId), "layout");
  return changed;
}
