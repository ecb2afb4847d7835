import "server-only";
import { invitePersonInput, readInvitationInput, acceptInvitationInput, revokeInvitationInput } from "#lib/contracts/people.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { companyUseCase, doorUseCase } from "../gate/use-case.ts";
import { enterCompany } from "../gate/store.ts";
import { now } from "../platform/clock.ts";
import { clashOf, transaction } from "../platform/db.ts";
import { newId } from "../platform/new-id.ts";
import { hashPassword, newToken, sha256 } from "../platform/secrets.ts";
import { addPersonTo, closeInvitation, findInvitationAtDoor, findPersonAtDoor } from "./door-store.ts";
import { addInvitation, revokeInvitationRow, revokeInvitationsTo } from "./store.ts";

export const INVITATION_DAYS = 7;

/** Answers with the link's word once; only its hash is kept. */
export const invitePerson = companyUseCase("people.invitePerson", "people.manage", invitePersonInput, async (scope, input) => {
  if (await findPersonAtDoor(scope.tx, input.email)) return brokenRule("email-in-use", { email: input.email });
  await revokeInvitationsTo(scope, input.email);
  const token = newToken();
  const expiresAt = new Date(Date.parse(scope.now) + INVITATION_DAYS * 86_400_000).toISOString();
  await addInvitation(scope, { id: newId(), ...input, tokenHash: sha256(token), expiresAt });
  return ok({ token, expiresAt });
});

export const revokeInvitation = companyUseCase(
  "people.revokeInvitation",
  "people.manage",
  revokeInvitationInput,
  async (scope, { invitationId }) =>
    (await revokeInvitationRow(scope, invitationId)).count === 1 ? ok(null) : notFound("invitation"),
);

export const readInvitation = doorUseCase("people.readInvitation", readInvitationInput, async ({ token }) => {
  const invitation = await transaction((tx) => findInvitationAtDoor(tx, sha256(token)));
  if (!invitation?.isOpen) return notFound("invitation");
  const { email, role, companyName, inviterName } = invitation;
  return ok({ email, role, companyName, inviterName });
});

export const acceptInvitation = doorUseCase("people.acceptInvitation", acceptInvitationInput, async (input) => {
  const passwordHash = await hashPassword(input.password);
  try {
    return await transaction(async (tx) => {
      const invitation = await findInvitationAtDoor(tx, sha256(input.token));
      if (!invitation?.isOpen) return notFound("invitation");
      const { companyId, email, role } = invitation;
      await enterCompany(tx, companyId);
      if (!(await closeInvitation(tx, companyId, invitation.id, now()))) return notFound("invitation");
      await addPersonTo(tx, companyId, { id: newId(), email, name: input.name, role, passwordHash });
      return ok({ email });
    });
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("email-in-use", {});
    throw error;
  }
});
