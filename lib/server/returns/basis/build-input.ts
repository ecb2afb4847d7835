import "server-only";
import { addDays, type Day, daysBetween } from "#lib/kernel/days.ts";
import { brokenRule, notFound, ok, type Result } from "#lib/kernel/result.ts";
import type { ReturnSettings } from "#lib/contracts/hire/returns.ts";
import { onHire, type OnHire } from "#lib/trade/hire/accrual/on-hire.ts";
import type { HireTerms } from "#lib/trade/hire/terms/hire-terms.ts";
import { layTerms } from "#lib/trade/hire/terms/terms-in-force.ts";
import { gearDemand, pinnedBy } from "#lib/trade/planning/demand/gear-demand.ts";
import { betweenDays, callBy, isTruckDay, truckDays, type TruckWeek } from "#lib/trade/planning/demand/truck-days.ts";
import type { ReturnItem } from "#lib/trade/planning/returns/return-order.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { docketsOf, factsOf, type HireBook, itemName, readBook, termsOf } from "../../hire/hire-book.ts";
import { hireCharge, lotCharge, type ChargeBasis } from "./charge-tables.ts";
import { listOnProject } from "./form-store.ts";
import { type Holders, readHolders } from "./gear-holders.ts";
import type { PlanInput } from "./plan-input.ts";

/** What every plan of the project rests on, read once. */
export type SiteNow = { readonly book: HireBook; readonly holders: Holders; readonly onProject: ReadonlyMap<string, number> };
export type SupplierNow = SiteNow & { readonly hired: readonly OnHire[] };

const HUNDREDTHS = 100;
const DAYS_A_MONTH = 30;
/** More dates than this are thinned to one a week beyond the first four weeks. */
const MOST_DATES = 45;
const HORIZON_DAYS = 366;

export async function readSite(scope: ProjectScope, cleaningDays: number): Promise<SiteNow> {
  const book = await readBook(scope);
  return {
    book, holders: await readHolders(scope, book.items, book.today, cleaningDays),
    onProject: new Map((await listOnProject(scope)).map(({ itemId, quantity }) => [itemId, quantity])),
  };
}

/** What of a supplier's is on hire and not called off. */
export function supplierNow(site: SiteNow, supplierId: string): Result<SupplierNow> {
  const { book } = site;
  if (!book.suppliers.some(({ id }) => id === supplierId)) return notFound("supplier");
  const standing = onHire(termsOf(book, supplierId), factsOf(docketsOf(book, supplierId)), book.today);
  return ok({ ...site, hired: standing.filter(({ isMissing, endsOn }) => !isMissing && endsOn === null) });
}

/** What the columns need of a supplier's gear and what there is, by day, and the dates on which a truck may come: all but the charges. */
export type Outlook = Pick<PlanInput, "settings" | "dates" | "callOn" | "need" | "pinned" | "leftOut"> & { readonly terms: HireTerms; readonly mayCollect: readonly boolean[] };

/** Own stock and what other suppliers have here cover the need first. */
export function outlook(now: SupplierNow, supplierId: string, settings: ReturnSettings): Result<Outlook> {
  const { book, holders, hired } = now;
  const supplier = book.suppliers.find(({ id }) => id === supplierId)?.name ?? "";
  const terms = layTerms(termsOf(book, supplierId)).at(-1)?.terms;
  if (!terms) return brokenRule("no-hire-terms", { supplier });
  const onHand = countByItem(hired);
  const planned = book.items.filter(({ id }) => (onHand.get(id) ?? 0) > 0 && holders.known.has(id) && terms.rates.some(({ itemId }) => itemId === id));
  if (planned.length === 0) return brokenRule("nothing-on-hire", { supplier });
  const week: TruckWeek = { weekdays: settings.weekdays, daysOff: terms.holidays };
  const notice = { days: terms.stop.noticeDays, counted: terms.stop.noticeCount };
  const dates = datesOf(book.today, holders, notice, week);
  const callOn = dates.map((on) => callBy(on, notice, { weekdays: terms.workingWeekdays, daysOff: terms.holidays }));
  const days = { from: book.today, to: addDays(dates.at(-1) ?? book.today, -1), floatPercent: settings.floatPercent };
  const need = planned.map(({ id }) => ({
    itemId: id, item: itemName(book, id), hired: onHand.get(id) ?? 0, needed: gearDemand(holders.holders, id, days).map(({ needed }) => needed),
    owned: Math.max(0, (now.onProject.get(id) ?? 0) - (onHand.get(id) ?? 0)),
  }));
  const mayCollect = dates.map((on, t) => t > 0 && isTruckDay(on, week) && (callOn[t] ?? "") >= book.today);
  const ahead = { ...days, from: dates[mayCollect.indexOf(true)] ?? book.today };
  return ok({
    settings, dates, callOn, need, terms, mayCollect,
    pinned: need.flatMap(({ itemId, item, hired: here, owned }) => {
      const pin = pinnedBy(holders.holders, itemId, here + owned, ahead);
      return pin ? [{ itemId, item, on: pin.on, needed: pin.needed, spare: Math.min(here, pin.spare), columns: pin.columnIds.map((each) => holders.nameOf.get(each) ?? "") }] : [];
    }),
    leftOut: [...onHand].filter(([itemId]) => !planned.some(({ id }) => id === itemId))
      .map(([itemId, count]) => ({ itemId, item: itemName(book, itemId), hired: count, why: holders.known.has(itemId) ? ("no-rate" as const) : ("no-need" as const) })),
  });
}

