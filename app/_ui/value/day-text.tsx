import { dayWords } from "./time-words.ts";

/** A site day, `YYYY-MM-DD`. */
export function DayText({ day }: { readonly day: string }) {
  return <time dateTime={day} className="whitespace-nowrap">{dayWords(day)}</time>;
}
