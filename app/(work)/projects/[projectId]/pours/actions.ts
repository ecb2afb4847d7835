"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { savePlannedDays } from "#lib/server/pours/planned-days.ts";
import { paths } from "#app/paths.ts";

export async function savePlannedDaysAction(input: Parameters<typeof savePlannedDays>[1]) {
  const saved = await savePlannedDays(await currentCaller(), input);
  if (saved.ok) revalidatePath(paths.pours(input.projectId));
  return saved;
}
