import { addDays, type Day, daysBetween } from "#lib/kernel/days.ts";
import type { PlanInput } from "./plan-input.ts";

type Foreseen = Pick<PlanInput, "dates" | "need">;

/** Whether what the columns need and what is on hire is still what the plan was made for, from today on. */
export function stillHolds(kept: Foreseen, now: Foreseen): boolean {
  const [then, today] = [kept.dates[0], now.dates[0]];
  if (!then || !today) return false;
  const past = daysBetween(then, today);
  const key = ({ need }: Foreseen, skip: number, from: Day) => need.map(({ itemId, needed, owned, hired }) => [itemId, owned, hired, changes(needed.slice(skip), from)]);
  return JSON.stringify(key(kept, past, today)) === JSON.stringify(key(now, 0, today));
}

/** The days on which a need changes; how far ahead it was asked for does not matter. */
const changes = (needed: readonly number[], from: Day): [Day, number][] =>
  needed.flatMap((count, index): [Day, number][] => (count === (index === 0 ? 0 : needed[index - 1]) ? [] : [[addDays(from, index), count]]));
