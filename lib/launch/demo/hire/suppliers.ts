import type { z } from "zod";
import type { addTermsInput, TermsRule } from "#lib/contracts/hire/terms.ts";

/** Suppliers, terms and prices are invented. */
type Rate = Omit<z.input<typeof addTermsInput>["rates"][number], "itemId"> & { readonly item: string };
export type DemoTerms = { readonly validDaysAgo: number; readonly rule: TermsRule; readonly rates: readonly Rate[] };
export type DemoSupplier = { readonly name: string; readonly contact: string; readonly phone: string; readonly email: string; readonly terms: readonly DemoTerms[] };

export const PROP = "Prop 2.1 to 3.6 m";

/** First week in full, then a seventh a day; a call stops the hire; what is missing stays on hire at two thirds. */
const BY_THE_WEEK: TermsRule = {
  start: "day-delivered", stop: { by: "call", isLastDayCharged: true, noticeDays: 0, noticeCount: "calendar" }, ladder: { kind: "week-and-part" },
  workingWeekdays: [1, 2, 3, 4, 5], holidays: [], charged: "every-day", areHolidaysCharged: true, missingShare: 6667, standDownShare: 5000,
  deliveryCharge: 18_000, collectionCharge: 18_000, failedCollectionCharge: 9500, docketMinimum: 0,
};
/** Working days at a day rate, from the day after delivery to three working days after the call; a minimum on each docket. */
const BY_THE_DAY: TermsRule = {
  ...BY_THE_WEEK, start: "day-after-delivery", stop: { by: "notice", isLastDayCharged: true, noticeDays: 3, noticeCount: "working" }, ladder: { kind: "daily" },
  charged: "working-days", areHolidaysCharged: false, missingShare: null, standDownShare: null, deliveryCharge: 12_500, collectionCharge: 12_500, docketMinimum: 15_000,
};
const rate = (item: string, supplierName: string, prices: Partial<Rate>): Rate => ({
  item, supplierName, perDay: null, perWeek: null, perMonth: null, minimumDays: 0, lossPrice: null, damagePrice: null, cleaningPrice: null, ...prices,
});

export const BY_WEEK = (clamp: string): DemoSupplier => ({
  name: "Mossgill Gear Hire", contact: "Runa Sedgewick", phone: "555 0142", email: "hire@mossgill.example",
  terms: [{
    validDaysAgo: 120, rule: BY_THE_WEEK,
    rates: [
      rate(clamp, "Column clamp set", { perWeek: 42_000, minimumDays: 7, lossPrice: 14_800, damagePrice: 3600, cleaningPrice: 250 }),
      rate("Wedge", "Steel wedge", { perWeek: 1400, minimumDays: 7, lossPrice: 620, damagePrice: 0, cleaningPrice: 20 }),
    ],
  }],
});
export const BY_DAY: DemoSupplier = {
  name: "Kettlewater Props", contact: "Aldo Brisk", phone: "555 0177", email: "desk@kettlewater.example",
  terms: [
    { validDaysAgo: 90, rule: BY_THE_DAY, rates: [rate(PROP, "Prop size 2", { perDay: 1850, lossPrice: 7400, damagePrice: 2200, cleaningPrice: 300 })] },
    { validDaysAgo: 10, rule: BY_THE_DAY, rates: [rate(PROP, "Prop size 2", { perDay: 1975, lossPrice: 7900, damagePrice: 2200, cleaningPrice: 300 })] },
  ],
};
