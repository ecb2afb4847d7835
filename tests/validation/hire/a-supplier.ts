import { toDay, type Day } from "#lib/kernel/days.ts";
import { accrue, totalOf } from "#lib/trade/hire/accrual/accrue.ts";
import { NO_FACTS, type HireFacts } from "#lib/trade/hire/facts.ts";
import type { HireTerms, ItemRate } from "#lib/trade/hire/terms/hire-terms.ts";

/** Clamps at 0.60 a day (60 minor units are 6000 hundredths), 4.20 a week, 18.00 a month. */
export const CLAMP: ItemRate = {
  itemId: "clamp", perDay: 6000, perWeek: 42_000, perMonth: 180_000, minimumDays: 0, lossPrice: 4850, damagePrice: 1200, cleaningPrice: 150,
};

export const someTerms = (wishes: Partial<HireTerms> = {}): HireTerms => ({
  id: "terms", validFrom: toDay("2025-01-01"), currency: "AUD", start: "day-delivered",
  stop: { by: "collection", isLastDayCharged: true, noticeDays: 0, noticeCount: "calendar" },
  ladder: { kind: "daily" }, workingWeekdays: [1, 2, 3, 4, 5], holidays: [], charged: "every-day", areHolidaysCharged: true,
  missingShare: null, standDownShare: 5000, deliveryCharge: 0, collectionCharge: 0, failedCollectionCharge: 0, docketMinimum: 0,
  rates: [CLAMP], ...wishes,
});

const day = (on: string): Day => toDay(on);
export const delivered = (on: string, quantity: number, docketId = `D ${on}`, itemId = "clamp") => ({ docketId, itemId, on: day(on), quantity, dispatchedOn: null });
export const called = (on: string, quantity: number, docketId = `C ${on}`, itemId = "clamp") => ({ docketId, itemId, on: day(on), quantity });
export const returned = (on: string, quantity: number, more: { docketId?: string; itemId?: string; callId?: string; damaged?: number; dirty?: number } = {}) =>
  ({ docketId: `R ${on}`, itemId: "clamp", on: day(on), quantity, callId: null, damaged: 0, dirty: 0, ...more });
export const missing = (on: string, quantity: number, settledOn: string | null = null) =>
  ({ docketId: `M ${on}`, itemId: "clamp", on: day(on), quantity, settledOn: settledOn === null ? null : day(settledOn) });
export const facts = (given: Partial<HireFacts>): HireFacts => ({ ...NO_FACTS, ...given });

export const charged = (terms: HireTerms | readonly HireTerms[], given: Partial<HireFacts>, from: string, to: string) =>
  accrue([terms].flat() as HireTerms[], facts(given), { from: day(from), to: day(to) });
export const cost = (terms: HireTerms | readonly HireTerms[], given: Partial<HireFacts>, from: string, to: string): number => {
  const { lines, gaps } = charged(terms, given, from, to);
  if (gaps.length > 0) throw new Error(`Not charged: ${JSON.stringify(gaps)}`);
  return totalOf(lines);
};
