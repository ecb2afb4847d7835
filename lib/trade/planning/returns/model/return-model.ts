import { type AlikeLot, alikeLots } from "./alike-lots.ts";
import { newHireColumns, type NewHireColumns } from "./new-hire-columns.ts";
import { type DraftedModel, type ModelDraft, startDraft, type Term } from "./model-draft.ts";
import { asPeriodRates, type PeriodRates } from "./period-rates.ts";
import { earliestEnd, onHand, type ReturnItem, type ReturnOrder } from "../return-order.ts";

/** The columns of one item: on site from date t up to the next, delivered and taken away on date t, and which units those are; `lots` only those not counted with the newly hired. */
export type ItemColumns = {
  readonly stock: readonly number[];
  readonly delivered: readonly number[];
  readonly taken: readonly number[];
  readonly lots: readonly { readonly id: string; readonly ends: readonly { readonly to: number; readonly column: number }[] }[];
  readonly newHire: NewHireColumns | null;
  /** What must be on site anyway: the demand, or more where lots may not go back yet. */
  readonly least: readonly number[];
};

/** `trips[truck][t]`: the column of a supplier's trips on date t. */
export type ReturnModel = { readonly drafted: DraftedModel; readonly trips: readonly (readonly number[])[]; readonly items: readonly ItemColumns[] };

/**
 * What is on site is what was, plus what comes, less what goes, and never under the demand; a supplier's truck carries so
 * much each way. Charges that run by the date are counted on the stock; others on every pair of dates between which a unit may stay.
 */
export function returnModel(order: ReturnOrder): ReturnModel {
  const draft = startDraft();
  const trips = order.trucks.map(({ tripCost, mostTrips }) => Array.from({ length: order.dates + 1 }, () => draft.column(tripCost, 0, mostTrips ?? Infinity)));
  const items = order.items.map((item, index) => itemColumns(draft, order.dates, item, order.shared.find((need) => need.items.includes(index))?.demand ?? item.demand));
  for (const { items: sharing, demand } of order.shared) demand.forEach((count, t) => draft.row(count, Infinity, sharing.flatMap((index) => term(items[index]?.stock[t], 1))));
  order.trucks.forEach(({ truckKg }, truck) => trips[truck]?.forEach((trip, t) => {
    for (const way of ["delivered", "taken"] as const) {
      const load = order.items.flatMap(({ unitKg, truck: of }, index): Term[] => (of === truck && unitKg > 0 ? term(items[index]?.[way][t], -unitKg) : []));
      if (load.length > 0) draft.row(0, Infinity, [[trip, truckKg], ...load]);
    }
  }));
  return { drafted: draft.finished(), trips, items };
}

/** `wanted`: the demand, shared or not, that the item may serve. */
function itemColumns(draft: ModelDraft, dates: number, item: ReturnItem, wanted: readonly number[]): ItemColumns {
  const least = item.demand.map((count, t) => Math.max(count, item.lots.reduce((sum, lot) => sum + (t < earliestEnd(lot) ? lot.count : 0), 0)));
  const most = Math.max(onHand(item), ...least, ...wanted);
  const delivered = item.hireCharge ? item.demand.map(() => draft.column(item.handlingIn, 0, most)) : [];
  const stock = least.map((count) => draft.column(0, count, most));
  const taken = Array.from({ length: dates + 1 }, () => draft.column(item.handlingOut, 0, most));
  taken.forEach((out, t) => {
    const [before, now, comes] = [stock[t - 1], stock[t], delivered[t]];
    const start = t === 0 ? onHand(item) : 0;
    draft.row(start, start, [[out, 1], ...term(now, 1), ...term(before, -1), ...term(comes, -1)]);
  });
  const { rates, alike } = chargedByDate(item, dates);
  const lots = (alike ? [] : item.lots).map((lot) => {
    const ends = lot.charge.flatMap((cost, to) => (cost === null ? [] : [{ to, column: draft.column(cost, 0, lot.count) }]));
    draft.row(lot.count, lot.count, ends.map(({ column }) => [column, 1]));
    return { id: lot.id, ends };
  });
  const newHire = item.hireCharge ? newHireColumns(draft, dates, { table: item.hireCharge, rates, alike, isAlone: lots.length === 0, most, wanted, stock, delivered, taken }) : null;
  if (lots.length > 0) {
    taken.forEach((out, t) => {
      const ofLots = lots.flatMap(({ ends }) => ends.filter(({ to }) => to === t).map(({ column }): Term => [column, -1]));
      draft.row(0, 0, [[out, 1], ...ofLots, ...(newHire?.ending[t] ?? []).map((column): Term => [column, -1])]);
    });
  }
  return { stock, delivered, taken, lots, newHire, least };
}

function chargedByDate({ hireCharge, lots }: ReturnItem, dates: number): { readonly rates: PeriodRates | null; readonly alike: readonly AlikeLot[] | null } {
  const together = hireCharge && asPeriodRates(hireCharge, dates, lots.map(({ charge }) => charge));
  const alike = together && alikeLots(lots, hireCharge, together);
  return alike ? { rates: together, alike } : { rates: hireCharge && asPeriodRates(hireCharge, dates), alike: null };
}

const term = (column: number | undefined, factor: number): Term[] => (column === undefined ? [] : [[column, factor]]);
