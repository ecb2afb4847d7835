import "server-only";
import type { Role } from "#lib/access/roles.ts";
import { EXAMPLE_CLAMP_KINDS } from "#lib/trade/shutter/example-rule.ts";
import type { Tx } from "../platform/db.ts";
import { newId } from "../platform/new-id.ts";
import { enterCompany } from "../gate/store.ts";

export type KnownPerson = { companyId: string; id: string; passwordHash: string; isActive: boolean; sessionEpoch: number };
export type KnownInvitation = {
  companyId: string; id: string; email: string; role: Role; companyName: string; inviterName: string; isOpen: boolean;
};

export async function findPersonAtDoor(tx: Tx, email: string): Promise<KnownPerson | null> {
  const rows = await tx.$queryRaw<KnownPerson[]>`
    select company_id::text "companyId", id::text, password_hash "passwordHash", is_active "isActive",
           session_epoch "sessionEpoch" from door_find_person(${email})`;
  return rows[0] ?? null;
}

export async function findInvitationAtDoor(tx: Tx, tokenHash: string): Promise<KnownInvitation | null> {
  const rows = await tx.$queryRaw<KnownInvitation[]>`
    select company_id::text "companyId", id::text, email, role, company_name "companyName",
           inviter_name "inviterName", is_open "isOpen" from door_find_invitation(${tokenHash})`;
  return rows[0] ?? null;
}

export async function hasCompanies(tx: Tx): Promise<boolean> {
  const rows = await tx.$queryRaw<{ has: boolean }[]>`select door_has_companies() as has`;
  return rows[0]?.has ?? false;
}

export async function countFailures(tx: Tx, key: string, minutes: number): Promise<number> {
  const rows = await tx.$queryRaw<{ count: number }[]>`select door_failures(${key}, ${minutes}::int) as count`;
  return rows[0]?.count ?? 0;
}

/** Whoever tries with the same key waits until this transaction is over. */
export async function takeTurns(tx: Tx, key: string): Promise<void> {
  await tx.$queryRaw`select 1 from (select pg_advisory_xact_lock(hashtextextended(${key}, 0))) taken`;
}

export async function noteFailure(tx: Tx, key: string): Promise<void> {
  await tx.$queryRaw`select 1 from (select door_note_failure(${key})) noted`;
}

export async function clearFailures(tx: Tx, key: string): Promise<void> {
  await tx.$queryRaw`select 1 from (select door_clear_failures(${key})) cleared`;
}

type NewPerson = { id: string; email: string; name: string; role: Role; passwordHash: string };

export async function addPersonTo(tx: Tx, companyId: string, person: NewPerson): Promise<void> {
  await tx.person.create({ data: { ...person, companyId } });
}

/** True when the address is a person of the company already, who now has this password and no older session. */
export async function renewPassword(tx: Tx, companyId: string, email: string, passwordHash: string): Promise<boolean> {
  const data = { passwordHash, sessionEpoch: { increment: 1 } };
  return (await tx.person.updateMany({ where: { companyId, email, isActive: true }, data })).count === 1;
}

/** True when this call closed the invitation; false when it was no longer open. */
export async function closeInvitation(tx: Tx, companyId: string, invitationId: string, at: string): Promise<boolean> {
  const closed = await tx.invitation.updateMany({
    where: { companyId, id: invitationId, acceptedAt: null, revokedAt: null },
    data: { acceptedAt: at },
  });
  return closed.count === 1;
}

/** A new company starts with example clamps, marked as such, so that a form set can be drawn before the hirer's data is in. */
export async function addCompany(tx: Tx, company: { id: string; name: string }): Promise<void> {
  await enterCompany(tx, company.id);
  await tx.company.create({ data: company });
  await tx.clampKind.createMany({
    data: EXAMPLE_CLAMP_KINDS.map((kind) => ({
      companyId: company.id, id: newId(), name: kind.name, minSizeMm: kind.minSize, maxSizeMm: kind.maxSize,
      sideCapacityKn: kind.sideCapacity, barLengthMm: kind.barLength, barDepthMm: kind.barDepth,
      barThicknessMm: kind.barThickness, weightKg: kind.weight, source: kind.source, isExample: true,
    })),
  });
}

export type KnownToken = { companyId: string; id: string; personId: string; sessionEpoch: number };

/** The token's owner, and notes that it was used; at most once a minute, so that a busy program writes little. */
export async function findTokenAtDoor(tx: Tx, tokenHash: string): Promise<KnownToken | null> {
  const rows = await tx.$queryRaw<KnownToken[]>`
    select company_id::text "companyId", id::text, person_id::text "personId", session_epoch "sessionEpoch"
    from door_find_token(${tokenHash})`;
  const token = rows[0];
  if (!token) return null;
  await enterCompany(tx, token.companyId);
  await tx.$executeRaw`
    update access_token set last_used_at = now() where company_id = ${token.companyId}::uuid and id = ${token.id}::uuid
      and (last_used_at is null or last_used_at < now() - interval '1 minute')`;
  return token;
}
