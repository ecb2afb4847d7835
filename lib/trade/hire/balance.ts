import type { Day } from "#lib/kernel/days.ts";
import type { HireFacts } from "./facts.ts";

type Moved = { readonly itemId: string; readonly on: Day; readonly quantity: number };

/** Pieces of an item on hire at the end of a day: delivered, less returned, less missing. */
export function onHireAt(facts: HireFacts, itemId: string, on: Day): number {
  const sum = (list: readonly Moved[]): number => list.reduce((total, fact) => total + (fact.itemId === itemId && fact.on <= on ? fact.quantity : 0), 0);
  return sum(facts.delivered) - sum(facts.returned) - sum(facts.missing);
}

/** Most pieces that can leave on a day without more having left, then or on any later day, than had come. */
export function mayLeave(facts: HireFacts, itemId: string, on: Day): number {
  const later = [...facts.returned, ...facts.missing].filter((fact) => fact.itemId === itemId && fact.on > on).map((fact) => fact.on);
  return Math.min(...[on, ...later].map((day) => onHireAt(facts, itemId, day)));
}

/** Whether the books still hold once some facts are taken out of them: on no day has more left than had come. */
export const holds = (facts: HireFacts): boolean =>
  [...facts.returned, ...facts.missing].every(({ itemId, on }) => onHireAt(facts, itemId, on) >= 0);
