import "server-only";
import { addDays, daysBetween } from "#lib/kernel/days.ts";
import { betweenDays } from "#lib/trade/planning/demand/truck-days.ts";
import type { ReturnItem, ReturnOrder, SharedNeed } from "#lib/trade/planning/returns/return-order.ts";
import { docketsOf, factsOf, termsOf } from "../../hire/hire-book.ts";
import { type ChargeBasis, hireCharge, lotCharge } from "./charge-tables.ts";
import { type Outlook, total, type Yard } from "./outlook.ts";
import type { PlanInput } from "./plan-input.ts";
import { pieceKg, type SiteNow } from "./site-now.ts";

const HUNDREDTHS = 100;
const DAYS_A_MONTH = 30;

/** The order the planner is given, with what every piece costs by every date. */
export function buildInput(site: SiteNow, { yards, ...view }: Outlook): PlanInput {
  const { dates, need } = view;
  const offsets = dates.map((on) => daysBetween(site.book.today, on));
  const short: PlanInput["short"] = [];
  const items: ReturnItem[] = [];
  const shared: SharedNeed[] = [];
  for (const { itemId, item, hired, needed, owned } of need) {
    const here = total(hired);
    const firstDelivery = addDays(site.book.today, Math.min(...yards.filter(({ items: own }) => own.includes(itemId)).map(({ truck }) => truck.leadDays)));
    const demand = betweenDays(offsets, needed).map((count, t) => {
      const [net, on] = [Math.max(0, count - owned), dates[t] ?? site.book.today];
      if (net <= here || (t > 0 && on >= firstDelivery)) return net;
      short.push({ itemId, item, on, needed: net, there: here });
      return here;
    });
    const first = items.length;
    yards.forEach((yard, truck) => {
      if (yard.items.includes(itemId)) items.push(itemOf(site, view, yard, truck, itemId, hired.length > 1 ? demand.map(() => 0) : demand));
    });
    if (hired.length > 1) shared.push({ items: hired.map((_, index) => first + index), demand });
  }
  const trucks = yards.map(({ truck: { truckKg, tripCost } }): ReturnOrder["trucks"][number] => ({ truckKg, tripCost: tripCost * HUNDREDTHS, mostTrips: null }));
  return { ...view, short, order: { dates: dates.length - 1, trucks, items, shared } };
}

function itemOf(site: SiteNow, { settings, dates }: Omit<Outlook, "yards">, yard: Yard, truck: number, itemId: string, demand: readonly number[]): ReturnItem {
  const { book } = site;
  const lossPrice = yard.terms.rates.find((rate) => rate.itemId === itemId)?.lossPrice ?? 0;
  const basis: ChargeBasis = {
    versions: termsOf(book, yard.supplierId), standDowns: factsOf(docketsOf(book, yard.supplierId)).standDowns, dates, callOn: yard.callOn, mayCome: yard.mayCome, mayCollect: yard.mayCollect,
    lossADay: Math.round((lossPrice * HUNDREDTHS * settings.lossPercentMonth) / 100 / DAYS_A_MONTH),
  };
  const handling = settings.handling * HUNDREDTHS;
  const dockets = new Map(docketsOf(book, yard.supplierId).map((docket) => [docket.id, docket]));
  const lots = yard.hired.filter((row) => row.itemId === itemId).map(({ docketId, quantity, since }, index) => {
    const docket = dockets.get(docketId);
    return { id: `${docketId} ${index}`, count: quantity, charge: lotCharge(basis, itemId, { on: docket?.on ?? since, dispatchedOn: docket?.dispatchedOn ?? null }) };
  });
  return {
    id: itemId, truck, unitKg: pieceKg(site, settings, itemId) ?? 0, handlingIn: handling, handlingOut: handling, demand, lots,
    hireCharge: hireCharge(basis, itemId, addDays(book.today, yard.truck.leadDays)),
  };
}
