import type { AlikeLot } from "./alike-lots.ts";
import type { ModelDraft, Term } from "./model-draft.ts";
import type { PeriodRates } from "./period-rates.ts";
import type { ChargeByEnd } from "../return-order.ts";

type Span = { readonly from: number; readonly to: number; readonly column: number };

/** `first`: the lots counted with them, each with a column that holds its count. */
type Counted = { readonly first: readonly (AlikeLot & { readonly column: number })[]; readonly stock: readonly number[]; readonly leaving: readonly number[]; readonly charged: readonly number[]; readonly rates: PeriodRates };

/** Units hired from now on: by how many stay between two dates (`spans`), or only counted, the oldest going back first. `ending[t]`: the columns that leave on date t. */
export type NewHireColumns = { readonly ending: readonly (readonly number[])[] } & ({ readonly kind: "spans"; readonly spans: readonly Span[] } | { readonly kind: "counted"; readonly counted: Counted });

type Site = {
  readonly table: readonly ChargeByEnd[];
  readonly rates: PeriodRates | null;
  readonly alike: readonly AlikeLot[] | null;
  /** Whether all of the item is counted here. */
  readonly isAlone: boolean;
  readonly wanted: readonly number[];
  readonly most: number;
  readonly stock: readonly number[];
  readonly delivered: readonly number[];
  readonly taken: readonly number[];
};

export function newHireColumns(draft: ModelDraft, dates: number, site: Site): NewHireColumns {
  return site.rates ? countedHire(draft, dates, site, site.rates) : spannedHire(draft, dates, site);
}

/** Stock of the newly hired: without lots charged otherwise the item's own. */
function countedHire(draft: ModelDraft, dates: number, site: Site, rates: PeriodRates): NewHireColumns {
  const alone = site.isAlone;
  const first = (site.alike ?? []).map((lot) => ({ ...lot, column: draft.column(lot.fixed, lot.count, lot.count) }));
  const stock = alone ? site.stock : site.stock.map(() => draft.column(0, 0, site.most));
  const leaving = alone ? site.taken : site.taken.map(() => draft.column(0, 0, site.most));
  if (!alone) {
    leaving.forEach((out, t) => draft.row(0, 0, [[out, 1], ...term(stock[t], 1), ...term(stock[t - 1], -1), ...term(site.delivered[t], -1)]));
  }
  rates.fixed.forEach((fixed, from) => {
    const column = site.delivered[from] ?? 0;
    if (fixed === null) draft.forbid(column);
    else draft.charge(column, fixed);
  });
  const charged = rates.rate.map((rate, t) => {
    const now = stock[t] ?? 0;
    const young = site.delivered.flatMap((column, from): Term[] => (from <= t && t < (rates.leastEnd[from] ?? 0) ? [[column, -1]] : []));
    const bound = first.reduce((sum, lot) => sum + (t < lot.leastEnd ? lot.count : 0), 0);
    const isBound = young.length > 1 || bound > 0 || (rates.leastEnd[t] ?? 0) > t + 1;
    const paid = isBound && !rates.held ? draft.column(0, 0, Infinity) : now;
    draft.charge(paid, rate);
    if (paid !== now) draft.row(0, Infinity, [[paid, 1], [now, -1]]);
    if (isBound) draft.row(bound, Infinity, [[paid, 1], ...young]);
    return paid;
  });
  return { kind: "counted", counted: { first, stock, leaving, charged, rates }, ending: Array.from({ length: dates + 1 }, (_, t) => [leaving[t] ?? 0]) };
}

/** One column for each pair of dates between which there is a demand. */
function spannedHire(draft: ModelDraft, dates: number, site: Site): NewHireColumns {
  const spans: Span[] = [];
  for (let from = 0; from < dates; from += 1) {
    let most = 0;
    for (let to = from + 1; to <= dates; to += 1) {
      most = Math.max(most, site.wanted[to - 1] ?? 0);
      const cost = site.table[from]?.[to] ?? null;
      if (cost !== null && most > 0) spans.push({ from, to, column: draft.column(cost, 0, most) });
    }
  }
  const those = (fits: (span: Span) => boolean): number[] => spans.filter(fits).map(({ column }) => column);
  site.delivered.forEach((column, t) => draft.row(0, 0, [[column, 1], ...those(({ from }) => from === t).map((span): Term => [span, -1])]));
  const ending = Array.from({ length: dates + 1 }, (_, t) => those(({ to }) => to === t));
  if (site.isAlone) site.taken.forEach((column, t) => draft.row(0, 0, [[column, 1], ...(ending[t] ?? []).map((span): Term => [span, -1])]));
  return { kind: "spans", spans, ending };
}

const term = (column: number | undefined, factor: number): Term[] => (column === undefined ? [] : [[column, factor]]);
