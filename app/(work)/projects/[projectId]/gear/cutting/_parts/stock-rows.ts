import type { CuttingPlan } from "#lib/server/cutting/plan-cutting.ts";
import type { StockRow } from "./to-buy.tsx";

type Layouts = readonly { readonly count: number }[];
const counted = (layouts: Layouts): number => layouts.reduce((sum, { count }) => sum + count, 0);

/** Every stock the plan uses, ply first. */
export function stockRows({ task: { cuttingRule, orders, offcuts, ply }, sheets, timbers }: CuttingPlan, size: (valueMm: number) => string): StockRow[] {
  const plyRows = cuttingRule.sheets.map(({ lengthMm, widthMm, price, onHand }, index) => {
    const key = `s${index}`;
    const layouts = sheets.ok ? sheets.value.layouts.filter(({ sheetId }) => sheetId === key) : [];
    return row(key, `${ply.label}, ${size(lengthMm)} × ${size(widthMm)}`, counted(layouts), price, onHand);
  });
  const offcutRows = offcuts.sheets.map(({ itemId, lengthMm, widthMm, quantity }) => {
    const key = `o${itemId}`;
    const layouts = sheets.ok ? sheets.value.layouts.filter(({ sheetId }) => sheetId === key) : [];
    return row(key, `Offcut, ${size(lengthMm)} × ${size(widthMm)}`, counted(layouts), 0, quantity);
  });
  const timberRows = timbers.flatMap(({ use, material, plan }) =>
    (orders.timbers.find((timber) => timber.use === use)?.order.stock ?? []).map(({ id, lengthMm, quantity, cost, isTrimmed = false }) => {
      const layouts = plan.ok ? plan.value.layouts.filter(({ stockId }) => stockId === id) : [];
      return row(id, `${material}${isTrimmed ? ", offcut" : ""}, ${size(lengthMm)}`, counted(layouts), cost, quantity);
    }));
  return [...plyRows, ...offcutRows, ...timberRows].filter(({ count }) => count > 0);
}

const row = (key: string, what: string, count: number, each: number, onHand: number | null): StockRow => ({ key, what, count, fromRack: onHand !== null, each, sum: count * each });
