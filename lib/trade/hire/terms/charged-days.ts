import { monthAround, numberOf, weekdayOf, type DayNumber } from "../day-number.ts";
import type { HireTerms } from "./hire-terms.ts";

/** Which days a supplier charges, and which it works, without walking through them. */
export type ChargedCalendar = {
  /** Charged days from one day to another, both included; none when the second is earlier. */
  readonly count: (from: DayNumber, to: DayNumber) => number;
  readonly inWeek: number;
  readonly inMonthOf: (day: DayNumber) => number;
  /** The nth working day after a day. */
  readonly workingDayAfter: (day: DayNumber, count: number) => DayNumber;
};

type Basis = Pick<HireTerms, "workingWeekdays" | "holidays" | "charged" | "areHolidaysCharged">;

export function chargedCalendar(terms: Basis): ChargedCalendar {
  const working = new Set(terms.workingWeekdays);
  const holidays = new Set(terms.holidays.map(numberOf));
  const weekdays = terms.charged === "every-day" ? new Set([1, 2, 3, 4, 5, 6, 7]) : working;
  const free = terms.areHolidaysCharged ? [] : [...holidays].filter((day) => weekdays.has(weekdayOf(day)));
  const count = (from: DayNumber, to: DayNumber): number => {
    if (to < from) return 0;
    const weeks = Math.floor((to - from + 1) / 7);
    let days = weeks * weekdays.size;
    for (let day = from + weeks * 7; day <= to; day += 1) if (weekdays.has(weekdayOf(day))) days += 1;
    return days - free.filter((day) => day >= from && day <= to).length;
  };
  return {
    count,
    inWeek: weekdays.size,
    inMonthOf: (day) => {
      const { first, next } = monthAround(day);
      return count(first, next - 1);
    },
    workingDayAfter: (day, wanted) => {
      let on = day;
      for (let left = wanted; left > 0; ) {
        on += 1;
        if (working.has(weekdayOf(on)) && !holidays.has(on)) left -= 1;
      }
      return on;
    },
  };
}
