import { dayIn, type Day } from "#lib/kernel/days.ts";

/** A day and where it comes from: what happened counts, the plan only until then. */
export type KnownDay = { readonly on: Day; readonly isRecorded: boolean };

export type PlannedAndRecorded = {
  readonly plannedStoodOn: Day | null;
  readonly plannedPouredOn: Day | null;
  /** Instants, ISO 8601 in UTC, as they stand in the column's record. */
  readonly stoodAt: string | null;
  readonly pouredAt: string | null;
  readonly strippedAt: string | null;
};
export type ColumnDays = { readonly stood: KnownDay | null; readonly poured: KnownDay | null; readonly stripped: KnownDay | null };

/** The site days of one column, in the project's time zone; null where nobody has said. A recorded day replaces the planned one. */
export function columnDays(given: PlannedAndRecorded, timeZone: string): ColumnDays {
  const known = (at: string | null, planned: Day | null): KnownDay | null => {
    if (at !== null) return { on: dayIn(at, timeZone), isRecorded: true };
    return planned === null ? null : { on: planned, isRecorded: false };
  };
  return {
    stood: known(given.stoodAt, given.plannedStoodOn),
    poured: known(given.pouredAt, given.plannedPouredOn),
    stripped: known(given.strippedAt, null),
  };
}
