import { addDays, type Day, weekday } from "#lib/kernel/days.ts";

/**
 * The day so many working days before another: Thursday 2 January 2031, 3 working days of a Monday-to-Friday week before it, is
 * Monday 30 December 2030. `workingDays` are ISO weekdays, Monday = 1; at least one of them.
 */
export function workingDaysBefore(day: Day, count: number, workingDays: readonly number[]): Day {
  if (workingDays.length === 0) throw new Error("A week without a working day.");
  let on = day;
  for (let left = count; left > 0; ) {
    on = addDays(on, -1);
    if (workingDays.includes(weekday(on))) left -= 1;
  }
  return on;
}
