import "server-only";
import type { ColumnState } from "#lib/trade/progress/column-state.ts";
import type { SiteEvent } from "#lib/trade/progress/site-event.ts";
import type { ProjectScope } from "../gate/scope.ts";

type EventRow = {
  id: string; seq: bigint; columnId: string; kind: string; payload: object; reason: string | null;
  happenedAt: Date; arrivedAt: Date; byPersonId: string; standing: string;
};
export type EventWithName = { event: SiteEvent; byName: string };

const toEvent = (row: EventRow): SiteEvent =>
  ({
    ...row.payload, id: row.id, seq: Number(row.seq), columnId: row.columnId, kind: row.kind, reason: row.reason,
    happenedAt: row.happenedAt.toISOString(), arrivedAt: row.arrivedAt.toISOString(), by: row.byPersonId,
    standing: row.standing,
  }) as SiteEvent;

const within = (scope: ProjectScope) => ({ companyId: scope.companyId, projectId: scope.projectId });

/** Events of the columns, and those with the ids wherever they are, in order of arrival. */
export async function listEventsOf(scope: ProjectScope, columnIds: readonly string[], ids: readonly string[] = []): Promise<SiteEvent[]> {
  const rows = await scope.tx.$queryRaw<EventRow[]>`
    select id::text, seq, column_id::text "columnId", kind, payload, reason, happened_at "happenedAt",
           arrived_at "arrivedAt", by_person_id::text "byPersonId", standing
    from site_event where company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid
      and (column_id = any(${[...columnIds]}::uuid[]) or id = any(${[...ids]}::uuid[])) order by seq`;
  return rows.map(toEvent);
}

export async function listEventsWithNames(scope: ProjectScope, columnId: string): Promise<EventWithName[]> {
  const rows = await scope.tx.siteEvent.findMany({
    where: { ...within(scope), columnId },
    orderBy: { seq: "asc" },
    include: { by: { select: { name: true } } },
  });
  return rows.map((row) => ({ event: toEvent({ ...row, payload: row.payload as object }), byName: row.by.name }));
}

export async function listEventsById(scope: ProjectScope, ids: readonly string[]): Promise<EventWithName[]> {
  const rows = await scope.tx.siteEvent.findMany({
    where: { ...within(scope), id: { in: [...ids] } },
    orderBy: { seq: "asc" },
    include: { by: { select: { name: true } } },
  });
  return rows.map((row) => ({ event: toEvent({ ...row, payload: row.payload as object }), byName: row.by.name }));
}

export async function listLiveColumnIds(scope: ProjectScope, columnIds: readonly string[]): Promise<Set<string>> {
  const rows = await scope.tx.$queryRaw<{ id: string }[]>`
    select id::text from column_lift where company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid
      and removed_at is null and id = any(${[...columnIds]}::uuid[])`;
  return new Set(rows.map((row) => row.id));
}

export async function addEvents(scope: ProjectScope, events: readonly SiteEvent[]): Promise<void> {
  const rows = events.map(({ id, seq, columnId, kind, reason, happenedAt, arrivedAt, by, standing, ...payload }) => ({
    id, seq, column_id: columnId, kind, reason, happened_at: happenedAt, arrived_at: arrivedAt, by_person_id: by, standing, payload,
  }));
  await scope.tx.$executeRaw`
    insert into site_event (company_id, project_id, id, seq, column_id, kind, payload, reason, happened_at, arrived_at, by_person_id, standing)
    select ${scope.companyId}::uuid, ${scope.projectId}::uuid, id, seq, column_id, kind, payload, reason, happened_at, arrived_at, by_person_id, standing
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as e(id uuid, seq bigint, column_id uuid, kind text,
      payload jsonb, reason text, happened_at timestamptz, arrived_at timestamptz, by_person_id uuid, standing text)`;
}

/** The cached fold, in the same transaction as the events it is made of. */
export async function keepStates(scope: ProjectScope, states: ReadonlyMap<string, ColumnState>): Promise<void> {
  const rows = [...states].map(([id, state]) => ({ id, done: state.done, flagged: state.flagged, state_seq: state.lastSeq, state }));
  await scope.tx.$executeRaw`
    update column_lift set done = s.done, flagged = s.flagged, state_seq = s.state_seq, state = s.state
    from jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) as s(id uuid, done int, flagged boolean, state_seq bigint, state jsonb)
    where company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid and column_lift.id = s.id`;
}

export async function listStates(scope: ProjectScope, columnIds: readonly string[]) {
  return scope.tx.$queryRaw<{ id: string; done: number; flagged: boolean }[]>`
    select id::text, done, flagged from column_lift
    where company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid and id = any(${[...columnIds]}::uuid[])`;
}

export const listChangesSince = (scope: ProjectScope, since: number, most: number) =>
  scope.tx.changeLine.findMany({
    where: { ...within(scope), seq: { gt: since } },
    orderBy: { seq: "asc" },
    take: most,
    select: { seq: true, kind: true, columnIds: true, person: { select: { name: true } } },
  });

export async function readLastSeq(scope: ProjectScope): Promise<number> {
  const rows = await scope.tx.$queryRaw<{ last: bigint }[]>`
    select last_seq as last from project where company_id = ${scope.companyId}::uuid and id = ${scope.projectId}::uuid`;
  return Number(rows[0]?.last ?? 0);
}

export async function listColumnIdsWithEvents(scope: ProjectScope): Promise<string[]> {
  const rows = await scope.tx.$queryRaw<{ id: string }[]>`
    select distinct column_id::text id from site_event
    where company_id = ${scope.companyId}::uuid and project_id = ${scope.projectId}::uuid order by 1`;
  return rows.map((row) => row.id);
}
