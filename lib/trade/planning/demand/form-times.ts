import { addDays, type Day, daysBetween } from "#lib/kernel/days.ts";

/** The days of one column: planned, and recorded as far as it has come. Null: not known, not yet. */
export type FormDays = {
  readonly planned: { readonly stoodOn: Day | null; readonly pouredOn: Day | null };
  readonly recorded: { readonly stoodOn: Day | null; readonly pouredOn: Day | null; readonly strippedOn: Day | null };
};

/** How long concrete stays in its form after the pour, and how long the gear is cleaned after that. */
export type FormRule = { readonly stripDays: number; readonly cleaningDays: number };

/** The first and the last day on which a column holds its gear; `to` null: nobody has said when it is poured. */
export type HeldTime = { readonly from: Day; readonly to: Day | null };
export type FormTime = { readonly from: Day; readonly to: Day };

/**
 * Recorded days replace planned ones. What has not happened lies no earlier than today and moves what follows with it: a form
 * not stood yet keeps its days from standing to pour, one not poured is stripped so many days after a pour today at the
 * earliest, one not stripped stands today at least. Null for a column without any day.
 */
export function formTime({ planned, recorded }: FormDays, today: Day, { stripDays, cleaningDays }: FormRule): HeldTime | null {
  const plannedStood = planned.stoodOn ?? planned.pouredOn;
  const from = recorded.stoodOn ?? recorded.pouredOn ?? recorded.strippedOn ?? (plannedStood && later(plannedStood, today));
  if (!from) return null;
  if (recorded.strippedOn) return { from, to: addDays(recorded.strippedOn, cleaningDays) };
  const pouredOn = recorded.pouredOn ?? expectedPour(planned, recorded.stoodOn, from, today);
  return { from, to: pouredOn && addDays(later(addDays(pouredOn, stripDays), today), cleaningDays) };
}

function expectedPour({ stoodOn, pouredOn }: FormDays["planned"], recordedStood: Day | null, from: Day, today: Day): Day | null {
  if (pouredOn === null) return null;
  if (recordedStood) return later(later(pouredOn, today), from);
  return addDays(from, Math.max(0, daysBetween(stoodOn ?? pouredOn, pouredOn)));
}

const later = (one: Day, other: Day): Day => (one > other ? one : other);
