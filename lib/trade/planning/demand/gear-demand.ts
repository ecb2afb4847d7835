import { addDays, type Day, daysBetween } from "#lib/kernel/days.ts";
import type { FormTime } from "./form-times.ts";

/** A column with what it holds while it stands in its form. */
export type GearHolder = FormTime & { readonly columnId: string; readonly gear: readonly { readonly itemId: string; readonly count: number }[] };

/** `inForms` is held by columns, `needed` with the float on top. */
export type DayDemand = { readonly on: Day; readonly inForms: number; readonly needed: number };

export type DemandDays = { readonly from: Day; readonly to: Day; readonly floatPercent: number };

/** Pieces of one item needed on each day: those in forms and a share over, rounded up to whole pieces. */
export function gearDemand(holders: readonly GearHolder[], itemId: string, { from, to, floatPercent }: DemandDays): DayDemand[] {
  const change = new Array<number>(daysBetween(from, to) + 2).fill(0);
  const last = change.length - 1;
  for (const holder of holders) {
    const count = countOf(holder, itemId);
    if (count === 0 || holder.to < from || holder.from > to) continue;
    const start = Math.max(0, daysBetween(from, holder.from));
    const end = Math.min(last, daysBetween(from, holder.to) + 1);
    change[start] = (change[start] ?? 0) + count;
    change[end] = (change[end] ?? 0) - count;
  }
  let inForms = 0;
  return change.slice(0, -1).map((step, index) => {
    inForms += step;
    return { on: addDays(from, index), inForms, needed: Math.ceil((inForms * (100 + floatPercent)) / 100 - 1e-9) };
  });
}

/** Why no more than `spare` of what is on hand can go for good: on day `on` so many are needed, by these columns. */
export type Pinned = { readonly on: Day; readonly needed: number; readonly spare: number; readonly columnIds: readonly string[] };

/** The coming peak of an item and the columns that make it; null when nothing is needed any more. */
export function pinnedBy(holders: readonly GearHolder[], itemId: string, onHand: number, days: DemandDays): Pinned | null {
  const peak = gearDemand(holders, itemId, days).reduce<DayDemand | null>((most, day) => (day.needed > (most?.needed ?? 0) ? day : most), null);
  if (!peak) return null;
  const columnIds = holders.filter((holder) => holder.from <= peak.on && peak.on <= holder.to && countOf(holder, itemId) > 0).map((holder) => holder.columnId);
  return { on: peak.on, needed: peak.needed, spare: Math.max(0, onHand - peak.needed), columnIds };
}

const countOf = ({ gear }: GearHolder, itemId: string): number => gear.reduce((sum, each) => sum + (each.itemId === itemId ? each.count : 0), 0);
