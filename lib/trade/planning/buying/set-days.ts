import type { Day } from "#lib/kernel/days.ts";

/** One column to be cast: the day its form is stood, and the first day its form can stand elsewhere; null where nobody has said. */
export type FormStay = { readonly stoodOn: Day | null; readonly freeOn: Day | null };

/**
 * When each form set of one size first has to stand. A set stripped and clean by then is stood again; only where none is
 * free another is made. `made` holds the day of each set that has to be made, `again` the days that are served by one of
 * them, `undated` counts columns without a planned day, each of which may need a set of its own.
 * Example: stood on the 3rd, 3rd and 6th, each free again after three days: two sets, on the 3rd and the 3rd; the 6th is served again.
 */
export function setDays(stays: readonly FormStay[]): { readonly made: readonly Day[]; readonly again: readonly Day[]; readonly undated: number } {
  const dated = stays.flatMap(({ stoodOn, freeOn }) => (stoodOn === null ? [] : [{ stoodOn, freeOn }])).sort((a, b) => (a.stoodOn < b.stoodOn ? -1 : a.stoodOn > b.stoodOn ? 1 : 0));
  const [made, again, free]: [Day[], Day[], (Day | null)[]] = [[], [], []];
  for (const { stoodOn, freeOn } of dated) {
    const index = free.findIndex((each) => each !== null && each <= stoodOn);
    (index < 0 ? made : again).push(stoodOn);
    if (index < 0) free.push(freeOn);
    else free[index] = freeOn;
  }
  return { made, again, undated: stays.length - dated.length };
}

/** The days by which `count` sets are needed, the earliest first: fewer than are needed at once make the crew wait; more serve columns one by one. */
export const daysOfSets = ({ made, again, undated }: ReturnType<typeof setDays>, count: number): readonly (Day | null)[] =>
  [...made, ...[...again].sort(), ...new Array<null>(undated).fill(null)].slice(0, count);

/** Sets that suffice: those made by the plan, and one for each column without a day. */
export const setsNeeded = ({ made, undated }: ReturnType<typeof setDays>): number => made.length + undated;
