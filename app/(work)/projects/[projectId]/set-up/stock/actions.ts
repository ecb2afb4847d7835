"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { changeCuttingRule } from "#lib/server/cutting/cutting-rule.ts";
import { paths } from "#app/paths.ts";

export async function changeCuttingRuleAction(input: Parameters<typeof changeCuttingRule>[1]) {
  const changed = await changeCuttingRule(await currentCaller(), input);
  if (changed.ok || changed.failure.kind === "conflict") revalidatePath(paths.project(input.projectId), "layout");
  return changed;
}
