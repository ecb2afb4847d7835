import { Temporal } from "temporal-polyfill";

declare const day: unique symbol;
/** A calendar day as `YYYY-MM-DD`; never an instant, never a Date. */
export type Day = string & { readonly [day]: true };

export const toDay = (text: string): Day => Temporal.PlainDate.from(text).toString() as Day;

export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  try {
    return Temporal.PlainDate.from(text, { overflow: "reject" }).toString() === text;
  } catch {
    return false;
  }
}

/** The site day on which an instant (ISO 8601, UTC) falls in an IANA time zone. */
export const dayIn = (instant: string, timeZone: string): Day =>
  Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone).toPlainDate().toString() as Day;

export const addDays = (from: Day, count: number): Day =>
  Temporal.PlainDate.from(from).add({ days: count }).toString() as Day;

/** Days from `from` up to `to`; negative when `to` is earlier. */
export const daysBetween = (from: Day, to: Day): number =>
  Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: "days" }).days;

/** ISO weekday, Monday = 1 … Sunday = 7. */
export const weekday = (on: Day): number => Temporal.PlainDate.from(on).dayOfWeek;

/** The instant of a wall-clock time on a site day; a time that a clock change skips moves forward, as `compatible` in ECMA-262 Temporal. */
export const instantOf = (on: Day, time: string, timeZone: string): string =>
  Temporal.PlainDateTime.from(`${on}T${time}`).toZonedDateTime(timeZone).toInstant().toString();

export function isTimeZone(text: string): boolean {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(text);
    return true;
  } catch {
    return false;
  }
}
