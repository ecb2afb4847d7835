import { z } from "zod";
import type { Day } from "#lib/kernel/days.ts";
import { LADDERS, STARTS, STOPS, type HireTerms, type Ladder } from "#lib/trade/hire/terms/hire-terms.ts";
import { hasFallingSteps } from "#lib/trade/hire/terms/ladder.ts";
import { day, id, line, optionalLine } from "../fields.ts";

const whole = (least: number, most: number, what: string) =>
  z.number({ message: `Give ${what} as a whole number.` }).int(`Give ${what} as a whole number.`).min(least, `${what}: not under ${least}.`).max(most, `${what}: not over ${most}.`);
/** Minor units of the project's currency. */
const price = (what: string) => whole(0, 1_000_000_000_00, what);
/** Hundredths of a minor unit a piece. */
const rate = (what: string) => whole(0, 1_000_000_000, what).nullable();
const share = (what: string) => whole(0, 10_000, what);

const ladder = z
  .discriminatedUnion("kind", [
    z.object({ kind: z.enum(LADDERS).exclude(["week-ladder", "month"]) }),
    z.object({ kind: z.literal("week-ladder"), steps: z.array(share("A step")).min(1, "Give at least one step.").max(7, "A week has no more than seven steps."), laterDay: share("A day after the first week") }),
    z.object({ kind: z.literal("month"), monthDays: whole(1, 31, "Days of a month").nullable() }),
  ])
  .refine((rungs) => !hasFallingSteps(rungs as Ladder), { message: "A step is lower than the one before it; a longer hire would cost less.", path: ["steps"] });

export const termsRule = z.object({
  start: z.enum(STARTS),
  stop: z.object({
    by: z.enum(STOPS), isLastDayCharged: z.boolean(), noticeDays: whole(0, 60, "Days of notice"), noticeCount: z.enum(["calendar", "working"]),
  }),
  ladder,
  workingWeekdays: z.array(z.number().int().min(1).max(7)).min(1, "Choose at least one working day.").max(7).transform((days) => [...new Set(days)].sort()),
  holidays: z.array(day.transform((text) => text as Day)).max(200, "Not more than 200 holidays."),
  charged: z.enum(["every-day", "working-days"]),
  areHolidaysCharged: z.boolean(),
  missingShare: share("Share for missing gear").nullable(),
  standDownShare: share("Share of a stand-down").nullable(),
  deliveryCharge: price("Delivery"),
  collectionCharge: price("Collection"),
  failedCollectionCharge: price("Failed collection"),
  docketMinimum: price("Minimum of a docket"),
});
export type TermsRule = z.output<typeof termsRule>;

const itemRate = z.object({
  itemId: id,
  supplierName: optionalLine(80),
  perDay: rate("Day rate"), perWeek: rate("Week rate"), perMonth: rate("Month rate"),
  minimumDays: whole(0, 366, "Minimum days"),
  lossPrice: price("Loss price").nullable(), damagePrice: price("Damage price").nullable(), cleaningPrice: price("Cleaning price").nullable(),
});

export const hireInput = z.object({ projectId: id });
export const saveSupplierInput = z.object({
  projectId: id, supplierId: id.optional(), name: line(80), contact: optionalLine(80), phone: optionalLine(40), email: optionalLine(120),
});
export const retireSupplierInput = z.object({ projectId: id, supplierId: id });
export const addTermsInput = z.object({
  projectId: id, supplierId: id, validFrom: day, currency: z.string().trim().toUpperCase().regex(/^[A-Z]{3}$/, "Give a three-letter currency code of ISO 4217, as AUD."),
  rule: termsRule, rates: z.array(itemRate).min(1, "Give the rate of at least one item.").max(300, "Not more than 300 items."),
});
export const reverseInput = z.object({ projectId: id, subjectId: id, reason: line(300) });

export type TermsVersion = Omit<HireTerms, "rates"> & { readonly rates: readonly (HireTerms["rates"][number] & { readonly supplierName: string | null })[] };
