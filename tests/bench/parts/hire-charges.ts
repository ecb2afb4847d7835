import { addDays, toDay } from "#lib/kernel/days.ts";
import { accrue } from "#lib/trade/hire/accrual/accrue.ts";
import { NO_FACTS, type HireFacts } from "#lib/trade/hire/facts.ts";
import type { HireTerms } from "#lib/trade/hire/terms/hire-terms.ts";
import type { Row } from "./row.ts";

const LINES = 5000;
const ITEMS = 40;
const BUDGET_MS = 1000;
const ROUNDS = 5;
const NEW_YEAR = toDay("2031-01-01");

const TERMS: HireTerms = {
  id: "terms", validFrom: toDay("2030-01-01"), currency: "AUD", start: "day-delivered",
  stop: { by: "call", isLastDayCharged: true, noticeDays: 0, noticeCount: "calendar" }, ladder: { kind: "day-and-week" },
  workingWeekdays: [1, 2, 3, 4, 5], holidays: [toDay("2031-04-18"), toDay("2031-12-25")], charged: "every-day", areHolidaysCharged: false,
  missingShare: null, standDownShare: 5000, deliveryCharge: 18_000, collectionCharge: 18_000, failedCollectionCharge: 9000, docketMinimum: 0,
  rates: Array.from({ length: ITEMS }, (_, item) => ({
    itemId: `item ${item}`, perDay: 850 + item, perWeek: 4200 + item, perMonth: null, minimumDays: 7, lossPrice: 4850, damagePrice: 1200, cleaningPrice: 150,
  })),
};

/** Half deliveries, half returns, spread evenly over the year and the items; a fifth stays to the end. */
function aYear(): HireFacts {
  const half = LINES / 2;
  const line = (index: number, after: number, quantity: number) => ({ itemId: `item ${index % ITEMS}`, on: addDays(NEW_YEAR, Math.floor((index * 320) / half) + after), quantity });
  return {
    ...NO_FACTS,
    delivered: Array.from({ length: half }, (_, index) => ({ ...line(index, 0, 50), docketId: `D${index}`, dispatchedOn: null })),
    returned: Array.from({ length: half }, (_, index) => ({ ...line(index, 40, 40), docketId: `R${index}`, callId: null, damaged: 0, dirty: 0 })),
  };
}

export function hireChargeRows(): Row[] {
  const facts = aYear();
  const period = { from: NEW_YEAR, to: toDay("2031-12-31") };
  const times = Array.from({ length: ROUNDS }, () => {
    const started = performance.now();
    accrue([TERMS], facts, period);
    return performance.now() - started;
  }).sort((a, b) => a - b);
  const median = times[Math.floor(ROUNDS / 2)] ?? 0;
  const { lines } = accrue([TERMS], facts, period);
  return [{
    what: `hire of a year from ${LINES.toLocaleString("en")} docket lines, ${lines.length.toLocaleString("en")} charge lines`,
    measured: `${Math.round(median)} ms`, budget: `< ${BUDGET_MS} ms`, ok: median < BUDGET_MS,
  }];
}
