"use server";

import { acceptInvitation } from "#lib/server/people/invitations.ts";

export async function acceptInvitationAction(input: Parameters<typeof acceptInvitation>[0]) {
  return acceptInvitation(input);
}
