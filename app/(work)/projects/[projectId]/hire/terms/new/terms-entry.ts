import { LADDERS, STARTS, STOPS, type Ladder } from "#lib/trade/hire/terms/hire-terms.ts";
import type { TermsRule } from "#lib/contracts/hire/terms.ts";
import { amountFigure, rateFigure, readAmount, readRate } from "#lib/kernel/money.ts";
import { choiceOf, isTicked, numberOf, textOf } from "#app/_ui/form/read-form.ts";

type Known = { readonly itemId: string; readonly supplierName: string | null; readonly perDay: number | null; readonly perWeek: number | null; readonly perMonth: number | null; readonly minimumDays: number; readonly lossPrice: number | null; readonly damagePrice: number | null; readonly cleaningPrice: number | null };

/** A row of the rates as it is typed; `isPriced` items go with the terms. */
export type RateRow = { readonly key: string; readonly name: string } & Readonly<Record<RateField, string>>;
export const RATE_FIELDS = ["supplierName", "perDay", "perWeek", "perMonth", "minimumDays", "lossPrice", "damagePrice", "cleaningPrice"] as const;
export type RateField = (typeof RATE_FIELDS)[number];

export function toRateRow({ id, name }: { readonly id: string; readonly name: string }, rates: readonly Known[], currency: string): RateRow {
  const known = rates.find(({ itemId }) => itemId === id);
  const rate = (value: number | null | undefined): string => (value === null || value === undefined ? "" : rateFigure(value, currency));
  const price = (value: number | null | undefined): string => (value === null || value === undefined ? "" : amountFigure(value, currency));
  return {
    key: id, name, supplierName: known?.supplierName ?? "", perDay: rate(known?.perDay), perWeek: rate(known?.perWeek), perMonth: rate(known?.perMonth),
    minimumDays: known && known.minimumDays > 0 ? String(known.minimumDays) : "", lossPrice: price(known?.lossPrice), damagePrice: price(known?.damagePrice), cleaningPrice: price(known?.cleaningPrice),
  };
}

/** Rows with any rate; a figure that cannot be read goes as no number and is refused with its row. */
export function ratesOf(rows: readonly RateRow[], currency: string) {
  const rate = (text: string): number | null => (text.trim() === "" ? null : (readRate(text, currency) ?? Number.NaN));
  const price = (text: string): number | null => (text.trim() === "" ? null : (readAmount(text, currency) ?? Number.NaN));
  return rows.filter(({ perDay, perWeek, perMonth }) => [perDay, perWeek, perMonth].some((text) => text.trim() !== "")).map((row) => ({
    itemId: row.key, supplierName: row.supplierName, perDay: rate(row.perDay), perWeek: rate(row.perWeek), perMonth: rate(row.perMonth),
    minimumDays: row.minimumDays.trim() === "" ? 0 : Number(row.minimumDays),
    lossPrice: price(row.lossPrice), damagePrice: price(row.damagePrice), cleaningPrice: price(row.cleaningPrice),
  }));
}

const share = (data: FormData, name: string): number => Math.round(numberOf(data, name) * 100);
const shareOrNull = (data: FormData, name: string): number | null => (textOf(data, name).trim() === "" ? null : share(data, name));

function ladderOf(data: FormData): Ladder {
  const kind = choiceOf(data, "ladder", LADDERS);
  if (kind === "month") return { kind, monthDays: textOf(data, "monthDays").trim() === "" ? null : numberOf(data, "monthDays") };
  if (kind !== "week-ladder") return { kind };
  return { kind, steps: textOf(data, "steps").split(/[,;\s]+/).filter((text) => text !== "").map((text) => Math.round(Number(text.replace("%", "")) * 100)), laterDay: share(data, "laterDay") };
}

/** The rule as the form has it; what cannot be read is refused by its name. */
export function ruleOf(data: FormData, currency: string): TermsRule {
  const money = (name: string): number => (textOf(data, name).trim() === "" ? 0 : (readAmount(textOf(data, name), currency) ?? Number.NaN));
  const holidays = textOf(data, "holidays").split(/[,;\s]+/).filter((text) => text !== "");
  return {
    start: choiceOf(data, "start", STARTS),
    stop: {
      by: choiceOf(data, "stop", STOPS), isLastDayCharged: isTicked(data, "isLastDayCharged"), noticeDays: textOf(data, "noticeDays") === "" ? 0 : numberOf(data, "noticeDays"),
      noticeCount: choiceOf(data, "noticeCount", ["working", "calendar"]),
    },
    ladder: ladderOf(data) as TermsRule["ladder"],
    workingWeekdays: data.getAll("weekday").map(Number), holidays: holidays as TermsRule["holidays"],
    charged: choiceOf(data, "charged", ["every-day", "working-days"]), areHolidaysCharged: isTicked(data, "areHolidaysCharged"),
    missingShare: shareOrNull(data, "missingShare"), standDownShare: shareOrNull(data, "standDownShare"),
    deliveryCharge: money("deliveryCharge"), collectionCharge: money("collectionCharge"), failedCollectionCharge: money("failedCollectionCharge"), docketMinimum: money("docketMinimum"),
  };
}

export const percentOf = (value: number | null): number | undefined => (value === null ? undefined : value / 100);
