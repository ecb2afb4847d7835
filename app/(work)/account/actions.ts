"use server";

import { currentCaller } from "#lib/server/gate/session.ts";
import { changePassword } from "#lib/server/people/own-account.ts";
import { ok } from "#lib/kernel/result.ts";

export async function changePasswordAction(input: Parameters<typeof changePassword>[1]) {
  const changed = await changePassword(await currentCaller(), input);
  return changed.ok ? ok(null) : changed;
}
