import "server-only";
import type { ProjectScope } from "./scope.ts";

export const CHANGE_CHANNEL = "shutterwright_changes";

/** Screens redraw columns after "progress", and reread the project after anything else. */
export type ChangeKind = "progress" | "schedule" | "set-up";

/**
 * The next `count` numbers of the project, as the last of them. The row lock holds until commit, so numbers become
 * visible in order and a reader that has seen n has missed nothing below it.
 */
export async function takeNumbers(scope: ProjectScope, count: number): Promise<number> {
  const rows = await scope.tx.$queryRaw<{ last: bigint }[]>`
    update project set last_seq = last_seq + ${count}::int
    where company_id = ${scope.companyId}::uuid and id = ${scope.projectId}::uuid returning last_seq as last`;
  const last = rows[0]?.last;
  if (last === undefined) throw new Error("The project vanished inside its own transaction.");
  return Number(last);
}

type Change = { kind: ChangeKind; detail: object; columnIds?: readonly string[] };

/** Writes the audit line and wakes every screen once the transaction commits. */
export async function writeChange(scope: ProjectScope, seq: number, change: Change): Promise<void> {
  const { tx, companyId, projectId, member, now } = scope;
  const columnIds = [...(change.columnIds ?? [])];
  const wake = JSON.stringify({ companyId, projectId, seq });
  await tx.$queryRaw`
    with line as (
      insert into change_line (company_id, project_id, seq, at, person_id, kind, detail, column_ids)
      values (${companyId}::uuid, ${projectId}::uuid, ${seq}::bigint, ${now}::timestamptz, ${member.id}::uuid,
              ${change.kind}, ${JSON.stringify(change.detail)}::jsonb, ${columnIds}::uuid[])
      returning 1
    ) select 1 from (select pg_notify(${CHANGE_CHANNEL}, ${wake}) from line) woken`;
}

export async function recordChange(scope: ProjectScope, change: Change): Promise<number> {
  const seq = await takeNumbers(scope, 1);
  await writeChange(scope, seq, change);
  return seq;
}
