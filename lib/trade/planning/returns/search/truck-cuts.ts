import type { Row, Term } from "../model/model-draft.ts";
import type { ItemColumns, ReturnModel } from "../model/return-model.ts";
import { onHand, type ReturnOrder } from "../return-order.ts";

/** A row every plan keeps and these values break, by `by` of a truck. */
export type Cut = { readonly row: Row; readonly by: number };

type Way = "delivered" | "taken";
type Span = { readonly truck: number; readonly truckKg: number; readonly trips: readonly number[]; readonly way: Way; readonly from: number; readonly to: number };
/** An item that must move at least `kg` between two dates, less `kgSpare` held over its need at the edge. */
type Move = { readonly columns: ItemColumns; readonly unitKg: number; readonly kg: number; readonly kgSpare: number; readonly edge: number; readonly need: number };
type Choice = { readonly moves: readonly Move[]; readonly trucks: number; readonly share: number; readonly by: number };

const LEAST_BREACH = 1e-3;

/**
 * Whole trucks. Over dates from…to, items that rise by K kg above what they need just before must be brought, save for what
 * is held early: W Σ trips + Σ kg (held early) >= K. With f the part of a truck left over in K / W this tightens, by mixed
 * integer rounding, to Σ trips + Σ kg (held early) / (W f) >= ⌈K / W⌉; the trips of a date may be replaced by the kg moved on
 * it / (W f). Likewise for what must go back. Source: Nemhauser and Wolsey, Integer and Combinatorial Optimization (1988),
 * II.1.7 (the rounding) and II.6.4 (lot sizing); from memory.
 */
export function truckCuts(order: ReturnOrder, model: ReturnModel, values: Float64Array, longest: number): Cut[] {
  const cuts: Cut[] = [];
  order.trucks.forEach(({ truckKg }, truck) => {
    for (const way of ["delivered", "taken"] as const) {
      for (let from = 0; from <= order.dates; from += 1) {
        for (let to = from; to <= Math.min(order.dates, from + longest - 1); to += 1) {
          const span: Span = { truck, truckKg, trips: model.trips[truck] ?? [], way, from, to };
          const choice = worstChoice(span, values, movesBetween(order, model, values, span));
          if (choice) cuts.push({ row: cutRow(span, values, choice), by: choice.by });
        }
      }
    }
  });
  return cuts.sort((a, b) => b.by - a.by);
}

/** What is needed on site from date t: exactly what is there before the first, and nothing from the last. */
const needAt = (order: ReturnOrder, model: ReturnModel, index: number, t: number): number => {
  const item = order.items[index];
  return t < 0 ? (item ? onHand(item) : 0) : model.items[index]?.least[t] ?? 0;
};

function movesBetween(order: ReturnOrder, model: ReturnModel, values: Float64Array, { truck, way, from, to }: Span): Move[] {
  const [first, last, edge] = way === "delivered" ? [from, to, from - 1] : [from - 1, to - 1, to];
  return model.items.flatMap((columns, index): Move[] => {
    const unitKg = order.items[index]?.truck === truck ? order.items[index].unitKg : 0;
    if (unitKg === 0) return [];
    const need = needAt(order, model, index, edge);
    let peak = 0;
    for (let t = first; t <= last; t += 1) peak = Math.max(peak, needAt(order, model, index, t));
    if (peak <= need) return [];
    const stock = columns.stock[edge];
    return [{ columns, unitKg, kg: unitKg * (peak - need), kgSpare: stock === undefined ? 0 : unitKg * Math.max(0, (values[stock] ?? 0) - need), edge, need }];
  }).sort((a, b) => a.kgSpare * b.kg - b.kgSpare * a.kg);
}

/** Of the items, those least held over first, the number with which the row is broken most. */
function worstChoice({ truckKg, trips, way, from, to }: Span, values: Float64Array, moves: readonly Move[]): Choice | null {
  const moved = new Float64Array(to - from + 1);
  let [kg, kgSpare] = [0, 0];
  let worst: Choice | null = null;
  moves.forEach((move, index) => {
    kg += move.kg;
    kgSpare += move.kgSpare;
    for (let t = from; t <= to; t += 1) moved[t - from] = (moved[t - from] ?? 0) + move.unitKg * (values[move.columns[way][t] ?? -1] ?? 0);
    const trucks = Math.ceil(kg / truckKg);
    const share = kg / truckKg - trucks + 1;
    if (share < 0.01) return;
    let reached = kgSpare / (truckKg * share);
    for (let t = from; t <= to; t += 1) reached += Math.min(values[trips[t] ?? -1] ?? 0, (moved[t - from] ?? 0) / (truckKg * share));
    if (trucks - reached > (worst?.by ?? LEAST_BREACH)) worst = { moves: moves.slice(0, index + 1), trucks, share, by: trucks - reached };
  });
  return worst;
}

function cutRow({ truckKg, trips, way, from, to }: Span, values: Float64Array, { moves, trucks, share }: Choice): Row {
  const scale = truckKg * share;
  const terms: Term[] = [];
  let lower = trucks;
  for (let t = from; t <= to; t += 1) {
    const moved = moves.flatMap(({ columns, unitKg }): Term[] => {
      const column = columns[way][t];
      return column === undefined ? [] : [[column, unitKg / scale]];
    });
    const trip = trips[t] ?? -1;
    const kgShare = moved.reduce((sum, [column, factor]) => sum + factor * (values[column] ?? 0), 0);
    terms.push(...((values[trip] ?? 0) <= kgShare ? [[trip, 1] as const] : moved));
  }
  for (const { columns, unitKg, edge, need } of moves) {
    const stock = columns.stock[edge];
    if (stock === undefined) continue;
    terms.push([stock, unitKg / scale]);
    lower += (unitKg / scale) * need;
  }
  // The solver keeps rows to a tolerance: by as much the row is let go.
  return { lower: lower - 1e-7 * Math.max(1, lower), upper: Infinity, terms };
}
