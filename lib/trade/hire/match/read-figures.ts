import { isDay, type Day } from "#lib/kernel/days.ts";

export type DayOrder = "day-month" | "month-day";

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const asDay = (year: number, month: number, day: number): Day | null => {
  const text = `${year < 100 ? 2000 + year : year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
  return isDay(text) ? (text as Day) : null;
};

/** `2031-03-18`, `18 Mar 2031`, or figures between strokes or points in the order of the country. */
export function readDay(text: string, order: DayOrder): Day | null {
  const plain = text.trim();
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:T.*)?$/.exec(plain);
  if (iso) return asDay(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const named = /^(\d{1,2})[\s.-]*([A-Za-z]{3})[a-z]*[\s.,-]*(\d{2}|\d{4})$/.exec(plain);
  if (named) {
    const month = MONTHS.indexOf((named[2] ?? "").toLowerCase()) + 1;
    return month === 0 ? null : asDay(Number(named[3]), month, Number(named[1]));
  }
  const figures = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{2}|\d{4})$/.exec(plain);
  if (!figures) return null;
  const [first, second, year] = [Number(figures[1]), Number(figures[2]), Number(figures[3])];
  return order === "day-month" ? asDay(year, second, first) : asDay(year, first, second);
}

/** The currency codes a text names, as `Amount (EUR)` or `EUR 120.00`; three capitals standing alone that the runtime knows as a currency. */
export const currenciesIn = (text: string, known: ReadonlySet<string>): string[] =>
  [...text.matchAll(/(?:^|[^A-Za-z])([A-Z]{3})(?=$|[^A-Za-z])/g)].map((match) => match[1] ?? "").filter((code) => known.has(code));

/** Figures of an amount without its currency sign, brackets for a credit turned into a minus. */
export function plainFigure(text: string): string {
  const bare = text.replace(/[A-Z]{3}/g, "").replace(/[^\d.,()\-\s']/g, "").trim();
  const bracketed = /^\((.*)\)$/.exec(bare);
  return bracketed ? `-${bracketed[1] ?? ""}` : bare;
}
