import "server-only";
import type { Role } from "#lib/access/roles.ts";
import type { CompanyScope } from "../gate/scope.ts";

export type PersonRow = { id: string; name: string; email: string; role: string; isActive: boolean };

export const listPersonRows = (scope: CompanyScope): Promise<PersonRow[]> =>
  scope.tx.person.findMany({
    where: { companyId: scope.companyId },
    orderBy: [{ isActive: "desc" }, { name: "asc" }, { id: "asc" }],
    select: { id: true, name: true, email: true, role: true, isActive: true },
  });

export const findPersonRow = (scope: CompanyScope, personId: string): Promise<PersonRow | null> =>
  scope.tx.person.findUnique({
    where: { companyId_id: { companyId: scope.companyId, id: personId } },
    select: { id: true, name: true, email: true, role: true, isActive: true },
  });

/** Locks the active owners, so that two requests cannot each remove the other's last owner. */
export async function countActiveOwners(scope: CompanyScope): Promise<number> {
  const rows = await scope.tx.$queryRaw<unknown[]>`
    select id from person where company_id = ${scope.companyId}::uuid and role = 'owner' and is_active for update`;
  return rows.length;
}

export const setRole = (scope: CompanyScope, personId: string, role: Role): Promise<{ count: number }> =>
  scope.tx.person.updateMany({ where: { companyId: scope.companyId, id: personId }, data: { role } });

/** Every change of standing raises the epoch, so sessions made before it end at their next request. */
export const setActive = (scope: CompanyScope, personId: string, isActive: boolean): Promise<{ count: number }> =>
  scope.tx.person.updateMany({
    where: { companyId: scope.companyId, id: personId },
    data: { isActive, sessionEpoch: { increment: 1 } },
  });

export const ownSecret = (scope: CompanyScope) =>
  scope.tx.person.findUniqueOrThrow({
    where: { companyId_id: { companyId: scope.companyId, id: scope.member.id } },
    select: { passwordHash: true, email: true },
  });

export const setOwnPassword = (scope: CompanyScope, passwordHash: string) =>
  scope.tx.person.update({
    where: { companyId_id: { companyId: scope.companyId, id: scope.member.id } },
    data: { passwordHash, sessionEpoch: { increment: 1 } },
    select: { sessionEpoch: true },
  });

export const companyName = async (scope: CompanyScope): Promise<string> =>
  (await scope.tx.company.findUniqueOrThrow({ where: { id: scope.companyId } })).name;

export const listOpenInvitations = (scope: CompanyScope) =>
  scope.tx.invitation.findMany({
    where: { companyId: scope.companyId, acceptedAt: null, revokedAt: null, expiresAt: { gt: scope.now } },
    orderBy: { createdAt: "asc" },
    select: { id: true, email: true, role: true, expiresAt: true },
  });

export const addInvitation = (
  scope: CompanyScope,
  row: { id: string; email: string; role: Role; tokenHash: string; expiresAt: string },
) => scope.tx.invitation.create({ data: { ...row, companyId: scope.companyId, invitedBy: scope.member.id } });

export const revokeInvitationRow = (scope: CompanyScope, invitationId: string): Promise<{ count: number }> =>
  scope.tx.invitation.updateMany({
    where: { companyId: scope.companyId, id: invitationId, acceptedAt: null, revokedAt: null },
    data: { revokedAt: scope.now },
  });

/** An earlier open invitation to the same address is replaced, so only the last link works. */
export const revokeInvitationsTo = (scope: CompanyScope, email: string): Promise<{ count: number }> =>
  scope.tx.invitation.updateMany({
    where: { companyId: scope.companyId, email, acceptedAt: null, revokedAt: null },
    data: { revokedAt: scope.now },
  });
