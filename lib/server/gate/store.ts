import "server-only";
import { isRole } from "#lib/access/roles.ts";
import type { Tx } from "../platform/db.ts";
import type { Caller } from "./caller.ts";
import type { Member } from "./scope.ts";

/** Tells row-level security whose rows this transaction may see. */
export async function enterCompany(tx: Tx, companyId: string): Promise<void> {
  await tx.$queryRaw`select set_config('app.company_id', ${companyId}, true)`;
}

/** The caller's row as it stands now; null when the person is gone, deactivated, or the session is from before a change. */
export async function findMember(tx: Tx, caller: Caller): Promise<Member | null> {
  const rows = await tx.$queryRaw<{ id: string; name: string; role: string }[]>`
    select id::text, name, role from person
    where company_id = ${caller.companyId}::uuid and id = ${caller.personId}::uuid
      and is_active and session_epoch = ${caller.sessionEpoch}`;
  const row = rows[0];
  return row && isRole(row.role) ? { id: row.id, name: row.name, role: row.role } : null;
}

export async function hasProject(tx: Tx, companyId: string, projectId: string): Promise<boolean> {
  const rows = await tx.$queryRaw<unknown[]>`
    select 1 from project where company_id = ${companyId}::uuid and id = ${projectId}::uuid`;
  return rows.length > 0;
}
