import type { Day } from "#lib/kernel/days.ts";

/** A share in ten-thousandths: 5000 is a half. */
export type Share = number;
export const WHOLE: Share = 10_000;

export const STARTS = ["day-dispatched", "day-delivered", "day-after-delivery"] as const;
export const STOPS = ["call", "collection", "notice"] as const;
export const LADDERS = ["daily", "day-and-week", "week-and-part", "week-and-whole", "week-ladder", "month"] as const;

/**
 * How days become money. Weeks have as many days as the terms charge in a week: 7, or 5 where only working days count.
 *  daily           every charged day at the day rate
 *  day-and-week    whole weeks at the week rate, days over at the day rate but never more than a week
 *  week-and-part   the first week in full, then a part of the week rate for each day (1/7, or 1/5 of a five-day week)
 *  week-and-whole  every week begun is charged in full
 *  week-ladder     the first week by steps (2 days 60 %, 3 days 75 % …), each day after it at a share of the week rate
 *  month           a month rate by the day: over the charged days of that month, or over a fixed number of days
 */
export type Ladder =
  | { readonly kind: "daily" | "day-and-week" | "week-and-part" | "week-and-whole" }
  | { readonly kind: "week-ladder"; /** Share of the week rate after 1, 2, 3 … days; the last holds for the rest of the week. */ readonly steps: readonly Share[]; readonly laterDay: Share }
  | { readonly kind: "month"; /** Null: the charged days of that month. */ readonly monthDays: number | null };

export type StopRule = {
  readonly by: (typeof STOPS)[number];
  /** Whether the day it ends on is charged in full, or not at all. */
  readonly isLastDayCharged: boolean;
  readonly noticeDays: number;
  readonly noticeCount: "calendar" | "working";
};

/** Rates are in hundredths of a minor unit a piece, prices in minor units a piece; null where the supplier states none. */
export type ItemRate = {
  readonly itemId: string;
  readonly perDay: number | null;
  readonly perWeek: number | null;
  readonly perMonth: number | null;
  /** At least this many days are charged, counted on the calendar from the first day. */
  readonly minimumDays: number;
  readonly lossPrice: number | null;
  readonly damagePrice: number | null;
  readonly cleaningPrice: number | null;
};

/** One version of a supplier's terms, in force from its day until the next version's. */
export type HireTerms = {
  readonly id: string;
  readonly validFrom: Day;
  readonly currency: string;
  readonly start: (typeof STARTS)[number];
  readonly stop: StopRule;
  readonly ladder: Ladder;
  /** ISO weekdays the supplier works; notice in working days goes by them, and charges where `charged` says so. */
  readonly workingWeekdays: readonly number[];
  readonly holidays: readonly Day[];
  readonly charged: "every-day" | "working-days";
  readonly areHolidaysCharged: boolean;
  /** What is reported missing stays on hire at this share until it is settled; null: hire ends with the report. */
  readonly missingShare: Share | null;
  /** Most a stand-down may be agreed at; null: the supplier grants none. */
  readonly standDownShare: Share | null;
  readonly deliveryCharge: number;
  readonly collectionCharge: number;
  readonly failedCollectionCharge: number;
  /** Hire of one delivery docket comes to at least this; 0 is none. */
  readonly docketMinimum: number;
  readonly rates: readonly ItemRate[];
};
