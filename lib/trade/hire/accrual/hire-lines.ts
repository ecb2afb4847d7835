import { fraction, isNone, minus, plus, roundHalfUp, times, type Fraction } from "#lib/kernel/fraction.ts";
import { RATE_PARTS } from "#lib/kernel/money.ts";
import type { StandDown } from "../facts.ts";
import { dayOf, monthAround, numberOf, type DayNumber } from "../day-number.ts";
import { WHOLE, type ItemRate, type Share } from "../terms/hire-terms.ts";
import { missingRate, NO_UNITS, unitsAfter, type Units } from "../terms/ladder.ts";
import type { TermsStretch } from "../terms/terms-in-force.ts";
import type { ChargeGap, ChargeKind, ChargeLine } from "./charge-line.ts";

/** Pieces of one item that were on hire from one day to another, both included. */
export type Span = {
  readonly docketId: string; readonly itemId: string; readonly quantity: number;
  /** First day of the hire; days are counted from here even where only later ones are asked for. */
  readonly firstDay: DayNumber; readonly from: DayNumber; readonly to: DayNumber;
  readonly missingFrom: DayNumber | null;
  readonly kind: ChargeKind;
};
export type Found = { readonly lines: ChargeLine[]; readonly gaps: ChargeGap[] };
type AgreedShare = { readonly share: Share; readonly standDownId: string | null };

/** The charge of some days, month by month, and apart wherever terms, stand-down or share change. */
export function chargeSpan(span: Span, laid: readonly TermsStretch[], standDowns: readonly StandDown[], found: Found): void {
  if (span.to < span.from) return;
  const own = standDowns.filter(({ itemId }) => itemId === null || itemId === span.itemId);
  const cuts = cutsOf(span, laid, own);
  let [counted, at] = [0, span.firstDay];
  for (const [index, from] of cuts.entries()) {
    const to = (cuts[index + 1] ?? span.to + 1) - 1;
    const stretch = laid.findLast((each) => each.from <= from);
    if (!stretch) {
      found.gaps.push({ reason: "no-terms", docketId: span.docketId, itemId: span.itemId, from: dayOf(from), to: dayOf(to), what: "terms" });
      continue;
    }
    counted += countBetween(laid, at, from - 1);
    at = from;
    chargeStretch({ ...span, from, to }, counted, stretch, shareAt(span, from, stretch, own), found);
  }
}

/** First days of the pieces a span falls into. */
function cutsOf(span: Span, laid: readonly TermsStretch[], standDowns: readonly StandDown[]): DayNumber[] {
  const cuts = new Set([span.from, ...laid.map(({ from }) => from), ...standDowns.flatMap(({ from, to }) => [numberOf(from), numberOf(to) + 1])]);
  if (span.missingFrom !== null) cuts.add(span.missingFrom);
  for (let { next } = monthAround(span.from); next <= span.to; next = monthAround(next).next) cuts.add(next);
  return [...cuts].filter((day) => day >= span.from && day <= span.to).sort((a, b) => a - b);
}

/** Charged days, each stretch counted by its own terms. */
function countBetween(laid: readonly TermsStretch[], from: DayNumber, to: DayNumber): number {
  return laid.reduce((days, stretch, index) => {
    const end = (laid[index + 1]?.from ?? Number.POSITIVE_INFINITY) - 1;
    return days + stretch.calendar.count(Math.max(from, stretch.from), Math.min(to, end));
  }, 0);
}

/** Where several stand-downs were agreed for a day, the lowest share holds; the terms' own share is the least there is. */
function shareAt(span: Span, on: DayNumber, { terms }: TermsStretch, standDowns: readonly StandDown[]): AgreedShare {
  if (span.missingFrom !== null && on >= span.missingFrom) return { share: terms.missingShare ?? WHOLE, standDownId: null };
  const agreed = standDowns.filter(({ from, to }) => numberOf(from) <= on && on <= numberOf(to));
  return agreed.reduce<AgreedShare>((least, { id, share }) => (share < least.share ? { share, standDownId: id } : least), { share: WHOLE, standDownId: null });
}

function chargeStretch(span: Span, before: number, { terms, calendar, rates }: TermsStretch, agreed: AgreedShare, found: Found): void {
  const rate = rates.get(span.itemId);
  const missing = rate ? missingRate(terms.ladder, rate) : ("day" as const);
  if (!rate || missing !== null) {
    found.gaps.push({ reason: "no-rate", docketId: span.docketId, itemId: span.itemId, from: dayOf(span.from), to: dayOf(span.to), what: missing ?? "day" });
    return;
  }
  const days = calendar.count(span.from, span.to);
  if (days === 0) return;
  const { ladder } = terms;
  const units = ladder.kind === "month"
    ? { ...NO_UNITS, months: fraction(days, ladder.monthDays ?? calendar.inMonthOf(span.from)) }
    : lessUnits(unitsAfter(ladder, before + days, calendar.inWeek, rate), unitsAfter(ladder, before, calendar.inWeek, rate));
  const isMissing = span.missingFrom !== null && span.from >= span.missingFrom;
  found.lines.push({
    kind: isMissing ? "missing" : span.kind, docketId: span.docketId, itemId: span.itemId, quantity: span.quantity,
    from: dayOf(span.from), to: dayOf(span.to), termsId: terms.id, price: null,
    amount: roundHalfUp(exactAmount(units, rate, span.quantity, agreed.share)),
    working: {
      chargedDays: days, firstOfHire: before + 1, units, perDay: rate.perDay, perWeek: rate.perWeek, perMonth: rate.perMonth, ...agreed,
    },
  });
}

const lessUnits = (a: Units, b: Units): Units => ({ days: minus(a.days, b.days), weeks: minus(a.weeks, b.weeks), months: minus(a.months, b.months) });

/** Minor units before rounding: pieces × (units × rate) × share. */
export function exactAmount(units: Units, rate: Pick<ItemRate, "perDay" | "perWeek" | "perMonth">, quantity: number, share: Share): Fraction {
  const part = (count: Fraction, each: number | null): Fraction => (isNone(count) ? count : times(count, fraction(each ?? 0)));
  const one = plus(plus(part(units.days, rate.perDay), part(units.weeks, rate.perWeek)), part(units.months, rate.perMonth));
  return times(one, fraction(BigInt(quantity) * BigInt(share), RATE_PARTS * WHOLE));
}
