"use server";

import { revalidatePath } from "next/cache";
import type { Result } from "#lib/kernel/result.ts";
import { acceptReuse } from "#lib/server/cutting/reuse/accept-reuse.ts";
import { withdrawReserved } from "#lib/server/cutting/reuse/withdraw-reserved.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { cutReserved } from "#lib/server/gear/reserved/cut-reserved.ts";

async function afresh<T>(answer: Promise<Result<T>>): Promise<Result<T>> {
  const given = await answer;
  if (given.ok) revalidatePath("/projects/[projectId]", "layout");
  return given;
}

export async function acceptReuseAction(input: Parameters<typeof acceptReuse>[1]) {
  return afresh(acceptReuse(await currentCaller(), input));
}
export async function withdrawReservedAction(input: Parameters<typeof withdrawReserved>[1]) {
  return afresh(withdrawReserved(await currentCaller(), input));
}
export async function cutReservedAction(input: Parameters<typeof cutReserved>[1]) {
  return afresh(cutReserved(await currentCaller(), input));
}
