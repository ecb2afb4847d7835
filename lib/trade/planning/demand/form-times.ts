import { addDays, type Day, daysBetween } from "#lib/kernel/days.ts";

/** The days of one column: planned, and recorded as far as it has come. Null: not known, not yet. */
export type FormDays = {
  readonly planned: { readonly stoodOn: Day; readonly strippedOn: Day } | null;
  readonly recorded: { readonly stoodOn: Day | null; readonly strippedOn: Day | null };
};

/** The first and the last day on which a column holds its gear. */
export type FormTime = { readonly from: Day; readonly to: Day };

/**
 * Recorded days replace planned ones; a form not stood by today starts today at the earliest and keeps its time, one not
 * stripped stands today at least. Then so many days of cleaning. Null for a column without days.
 */
export function formTime({ planned, recorded }: FormDays, today: Day, cleaningDays: number): FormTime | null {
  const strippedOn = recorded.strippedOn;
  const from = recorded.stoodOn ?? (strippedOn ? strippedOn : planned && later(planned.stoodOn, today));
  if (!from) return null;
  const length = planned ? Math.max(0, daysBetween(planned.stoodOn, planned.strippedOn)) : 0;
  const expected = recorded.stoodOn && planned ? later(planned.strippedOn, recorded.stoodOn) : addDays(from, length);
  return { from, to: addDays(strippedOn ?? later(expected, today), cleaningDays) };
}

const later = (one: Day, other: Day): Day => (one > other ? one : other);
