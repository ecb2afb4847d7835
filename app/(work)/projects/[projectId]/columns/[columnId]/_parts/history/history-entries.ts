import type { QueriedEntry } from "#lib/contracts/progress.ts";
import type { Fate } from "#lib/trade/progress/in-force.ts";
import type { SiteEvent } from "#lib/trade/progress/site-event.ts";

export type NamedEvent = SiteEvent & { readonly byName: string };
export type ScheduleChange = { readonly seq: number; readonly at: string; readonly by: string; readonly detail: unknown };

export type EventEntry = {
  readonly kind: "event"; readonly at: string; readonly seq: number; readonly event: NamedEvent; readonly fate: Fate;
  /** When it arrived, where that was noticeably later than it happened. */
  readonly arrivedLate: string | null;
  /** What it speaks of, for an entry about an entry. */
  readonly target: NamedEvent | null;
  /** What speaks against it while it waits to be settled. */
  readonly because: QueriedEntry["because"];
};
export type ChangeEntry = { readonly kind: "change"; readonly at: string; readonly seq: number; readonly change: ScheduleChange };
export type HistoryEntry = EventEntry | ChangeEntry;

/** A minute on the way is nothing to mention. */
const LATE_MS = 60_000;

type Known = {
  readonly events: readonly NamedEvent[];
  readonly fates: ReadonlyMap<string, Fate>;
  readonly queried: readonly QueriedEntry[];
  readonly changes: readonly ScheduleChange[];
};

/** Everything that happened to a column, on site and in the schedule; the latest first, by when it happened. */
export function historyEntries({ events, fates, queried, changes }: Known): readonly HistoryEntry[] {
  const byId = new Map(events.map((event) => [event.id, event]));
  const because = new Map(queried.map((entry) => [entry.event.id, entry.because]));
  const told = events.map((event): EventEntry => ({
    kind: "event", at: event.happenedAt, seq: event.seq, event,
    fate: fates.get(event.id) ?? "stands",
    arrivedLate: Date.parse(event.arrivedAt) - Date.parse(event.happenedAt) > LATE_MS ? event.arrivedAt : null,
    target: "eventId" in event ? (byId.get(event.eventId) ?? null) : null,
    because: because.get(event.id) ?? null,
  }));
  const changed = changes.map((change): ChangeEntry => ({ kind: "change", at: change.at, seq: change.seq, change }));
  return [...told, ...changed].sort((left, right) => Date.parse(right.at) - Date.parse(left.at) || right.seq - left.seq);
}
