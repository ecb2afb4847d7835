"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { lockCount, settleCount } from "#lib/server/gear/counts/stocktake.ts";

export async function lockCountAction(input: Parameters<typeof lockCount>[1]) {
  const locked = await lockCount(await currentCaller(), input);
  if (locked.ok) revalidatePath("/projects/[projectId]/gear", "layout");
  return locked;
}
export async function settleCountAction(input: Parameters<typeof settleCount>[1]) {
  const settled = await settleCount(await currentCaller(), input);
  if (settled.ok) revalidatePath("/projects/[projectId]/gear", "layout");
  return settled;
}
