import type { TermsRule } from "#lib/contracts/hire/terms.ts";
import { amountText } from "#app/_ui/value/money.tsx";

const DAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
const percent = (share: number): string => `${Number((share / 100).toFixed(2))} %`;

export const START_WORDS = {
  "day-delivered": "The day of delivery is the first day charged", "day-after-delivery": "The day after delivery is the first day charged",
  "day-dispatched": "The day it leaves the depot is the first day charged",
} as const;
export const STOP_WORDS = { call: "the day hire is called off", collection: "the day it is collected", notice: "the end of the notice" } as const;
export const LADDER_WORDS = {
  "daily": "Every charged day at the day rate", "day-and-week": "Whole weeks at the week rate, days over at the day rate but never more than a week",
  "week-and-part": "The first week in full, then a day's part of the week rate for each day", "week-and-whole": "Every week begun in full",
  "week-ladder": "The first week by steps, then a share of the week rate for each day", "month": "A month rate by the day",
} as const;

const dayList = (days: readonly number[]): string => (days.length === 7 ? "every day" : days.map((day) => DAYS[day - 1]).join(", "));

function stopText({ stop }: TermsRule): string {
  const last = stop.isLastDayCharged ? "which is charged in full" : "which is not charged";
  const notice = stop.by === "notice" ? `, ${stop.noticeDays} ${stop.noticeCount === "working" ? "working days" : "days"} after the call` : "";
  return `Hire ends with ${STOP_WORDS[stop.by]}${notice}, ${last}.`;
}

function ladderText({ ladder }: TermsRule): string {
  if (ladder.kind === "week-ladder") {
    const steps = ladder.steps.map((step, index) => `${index + 1} ${index === 0 ? "day" : "days"} ${percent(step)}`).join(", ");
    return `First week by steps of the week rate: ${steps}; each day after it ${percent(ladder.laterDay)}.`;
  }
  if (ladder.kind === "month") return `A month rate by the day, ${ladder.monthDays === null ? "over the charged days of that month" : `over ${ladder.monthDays} days`}.`;
  return `${LADDER_WORDS[ladder.kind]}.`;
}

/** The terms as sentences, in the order a person checks an invoice by. */
export function termsText(rule: TermsRule, currency: string): string[] {
  const money = (minor: number): string => `${currency} ${amountText(minor, currency)}`;
  const charged = rule.charged === "every-day" ? "Every day is charged, weekends too" : `Only working days are charged: ${dayList(rule.workingWeekdays)}`;
  return [
    `${START_WORDS[rule.start]}.`, stopText(rule), ladderText(rule),
    `${charged}; holidays are ${rule.areHolidaysCharged ? "charged" : "free"}.`,
    rule.holidays.length === 0 ? "No holidays named." : `Holidays: ${rule.holidays.join(", ")}.`,
    rule.missingShare === null ? "Hire of missing gear ends with its report." : `Missing gear stays on hire at ${percent(rule.missingShare)} until it is settled.`,
    rule.standDownShare === null ? "No stand-down." : `Stand-down, where agreed in writing, at ${percent(rule.standDownShare)}.`,
    `Delivery ${money(rule.deliveryCharge)}, collection ${money(rule.collectionCharge)}, failed collection ${money(rule.failedCollectionCharge)}.`,
    rule.docketMinimum === 0 ? "No minimum for a docket." : `Each delivery docket comes to ${money(rule.docketMinimum)} of hire at least.`,
  ];
}
