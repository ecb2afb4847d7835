import "server-only";
import type { ReturnSettings } from "#lib/contracts/hire/returns.ts";
import { addDays, type Day, daysBetween } from "#lib/kernel/days.ts";
import { brokenRule, notFound, ok, type Result } from "#lib/kernel/result.ts";
import type { HireTerms } from "#lib/trade/hire/terms/hire-terms.ts";
import { gearDemand, pinnedBy } from "#lib/trade/planning/demand/gear-demand.ts";
import { callBy, isTruckDay, truckDays, type TruckWeek } from "#lib/trade/planning/demand/truck-days.ts";
import { itemName } from "../../hire/hire-book.ts";
import type { PlanInput } from "./plan-input.ts";
import { countByItem, plannedItems, type SiteNow, type Standing } from "./site-now.ts";

/** More dates than this are thinned to one a week beyond the first four weeks. */
const MOST_DATES = 45;
const HORIZON_DAYS = 366;

/** A supplier the plan is for: its own trucks, and the dates on which one that is called today or later can come. */
export type Yard = Standing & { readonly terms: HireTerms; readonly truck: ReturnSettings["suppliers"][number]; readonly items: readonly string[]; readonly callOn: readonly Day[]; readonly mayCome: readonly boolean[]; readonly mayCollect: readonly boolean[] };

/** What the columns need of the suppliers' gear and what there is, by day, and the dates on which a truck may come: all but the charges. */
export type Outlook = Pick<PlanInput, "settings" | "dates" | "suppliers" | "need" | "pinned" | "leftOut"> & { readonly yards: readonly Yard[] };

/** Own stock, and what suppliers outside the plan have here, cover the need first. */
export function outlook(site: SiteNow, settings: ReturnSettings): Result<Outlook> {
  const found = chosenYards(site, settings);
  if (!found.ok) return found;
  const { book, holders } = site;
  const chosen = found.value;
  const dates = datesOf(site, settings, chosen);
  const yards = chosen.map((yard): Yard => {
    const notice = noticeOf(yard.terms);
    const callOn = dates.map((on) => callBy(on, notice, { weekdays: yard.terms.workingWeekdays, daysOff: yard.terms.holidays }));
    const mayCome = dates.map((on) => isTruckDay(on, weekOf(settings, yard.terms)));
    return { ...yard, callOn, mayCome, mayCollect: mayCome.map((comes, t) => t > 0 && comes && (callOn[t] ?? "") >= book.today) };
  });
  const days = { from: book.today, to: addDays(dates.at(-1) ?? book.today, -1), floatPercent: settings.floatPercent };
  const need = book.items.filter(({ id }) => yards.some(({ items }) => items.includes(id))).map(({ id }) => {
    const hired = yards.flatMap(({ supplierId, items, hired: rows }) => (items.includes(id) ? [{ supplierId, count: countByItem(rows).get(id) ?? 0 }] : []));
    return {
      itemId: id, item: itemName(book, id), hired, needed: gearDemand(holders.holders, id, days).map(({ needed }) => needed),
      owned: Math.max(0, (site.onProject.get(id) ?? 0) - total(hired)),
    };
  });
  const firstTruck = dates.find((_, t) => yards.some(({ mayCollect }) => mayCollect[t])) ?? book.today;
  return ok({
    settings, dates, need, yards,
    suppliers: yards.map(({ supplierId, supplier, callOn }) => ({ supplierId, supplier, callOn: [...callOn] })),
    pinned: need.flatMap(({ itemId, item, hired, owned }) => {
      const here = total(hired);
      const pin = pinnedBy(holders.holders, itemId, here + owned, { ...days, from: firstTruck });
      return pin ? [{ itemId, item, on: pin.on, needed: pin.needed, spare: Math.min(here, pin.spare), columns: pin.columnIds.map((each) => holders.nameOf.get(each) ?? "") }] : [];
    }),
    leftOut: yards.flatMap(({ supplierId, supplier, items, hired }) => [...countByItem(hired)].filter(([itemId]) => !items.includes(itemId))
      .map(([itemId, count]) => ({ supplierId, supplier, itemId, item: itemName(book, itemId), hired: count, why: holders.known.has(itemId) ? ("no-rate" as const) : ("no-need" as const) }))),
  });
}

type Chosen = Omit<Yard, "callOn" | "mayCome" | "mayCollect">;

function chosenYards(site: SiteNow, { suppliers }: ReturnSettings): Result<Chosen[]> {
  const wanted = suppliers.filter(({ isIn }) => isIn);
  if (wanted.some((truck) => !site.standing.some(({ supplierId }) => supplierId === truck.supplierId))) return notFound("supplier");
  const chosen: Chosen[] = [];
  for (const standing of site.standing) {
    const truck = wanted.find(({ supplierId }) => supplierId === standing.supplierId);
    if (!truck) continue;
    const { terms } = standing;
    if (!terms) return brokenRule("no-hire-terms", { supplier: standing.supplier });
    chosen.push({ ...standing, terms, truck, items: plannedItems(site, standing) });
  }
  const names = chosen.map(({ supplier }) => supplier).join(", ");
  return chosen.every(({ items }) => items.length === 0) ? brokenRule("nothing-on-hire", { supplier: names || "any supplier" }) : ok(chosen.filter(({ items, hired }) => items.length > 0 || hired.length > 0));
}

const weekOf = ({ weekdays }: ReturnSettings, { holidays }: HireTerms): TruckWeek => ({ weekdays, daysOff: holidays });
const noticeOf = ({ stop }: HireTerms) => ({ days: stop.noticeDays, counted: stop.noticeCount });
export const total = (hired: readonly { readonly count: number }[]): number => hired.reduce((sum, { count }) => sum + count, 0);

/** Far enough for the last column to be stripped, and for a return called today to be collected; all may come on the last. */
function datesOf({ book: { today }, holders: { holders } }: SiteNow, settings: ReturnSettings, yards: readonly Chosen[]): Day[] {
  const furthest = addDays(today, HORIZON_DAYS);
  const lastNeed = holders.reduce<Day>((latest, { to }) => (to > latest ? to : latest), today);
  const soonest = addDays(today, 14 + 2 * Math.max(0, ...yards.map(({ terms }) => terms.stop.noticeDays)));
  let last = [addDays(lastNeed, 1), soonest].reduce((one, other) => (one > other ? one : other));
  if (last > furthest) last = furthest;
  const closed = yards.map(({ terms }) => terms.holidays);
  while (!yards.every(({ terms }) => isTruckDay(last, weekOf(settings, terms))) && daysBetween(furthest, last) < 30) last = addDays(last, 1);
  const all = truckDays(today, last, { weekdays: settings.weekdays, daysOff: (closed[0] ?? []).filter((day) => closed.every((days) => days.includes(day))) });
  if (all.length <= MOST_DATES) return all;
  const near = addDays(today, 28);
  return all.reduce<Day[]>((kept, on, index) => (on <= near || index === all.length - 1 || daysBetween(kept.at(-1) ?? today, on) >= 7 ? [...kept, on] : kept), []);
}
