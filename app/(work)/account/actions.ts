"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { createToken, revokeToken } from "#lib/server/people/access-tokens.ts";
import { changePassword } from "#lib/server/people/own-account.ts";
import { ok } from "#lib/kernel/result.ts";
import { paths } from "#app/paths.ts";

export async function changePasswordAction(input: Parameters<typeof changePassword>[1]) {
  const changed = await changePassword(await currentCaller(), input);
  return changed.ok ? ok(null) : changed;
}

export async function createTokenAction(input: Parameters<typeof createToken>[1]) {
  const created = await createToken(await currentCaller(), input);
  if (created.ok) revalidatePath(paths.account());
  return created;
}

export async function revokeTokenAction(input: Parameters<typeof revokeToken>[1]) {
  const revoked = await revokeToken(await currentCaller(), input);
  if (revoked.ok) revalidatePath(paths.account());
  return revoked;
}
