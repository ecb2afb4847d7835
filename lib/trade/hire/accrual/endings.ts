import type { Day } from "#lib/kernel/days.ts";
import type { CalledOff, HireFacts } from "../facts.ts";
import { numberOf, type DayNumber } from "../day-number.ts";
import { inForceOn, type TermsStretch } from "../terms/terms-in-force.ts";

/** How many pieces of an item stop being charged, when, and by which docket. */
export type Ending = {
  readonly docketId: string; readonly on: DayNumber; readonly quantity: number;
  /** Last day charged in full; null while something missing is still unsettled. */
  readonly lastDay: DayNumber | null;
  /** From here on at the share for missing gear. */
  readonly missingFrom: DayNumber | null;
};

type Laid = readonly TermsStretch[];
type Facts = Pick<HireFacts, "calledOff" | "returned" | "missing">;
type Dated = { readonly docketId: string; readonly on: DayNumber };
const byDay = <T extends Dated>(a: T, b: T): number => a.on - b.on || (a.docketId < b.docketId ? -1 : a.docketId > b.docketId ? 1 : 0);
const dated = <T extends { readonly docketId: string; readonly on: Day }>(fact: T) => ({ fact, docketId: fact.docketId, on: numberOf(fact.on) });

/** The last day charged for what was called off, or for want of a call came back, on a day. */
export function lastDayOf(laid: Laid, on: DayNumber): DayNumber {
  const stretch = inForceOn(laid, on);
  if (!stretch) return on;
  const { stop } = stretch.terms;
  const ends = stop.by !== "notice" ? on
    : stop.noticeCount === "calendar" ? on + stop.noticeDays
    : stretch.calendar.workingDayAfter(on, stop.noticeDays);
  return stop.isLastDayCharged ? ends : ends - 1;
}

/**
 * The endings of one item, in the order of the days. Where a call stops the hire, what is collected later under that
 * call ends nothing more; where collection stops it, the call is only an announcement. A return nobody called off ends
 * by its own day.
 */
export function endingsOf(facts: Facts, itemId: string, laid: Laid): Ending[] {
  const own = <T extends { readonly itemId: string }>(list: readonly T[]): T[] => list.filter((fact) => fact.itemId === itemId);
  const open: { call: CalledOff; left: number }[] = [];
  const endings: Ending[] = [];
  const plain = (docketId: string, on: DayNumber, quantity: number): void =>
    void (quantity > 0 && endings.push({ docketId, on, quantity, lastDay: lastDayOf(laid, on), missingFrom: null }));
  for (const { fact, on } of own(facts.calledOff).map(dated).sort(byDay)) {
    if (inForceOn(laid, on)?.terms.stop.by === "collection") continue;
    open.push({ call: fact, left: fact.quantity });
    plain(fact.docketId, on, fact.quantity);
  }
  for (const { fact, on } of own(facts.returned).map(dated).sort(byDay)) plain(fact.docketId, on, fact.quantity - settleCalls(open, fact, on));
  for (const { fact, on } of own(facts.missing).map(dated).sort(byDay)) {
    const goesOn = (inForceOn(laid, on)?.terms.missingShare ?? null) !== null;
    const settled = fact.settledOn === null ? null : numberOf(fact.settledOn);
    endings.push({ docketId: fact.docketId, on, quantity: fact.quantity, lastDay: goesOn ? settled : on, missingFrom: goesOn ? on + 1 : null });
  }
  return endings.sort(byDay);
}

/** Takes what came back from the calls it answers: the one it names, else the oldest. Returns how much was called off before. */
function settleCalls(open: { call: CalledOff; left: number }[], returned: { readonly callId: string | null; readonly quantity: number }, on: DayNumber): number {
  let rest = returned.quantity;
  const inTime = open.filter(({ call }) => numberOf(call.on) <= on);
  const named = inTime.filter(({ call }) => call.docketId === returned.callId);
  for (const each of [...named, ...inTime.filter((other) => !named.includes(other))]) {
    const taken = Math.min(each.left, rest);
    each.left -= taken;
    rest -= taken;
  }
  return returned.quantity - rest;
}

/** Pieces of an item that nobody has called off yet, as far as is known on a day: what a further call may name at most. */
export function callable(facts: HireFacts, itemId: string, on: Day): number {
  const day = numberOf(on);
  const sum = (list: readonly { readonly itemId: string; readonly on: Day; readonly quantity: number }[], until: DayNumber): number =>
    list.reduce((total, fact) => total + (fact.itemId === itemId && numberOf(fact.on) <= until ? fact.quantity : 0), 0);
  const calls = facts.calledOff.filter((call) => call.itemId === itemId);
  const open = calls.map((call) => ({ call, left: call.quantity }));
  const uncalled = facts.returned.filter((each) => each.itemId === itemId).map(dated).sort(byDay)
    .reduce((total, { fact, on: returnedOn }) => total + fact.quantity - settleCalls(open, fact, returnedOn), 0);
  const ever = Number.POSITIVE_INFINITY;
  return sum(facts.delivered, day) - sum(facts.missing, ever) - sum(calls, ever) - uncalled;
}
