import { foldColumn, type ColumnState } from "#lib/trade/progress/column-state.ts";
import type { ProgressRule } from "#lib/trade/progress/progress-rule.ts";
import type { SiteEvent } from "#lib/trade/progress/site-event.ts";
import { ask } from "#tests/support/raw-sql.ts";

type EventRow = {
  id: string; seq: number; columnId: string; kind: string; payload: object; reason: string | null;
  happenedAt: Date; arrivedAt: Date; by: string; standing: string;
};
type Kept = { id: string; done: number; flagged: boolean; stateSeq: number; state: unknown };

/** The project's events by column, as they lie in the table. */
export async function eventsByColumn(url: string, projectId: string): Promise<Map<string, SiteEvent[]>> {
  const rows = await ask<EventRow>(url, `select id::text, seq::int, column_id::text "columnId", kind, payload, reason, happened_at "happenedAt",
    arrived_at "arrivedAt", by_person_id::text "by", standing from site_event where project_id = $1 order by seq`, [projectId]);
  const events = new Map<string, SiteEvent[]>();
  for (const { payload, happenedAt, arrivedAt, ...row } of rows) {
    const event = { ...payload, ...row, happenedAt: happenedAt.toISOString(), arrivedAt: arrivedAt.toISOString() } as unknown as SiteEvent;
    events.set(row.columnId, [...(events.get(row.columnId) ?? []), event]);
  }
  return events;
}

export const keptStates = (url: string, projectId: string): Promise<Kept[]> =>
  ask<Kept>(url, `select id::text, done, flagged, state_seq::int "stateSeq", state from column_lift where project_id = $1 order by id`, [projectId]);

/** What should be kept, made from nothing but the events. */
export async function rebuiltStates(url: string, projectId: string, rule: ProgressRule): Promise<Kept[]> {
  const events = await eventsByColumn(url, projectId);
  return (await keptStates(url, projectId)).map(({ id }) => {
    const state: ColumnState = foldColumn(events.get(id) ?? [], rule);
    return { id, done: state.done, flagged: state.flagged, stateSeq: state.lastSeq, state: events.has(id) ? JSON.parse(JSON.stringify(state)) : null };
  });
}
