import "server-only";
import { isRole, type Role } from "#lib/access/roles.ts";
import { acceptInvitationInput, invitePersonInput, personInput, readInvitationInput, revokeInvitationInput } from "#lib/contracts/people.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import type { CompanyScope } from "../gate/scope.ts";
import { companyUseCase, doorUseCase } from "../gate/use-case.ts";
import { enterCompany } from "../gate/store.ts";
import { now } from "../platform/clock.ts";
import { clashOf, transaction } from "../platform/db.ts";
import { newId } from "../platform/new-id.ts";
import { hashPassword, newToken, sha256 } from "../platform/secrets.ts";
import { addPersonTo, closeInvitation, findInvitationAtDoor, findPersonAtDoor, renewPassword } from "./door-store.ts";
import { addInvitation, findPersonRow, revokeInvitationRow, revokeInvitationsTo } from "./store.ts";

export const INVITATION_DAYS = 7;

async function writeLink(scope: CompanyScope, to: { email: string; role: Role }) {
  await revokeInvitationsTo(scope, to.email);
  const token = newToken();
  const expiresAt = new Date(Date.parse(scope.now) + INVITATION_DAYS * 86_400_000).toISOString();
  await addInvitation(scope, { id: newId(), ...to, tokenHash: sha256(token), expiresAt });
  return ok({ token, expiresAt });
}

/** Answers with the link's word once; only its hash is kept. */
export const invitePerson = companyUseCase("people.invitePerson", "people.manage", invitePersonInput, async (scope, input) =>
  (await findPersonAtDoor(scope.tx, input.email)) ? brokenRule("email-in-use", { email: input.email }) : writeLink(scope, input),
);

/** A link with which a person who lost the password sets a new one. */
export const linkNewPassword = companyUseCase("people.linkNewPassword", "people.manage", personInput, async (scope, { personId }) => {
  const person = await findPersonRow(scope, personId);
  if (!person || !isRole(person.role)) return notFound("person");
  if (!person.isActive) return brokenRule("person-not-active", { name: person.name });
  return writeLink(scope, { email: person.email, role: person.role });
});

export const revokeInvitation = companyUseCase(
  "people.revokeInvitation",
  "people.manage",
  revokeInvitationInput,
  async (scope, { invitationId }) =>
    (await revokeInvitationRow(scope, invitationId)).count === 1 ? ok(null) : notFound("invitation"),
);

export const readInvitation = doorUseCase("people.readInvitation", readInvitationInput, async ({ token }) => {
  const known = await transaction(async (tx) => {
    const invitation = await findInvitationAtDoor(tx, sha256(token));
    if (!invitation?.isOpen) return null;
    const person = await findPersonAtDoor(tx, invitation.email);
    return { ...invitation, setsNewPassword: person?.companyId === invitation.companyId };
  });
  if (!known) return notFound("invitation");
  const { email, role, companyName, inviterName, setsNewPassword } = known;
  return ok({ email, role, companyName, inviterName, setsNewPassword });
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
      const renewed = await renewPassword(tx, companyId, email, passwordHash);
      if (!renewed) await addPersonTo(tx, companyId, { id: newId(), email, name: input.name, role, passwordHash });
      return ok({ email });
    });
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("email-in-use", {});
    throw error;
  }
});
