import { fraction, isLess, NONE, times, type Fraction } from "#lib/kernel/fraction.ts";
import { WHOLE, type ItemRate, type Ladder } from "./hire-terms.ts";

/** What is charged for one piece, in units of the three rates. */
export type Units = { readonly days: Fraction; readonly weeks: Fraction; readonly months: Fraction };
export const NO_UNITS: Units = { days: NONE, weeks: NONE, months: NONE };

const days = (count: number): Units => ({ ...NO_UNITS, days: fraction(count) });
const weeks = (count: Fraction): Units => ({ ...NO_UNITS, weeks: count });

/**
 * Units charged once `count` charged days of a hire are over, by every ladder that looks at that number alone (a month
 * looks at its dates). Never falls as days are added, as long as the steps of a ladder do not.
 * @param inWeek charged days that make a week: 7, or fewer where only working days are charged
 */
export function unitsAfter(ladder: Exclude<Ladder, { kind: "month" }>, count: number, inWeek: number, rate: ItemRate): Units {
  if (count <= 0) return NO_UNITS;
  const [full, rest] = [Math.floor(count / inWeek), count % inWeek];
  switch (ladder.kind) {
    case "daily":
      return days(count);
    case "day-and-week": {
      const isWeekCheaper = !isLess(times(fraction(rest), fraction(rate.perDay ?? 0)), fraction(rate.perWeek ?? 0));
      return rest > 0 && isWeekCheaper ? weeks(fraction(full + 1)) : { ...NO_UNITS, weeks: fraction(full), days: fraction(rest) };
    }
    case "week-and-part":
      return weeks(count <= inWeek ? fraction(1) : fraction(count, inWeek));
    case "week-and-whole":
      return weeks(fraction(rest > 0 ? full + 1 : full));
    case "week-ladder": {
      const step = ladder.steps[Math.min(count, inWeek, ladder.steps.length) - 1] ?? WHOLE;
      return weeks(fraction(step + Math.max(0, count - inWeek) * ladder.laterDay, WHOLE));
    }
  }
}

/** The rates a ladder cannot do without. */
export function missingRate(ladder: Ladder, rate: ItemRate): "day" | "week" | "month" | null {
  const needsDay = ladder.kind === "daily" || ladder.kind === "day-and-week";
  if (needsDay && rate.perDay === null) return "day";
  if (ladder.kind === "month") return rate.perMonth === null ? "month" : null;
  return ladder.kind !== "daily" && rate.perWeek === null ? "week" : null;
}

/** A ladder whose steps fall would make a longer hire cheaper than a shorter one. */
export const hasFallingSteps = (ladder: Ladder): boolean =>
  ladder.kind === "week-ladder" && ladder.steps.some((step, index) => index > 0 && step < (ladder.steps[index - 1] ?? 0));
