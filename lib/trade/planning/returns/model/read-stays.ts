import type { ItemColumns, ReturnModel } from "./return-model.ts";
import type { PricedStays, ReturnOrder, Stay } from "../return-order.ts";

/** The stays a solution of the model stands for; of units only counted the oldest go back first. */
export function readStays(order: ReturnOrder, model: ReturnModel, values: Float64Array): Stay[] {
  const at = (column: number | undefined): number => Math.round(values[column ?? -1] ?? 0);
  return model.items.flatMap((columns, item) => [
    ...columns.lots.flatMap(({ id, ends }) => ends.map(({ to, column }): Stay => ({ item, lot: id, from: 0, to, count: at(column) }))),
    ...newStays(columns, item, order.dates, at),
  ]).filter(({ count }) => count > 0);
}

function newStays({ newHire, delivered }: ItemColumns, item: number, dates: number, at: (column: number | undefined) => number): Stay[] {
  if (!newHire) return [];
  if (newHire.kind === "spans") return newHire.spans.map(({ from, to, column }) => ({ item, lot: null, from, to, count: at(column) }));
  const held: { lot: string | null; from: number; count: number }[] = newHire.counted.first.map(({ id, count }) => ({ lot: id, from: 0, count }));
  const stays: Stay[] = [];
  for (let to = 0; to <= dates; to += 1) {
    let leaving = at(newHire.counted.leaving[to]);
    for (const batch of held) {
      const count = Math.min(leaving, batch.count);
      if (count > 0) stays.push({ item, lot: batch.lot, from: batch.from, to, count });
      batch.count -= count;
      leaving -= count;
    }
    held.push({ lot: null, from: to, count: at(delivered[to]) });
  }
  return stays;
}

/** The other way round: the value of every column of the model under these stays. */
export function columnValues(model: ReturnModel, { stays, trips }: PricedStays): Float64Array {
  const values = new Float64Array(model.drafted.cost.length);
  const add = (column: number | undefined, count: number) => { if (column !== undefined) values[column] = (values[column] ?? 0) + count; };
  model.trips.forEach((columns, truck) => columns.forEach((column, t) => add(column, trips[truck]?.[t] ?? 0)));
  model.items.forEach((columns, index) => addItem(columns, stays.filter((stay) => stay.item === index), add));
  return values;
}

function addItem(columns: ItemColumns, stays: readonly Stay[], add: (column: number | undefined, count: number) => void): void {
  const counted = columns.newHire?.kind === "counted" ? columns.newHire.counted : null;
  const own = counted !== null && counted.stock !== columns.stock;
  for (const { lot, from, to, count } of stays) {
    for (let t = from; t < to; t += 1) add(columns.stock[t], count);
    add(columns.taken[to], count);
    const first = counted?.first.find(({ id }) => id === lot);
    if (lot !== null && !first) {
      add(columns.lots.find(({ id }) => id === lot)?.ends.find((end) => end.to === to)?.column, count);
      continue;
    }
    add(first ? first.column : columns.delivered[from], count);
    if (columns.newHire?.kind === "spans") add(columns.newHire.spans.find((span) => span.from === from && span.to === to)?.column, count);
    if (counted === null) continue;
    if (own) {
      for (let t = from; t < to; t += 1) add(counted.stock[t], count);
      add(counted.leaving[to], count);
    }
    for (let t = from; t < Math.max(to, first?.leastEnd ?? counted.rates.leastEnd[from] ?? 0); t += 1) if (counted.charged[t] !== counted.stock[t]) add(counted.charged[t], count);
  }
}
