import type { Day } from "#lib/kernel/days.ts";

/** Days counted from 1970-01-01, so that a year of dockets is plain arithmetic: no zone, no clock change, leap days as they fall. */
export type DayNumber = number;

const MS_PER_DAY = 86_400_000;

export const numberOf = (day: Day): DayNumber => Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10))) / MS_PER_DAY;
export const dayOf = (number: DayNumber): Day => new Date(number * MS_PER_DAY).toISOString().slice(0, 10) as Day;

/** ISO weekday, Monday = 1; 1970-01-01 was a Thursday. */
export const weekdayOf = (number: DayNumber): number => ((((number + 3) % 7) + 7) % 7) + 1;

/** First day of the month a day lies in, and of the month after. */
export function monthAround(number: DayNumber): { readonly first: DayNumber; readonly next: DayNumber } {
  const date = new Date(number * MS_PER_DAY);
  const [year, month] = [date.getUTCFullYear(), date.getUTCMonth()];
  return { first: Date.UTC(year, month, 1) / MS_PER_DAY, next: Date.UTC(year, month + 1, 1) / MS_PER_DAY };
}
