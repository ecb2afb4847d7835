import type { Day } from "#lib/kernel/days.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import type { HireFacts } from "../facts.ts";
import { dayOf, monthAround, numberOf, type DayNumber } from "../day-number.ts";
import type { HireTerms } from "../terms/hire-terms.ts";
import { inForceOn, layTerms, type TermsStretch } from "../terms/terms-in-force.ts";
import type { Accrual, ChargeLine } from "./charge-line.ts";
import { chargeSpan, type Found } from "./hire-lines.ts";
import { lotsOf, type Lot, type Portion } from "./lots.ts";
import { singleCharges } from "./single-charges.ts";

export type Period = { readonly from: Day; readonly to: Day };

/**
 * What one supplier may charge for the days of a period, both included, one line for each delivery, item and month, and
 * apart wherever the rule behind it changes. What has not ended is charged to the end of the period. Each line is
 * rounded once, half up; a period cut at a month's end has the same lines as the whole.
 */
export function accrue(versions: readonly HireTerms[], facts: HireFacts, period: Period): Accrual {
  const laid = layTerms(versions);
  const lots = lotsOf(facts, laid);
  const found: Found = { lines: [], gaps: [] };
  const [from, to] = [numberOf(period.from), numberOf(period.to)];
  for (const lot of lots) for (const portion of lot.portions) chargePortion(lot, portion, { from, to }, laid, facts, found);
  topUpDockets(lots, laid, facts, { from, to }, found);
  const once: Found = { lines: [], gaps: found.gaps };
  singleCharges(within(facts, period), laid, once);
  return { lines: [...found.lines, ...once.lines].sort(inOrder), gaps: found.gaps };
}

type Range = { readonly from: DayNumber; readonly to: DayNumber };

function chargePortion(lot: Lot, portion: Portion, range: Range, laid: readonly TermsStretch[], facts: HireFacts, found: Found): void {
  const { docketId, itemId } = lot.delivery;
  const own = { docketId, itemId, quantity: portion.quantity, firstDay: lot.firstDay, missingFrom: portion.missingFrom };
  const last = portion.lastDay ?? range.to;
  chargeSpan({ ...own, kind: "hire", from: Math.max(lot.firstDay, range.from), to: Math.min(last, range.to) }, laid, facts.standDowns, found);
  if (portion.lastDay === null || portion.missingFrom !== null) return;
  const ended = Math.max(portion.lastDay, lot.firstDay);
  if (ended < range.from || ended > range.to) return;
  topUpMinimum({ ...own, kind: "minimum" }, portion.lastDay, ended, laid, found);
}

/** Days up to the minimum that the gear was no longer there for, charged with its last day. */
function topUpMinimum(own: Omit<Parameters<typeof chargeSpan>[0], "from" | "to">, last: DayNumber, ended: DayNumber, laid: readonly TermsStretch[], found: Found): void {
  const minimum = inForceOn(laid, ended)?.rates.get(own.itemId)?.minimumDays ?? 0;
  const until = own.firstDay + minimum - 1;
  const from = Math.max(last + 1, own.firstDay);
  if (until < from) return;
  chargeSpan({ ...own, from, to: until }, laid, [], found);
}

/** Once all of a delivery has ended, its hire comes to the docket's minimum at least. */
function topUpDockets(lots: readonly Lot[], laid: readonly TermsStretch[], facts: HireFacts, range: Range, found: Found): void {
  if (!laid.some(({ terms }) => terms.docketMinimum > 0)) return;
  for (const [docketId, own] of groupBy(lots, ({ delivery }) => delivery.docketId)) {
    const lasts = own.flatMap(({ firstDay, portions }) => portions.map(({ lastDay }) => (lastDay === null ? null : Math.max(lastDay, firstDay))));
    if (lasts.includes(null)) continue;
    const ended = Math.max(...lasts.filter((day) => day !== null));
    const stretch = inForceOn(laid, ended);
    if (!stretch || ended < range.from || ended > range.to) continue;
    const whole: Found = { lines: [], gaps: [] };
    const first = Math.min(...own.map(({ firstDay }) => firstDay));
    for (const lot of own) for (const portion of lot.portions) chargePortion(lot, portion, { from: first, to: ended }, laid, facts, whole);
    const short = stretch.terms.docketMinimum - whole.lines.reduce((sum, { amount }) => sum + amount, 0);
    if (short <= 0) continue;
    const on = dayOf(ended);
    found.lines.push({ kind: "docket-minimum", docketId, itemId: null, quantity: 1, from: on, to: on, termsId: stretch.terms.id, amount: short, price: short, working: null });
  }
}

function within(facts: HireFacts, { from, to }: Period): HireFacts {
  const keep = <T extends { readonly on: Day }>(list: readonly T[]): T[] => list.filter(({ on }) => from <= on && on <= to);
  return { ...facts, returned: keep(facts.returned), missing: keep(facts.missing), trips: keep(facts.trips) };
}

const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const inOrder = (a: ChargeLine, b: ChargeLine): number =>
  order(a.from, b.from) || order(a.docketId, b.docketId) || order(a.itemId ?? "", b.itemId ?? "") || order(a.kind, b.kind);

export const totalOf = (lines: readonly ChargeLine[]): number => lines.reduce((sum, { amount }) => sum + amount, 0);

/** The calendar month a day lies in. */
export function monthOf(day: Day): Period {
  const { first, next } = monthAround(numberOf(day));
  return { from: dayOf(first), to: dayOf(next - 1) };
}
