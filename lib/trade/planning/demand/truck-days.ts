import { addDays, type Day, weekday } from "#lib/kernel/days.ts";

/** Days on which the hirer's truck may come: ISO weekdays, less these days off. */
export type TruckWeek = { readonly weekdays: readonly number[]; readonly daysOff: readonly Day[] };

export const isTruckDay = (on: Day, { weekdays, daysOff }: TruckWeek): boolean => weekdays.includes(weekday(on)) && !daysOff.includes(on);

/** Today, then every day a truck may come up to and with the first one on or after `last`. Never a day before today. */
export function truckDays(today: Day, last: Day, week: TruckWeek): Day[] {
  const days = [today];
  for (let on = addDays(today, 1), reached = false; !reached && days.length < 1000; on = addDays(on, 1)) {
    if (!isTruckDay(on, week)) continue;
    days.push(on);
    reached = on >= last;
  }
  return days;
}

/** The last day on which a return may be called so that a truck comes on `collectOn`: so many days before it, working days of `week` or calendar days. */
export function callBy(collectOn: Day, notice: { readonly days: number; readonly counted: "calendar" | "working" }, week: TruckWeek): Day {
  if (notice.counted === "calendar") return addDays(collectOn, -notice.days);
  let on = collectOn;
  for (let left = notice.days; left > 0;) {
    on = addDays(on, -1);
    if (isTruckDay(on, week)) left -= 1;
  }
  return on;
}

/** The first of these days for which a call today is not too late. */
export const firstCollection = (days: readonly Day[], today: Day, notice: { readonly days: number; readonly counted: "calendar" | "working" }, week: TruckWeek): number =>
  days.findIndex((on) => callBy(on, notice, week) >= today);

/** The most needed from each of these days up to the next, out of the need of every day (`needed[0]` is that of the first). */
export function betweenDays(days: readonly number[], needed: readonly number[]): number[] {
  return days.slice(0, -1).map((from, index) => Math.max(0, ...needed.slice(from, days[index + 1])));
}
