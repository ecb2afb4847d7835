import "server-only";
import { addDays, daysBetween, toDay, type Day } from "#lib/kernel/days.ts";
import { hasDone } from "#lib/trade/progress/stages.ts";
import type { ComingLift } from "./reuse-store.ts";

/** When a column takes its panels and when they are clean and back, on one calendar of whole days. */
export type Span = { readonly startDay: number; readonly backDay: number; readonly said: string };
export type ReuseDays = { readonly kind: "day" | "level"; readonly spanOf: (lift: ComingLift) => Span | null };

/** A day to clean and carry, after the strip time. */
const TURNAROUND = 1;

/**
 * By the planned days where every column to come has them; else level by level, all columns of a level at once, so that
 * panels go from level to level only. A column that stands already is poured tomorrow at the earliest, whatever was planned.
 */
export function reuseDays(coming: readonly ComingLift[], all: readonly ComingLift[], stripAfterHours: number, today: Day): ReuseDays {
  const [first] = coming.flatMap(({ stoodOn }) => (stoodOn === null ? [] : [stoodOn])).sort();
  if (first !== undefined && coming.every(({ stoodOn, pouredOn }) => stoodOn !== null && pouredOn !== null)) {
    const from = toDay(first);
    const cured = Math.ceil(stripAfterHours / 24) + TURNAROUND;
    const backAfter = (pouredOn: Day): number => daysBetween(from, addDays(pouredOn, cured));
    return {
      kind: "day",
      spanOf: (lift) => {
        if (hasDone(lift.done, "stood")) {
          const earliest = hasDone(lift.done, "poured") ? today : addDays(today, 1);
          const backDay = backAfter(lift.pouredOn !== null && lift.pouredOn > earliest ? toDay(lift.pouredOn) : earliest);
          return { startDay: backDay - 1, backDay, said: lift.stoodOn ?? today };
        }
        if (lift.stoodOn === null || lift.pouredOn === null) return null;
        const startDay = daysBetween(from, toDay(lift.stoodOn));
        return { startDay, backDay: Math.max(startDay + 1, backAfter(toDay(lift.pouredOn))), said: lift.stoodOn };
      },
    };
  }
  const levels = [...new Set(all.map(({ fromLevel }) => fromLevel.id))];
  return { kind: "level", spanOf: ({ fromLevel }) => ({ startDay: 2 * levels.indexOf(fromLevel.id), backDay: 2 * levels.indexOf(fromLevel.id) + 1, said: fromLevel.name }) };
}
