"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { retireClampKind, saveClampKind } from "#lib/server/projects/clamp-kinds.ts";

export async function saveClampKindAction(input: Parameters<typeof saveClampKind>[1]) {
  const saved = await saveClampKind(await currentCaller(), input);
  if (saved.ok) revalidatePath("/", "layout");
  return saved;
}

export async function retireClampKindAction(input: Parameters<typeof retireClampKind>[1]) {
  const retired = await retireClampKind(await currentCaller(), input);
  if (retired.ok) revalidatePath("/", "layout");
  return retired;
}
