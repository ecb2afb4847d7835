"use server";

import { revalidatePath } from "next/cache";
import { cutAsPlanned } from "#lib/server/cutting/cut/cut-as-planned.ts";
import { currentCaller } from "#lib/server/gate/session.ts";

export async function cutAsPlannedAction(input: Parameters<typeof cutAsPlanned>[1]) {
  const answer = await cutAsPlanned(await currentCaller(), input);
  if (answer.ok) revalidatePath("/projects/[projectId]", "layout");
  return answer;
}
