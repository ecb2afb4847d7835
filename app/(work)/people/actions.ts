"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { invitePerson, linkNewPassword, revokeInvitation } from "#lib/server/people/invitations.ts";
import { changeRole, setPersonActive } from "#lib/server/people/manage-people.ts";
import { paths } from "#app/paths.ts";

export async function invitePersonAction(input: Parameters<typeof invitePerson>[1]) {
  const invited = await invitePerson(await currentCaller(), input);
  if (invited.ok) revalidatePath(paths.people());
  return invited;
}

export async function linkNewPasswordAction(input: Parameters<typeof linkNewPassword>[1]) {
  const linked = await linkNewPassword(await currentCaller(), input);
  if (linked.ok) revalidatePath(paths.people());
  return linked;
}

export async function revokeInvitationAction(input: Parameters<typeof revokeInvitation>[1]) {
  const revoked = await revokeInvitation(await currentCaller(), input);
  if (revoked.ok) revalidatePath(paths.people());
  return revoked;
}

export async function changeRoleAction(input: Parameters<typeof changeRole>[1]) {
  const changed = await changeRole(await currentCaller(), input);
  if (changed.ok) revalidatePath("/", "layout");
  return changed;
}

export async function setPersonActiveAction(input: Parameters<typeof setPersonActive>[1]) {
  const changed = await setPersonActive(await currentCaller(), input);
  if (changed.ok) revalidatePath(paths.people());
  return changed;
}
