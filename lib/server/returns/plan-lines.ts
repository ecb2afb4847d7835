import type { Day } from "#lib/kernel/days.ts";
import type { PlanInput, PlanResult } from "./basis/plan-input.ts";

/** What a supplier's trucks bring or take on one date. */
export type PlanLine = {
  readonly supplierId: string; readonly supplier: string; readonly on: Day; readonly way: "take" | "bring"; readonly callOn: Day; readonly trips: number;
  readonly items: readonly { readonly itemId: string; readonly item: string; readonly quantity: number; readonly kg: number }[];
};

export function planLines({ order, dates, suppliers, need }: PlanInput, { stays, trips }: Pick<PlanResult, "stays" | "trips">): PlanLine[] {
  const nameOf = new Map(need.map(({ itemId, item }) => [itemId, item]));
  return dates.flatMap((on, t) => suppliers.flatMap(({ supplierId, supplier, callOn }, truck) => (["bring", "take"] as const).flatMap((way): PlanLine[] => {
    const items = order.items.flatMap(({ id, unitKg, truck: of }, index) => {
      if (of !== truck) return [];
      const quantity = stays.reduce((sum, stay) => sum + (stay.item === index && (way === "take" ? stay.to === t : stay.lot === null && stay.from === t) ? stay.count : 0), 0);
      return quantity > 0 ? [{ itemId: id, item: nameOf.get(id) ?? "", quantity, kg: quantity * unitKg }] : [];
    });
    return items.length > 0 ? [{ supplierId, supplier, on, way, callOn: callOn[t] ?? on, trips: trips[truck]?.[t] ?? 0, items }] : [];
  })));
}
