import type { Day } from "#lib/kernel/days.ts";
import type { HireFacts } from "../facts.ts";
import { dayOf, numberOf, type DayNumber } from "../day-number.ts";
import type { HireTerms } from "../terms/hire-terms.ts";
import { layTerms, type TermsStretch } from "../terms/terms-in-force.ts";
import { totalOf } from "./accrue.ts";
import { chargeSpan, type Found, type Span } from "./hire-lines.ts";
import { lotsOf, type Lot, type Portion } from "./lots.ts";

/** Pieces of one delivery still being charged on a day. */
export type OnHire = {
  readonly docketId: string; readonly itemId: string; readonly quantity: number;
  /** First day charged. */
  readonly since: Day;
  /** Days on the calendar from that day to today, both included. */
  readonly days: number;
  readonly costToDate: number;
  /** Last day charged, where hire has been called off with notice to run. */
  readonly endsOn: Day | null;
  readonly isMissing: boolean;
  /** The next day that costs something and what it costs; null when nothing more will come, or no rate is known. */
  readonly next: { readonly on: Day; readonly amount: number } | null;
};

/** A month rate, a stand-down or a shut-down may leave days free; beyond this a next charge is not looked for. */
const DAYS_AHEAD = 62;

/** What is on hire from a supplier, the longest first. */
export function onHire(versions: readonly HireTerms[], facts: HireFacts, today: Day): OnHire[] {
  const laid = layTerms(versions);
  const now = numberOf(today);
  return lotsOf(facts, laid).flatMap((lot) =>
    lot.portions.filter(({ lastDay }) => lastDay === null || lastDay >= now).map((portion) => standing(lot, portion, now, laid, facts)));
}

function standing(lot: Lot, portion: Portion, now: DayNumber, laid: readonly TermsStretch[], facts: HireFacts): OnHire {
  const { docketId, itemId } = lot.delivery;
  const span: Omit<Span, "from" | "to"> = { docketId, itemId, quantity: portion.quantity, firstDay: lot.firstDay, missingFrom: portion.missingFrom, kind: "hire" };
  const costOf = (from: DayNumber, to: DayNumber): number => {
    const found: Found = { lines: [], gaps: [] };
    chargeSpan({ ...span, from, to: Math.min(to, portion.lastDay ?? to) }, laid, facts.standDowns, found);
    return totalOf(found.lines);
  };
  const from = Math.max(now + 1, lot.firstDay);
  const ahead = Array.from({ length: DAYS_AHEAD }, (_, index) => from + index).find((day) => costOf(day, day) > 0);
  return {
    docketId, itemId, quantity: portion.quantity, since: dayOf(lot.firstDay), days: Math.max(0, now - lot.firstDay + 1),
    costToDate: costOf(lot.firstDay, now), endsOn: portion.lastDay === null ? null : dayOf(portion.lastDay),
    isMissing: portion.missingFrom !== null && now >= portion.missingFrom, next: ahead === undefined ? null : { on: dayOf(ahead), amount: costOf(ahead, ahead) },
  };
}