/** The order the planner is given, with what every piece costs by every date. */
export function buildInput(now: SupplierNow, supplierId: string, { terms, mayCollect, ...view }: Outlook): PlanInput {
  const { book, holders } = now;
  const { settings, dates, callOn, need } = view;
  const basis = { versions: termsOf(book, supplierId), standDowns: factsOf(docketsOf(book, supplierId)).standDowns, dates, callOn, mayCollect };
  const firstDelivery = addDays(book.today, settings.leadDays);
  const offsets = dates.map((on) => daysBetween(book.today, on));
  const short: PlanInput["short"] = [];
  const items = need.map(({ itemId, item, hired: here, needed, owned }): ReturnItem => {
    const lossPrice = terms.rates.find((rate) => rate.itemId === itemId)?.lossPrice ?? 0;
    const own: ChargeBasis = { ...basis, lossADay: Math.round((lossPrice * HUNDREDTHS * settings.lossPercentMonth) / 100 / DAYS_A_MONTH) };
    const demand = betweenDays(offsets, needed).map((count, t) => {
      const [net, on] = [Math.max(0, count - owned), dates[t] ?? book.today];
      if (net <= here || (t > 0 && on >= firstDelivery)) return net;
      short.push({ itemId, item, on, needed: net, there: here });
      return here;
    });
    return {
      id: itemId, unitKg: settings.unitKg[itemId] ?? holders.kgOf.get(itemId) ?? 1, handlingIn: settings.handling * HUNDREDTHS, handlingOut: settings.handling * HUNDREDTHS, demand,
      lots: lotsOf(now, supplierId, itemId).map(({ docketId, quantity, delivered }, index) => ({ id: `${docketId} ${index}`, count: quantity, charge: lotCharge(own, itemId, delivered) })),
      hireCharge: hireCharge(own, itemId, firstDelivery),
    };
  });
  return { ...view, short, order: { dates: dates.length - 1, truckKg: settings.truckKg, tripCost: settings.tripCost * HUNDREDTHS, mostTrips: null, items } };
}

/** Far enough for the last column to be stripped, and for a return called today to be collected. */
function datesOf(today: Day, { holders }: Holders, notice: Parameters<typeof callBy>[1], week: TruckWeek): Day[] {
  const furthest = addDays(today, HORIZON_DAYS);
  const lastNeed = holders.reduce<Day>((latest, { to }) => (to > latest ? to : latest), today);
  const soonest = addDays(today, 14 + 2 * notice.days);
  const last = [addDays(lastNeed, 1), soonest].reduce((one, other) => (one > other ? one : other));
  const all = truckDays(today, last < furthest ? last : furthest, week);
  if (all.length <= MOST_DATES) return all;
  const near = addDays(today, 28);
  return all.reduce<Day[]>((kept, on, index) => (on <= near || index === all.length - 1 || daysBetween(kept.at(-1) ?? today, on) >= 7 ? [...kept, on] : kept), []);
}

function lotsOf({ book, hired }: SupplierNow, supplierId: string, itemId: string) {
  const deliveries = new Map(docketsOf(book, supplierId).map((docket) => [docket.id, docket]));
  return hired.filter((row) => row.itemId === itemId).map(({ docketId, quantity, since }) => {
    const docket = deliveries.get(docketId);
    return { docketId, quantity, delivered: { on: docket?.on ?? since, dispatchedOn: docket?.dispatchedOn ?? null } };
  });
}

const countByItem = (rows: readonly OnHire[]): Map<string, number> => rows.reduce((counts, { itemId, quantity }) => counts.set(itemId, (counts.get(itemId) ?? 0) + quantity), new Map<string, number>());
