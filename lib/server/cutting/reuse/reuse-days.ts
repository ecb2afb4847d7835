import "server-only";
import { addDays, daysBetween, toDay } from "#lib/kernel/days.ts";
import type { ComingLift } from "./reuse-store.ts";

/** When a column takes its panels and when they are clean and back, on one calendar of whole days. */
export type Span = { readonly startDay: number; readonly backDay: number; readonly said: string };
export type ReuseDays = { readonly kind: "day" | "level"; readonly spanOf: (lift: ComingLift) => Span | null };

/** A day to clean and carry, after the strip time. */
const TURNAROUND = 1;

/**
 * By the planned days where every column to come has them; else level by level, all columns of a level at once, so that
 * panels go from level to level only.
 */
export function reuseDays(coming: readonly ComingLift[], all: readonly ComingLift[], stripAfterHours: number): ReuseDays {
  const [first] = coming.flatMap(({ stoodOn }) => (stoodOn === null ? [] : [stoodOn])).sort();
  if (first !== undefined && coming.every(({ stoodOn, pouredOn }) => stoodOn !== null && pouredOn !== null)) {
    const from = toDay(first);
    const cured = Math.ceil(stripAfterHours / 24) + TURNAROUND;
    return {
      kind: "day",
      spanOf: ({ stoodOn, pouredOn }) => stoodOn === null || pouredOn === null ? null
        : { startDay: daysBetween(from, toDay(stoodOn)), backDay: Math.max(daysBetween(from, toDay(stoodOn)) + 1, daysBetween(from, addDays(toDay(pouredOn), cured))), said: stoodOn },
    };
  }
  const levels = [...new Set(all.map(({ fromLevel }) => fromLevel.id))];
  return { kind: "level", spanOf: ({ fromLevel }) => ({ startDay: 2 * levels.indexOf(fromLevel.id), backDay: 2 * levels.indexOf(fromLevel.id) + 1, said: fromLevel.name }) };
}
