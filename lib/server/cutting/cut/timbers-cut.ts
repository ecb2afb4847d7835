import "server-only";
import type { TimberUse } from "#lib/contracts/planning/cutting.ts";
import { materialKey, type Material } from "#lib/contracts/planning/orders.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import { brokenRule, type Fail, type Failure } from "#lib/kernel/result.ts";
import type { Line } from "#lib/trade/gear/ledger.ts";
import { checkTimberPlan } from "#lib/trade/planning/timber/check-timber-plan.ts";
import type { TimberLayout, TimberOrder } from "#lib/trade/planning/timber/timber-order.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { listMaterials } from "../../gear/orders/material-store.ts";
import { itemsOf } from "../../gear/orders/materials.ts";
import type { CuttingTask } from "../cutting-task.ts";
import type { SawStock } from "./stock-taken.ts";

/** The timbers of one use as their plan was shown. */
export type CutTimbers = { readonly use: TimberUse; readonly layouts: readonly TimberLayout[] };
/** What became of them: lengths out of the ledger, lengths it did not know of, offcuts on to the rack. */
export type TimbersTold = { readonly use: TimberUse; readonly lengths: number; readonly unknown: number; readonly kept: number };

const usedOf = (layouts: readonly TimberLayout[], stockId: string): number => layouts.reduce((sum, layout) => sum + (layout.stockId === stockId ? layout.count : 0), 0);

/** Holds the timbers as they were shown against what is there now. */
export async function objectionToTimbers(scope: ProjectScope, task: CuttingTask, cut: readonly CutTimbers[]): Promise<Fail<Failure> | null> {
  const changed = brokenRule("cutting-plan-changed", { level: task.level?.name ?? "a level" });
  for (const { use, layouts } of cut) {
    const order = orderOf(task, use);
    if (!order) return changed;
    for (const stockId of new Set(layouts.flatMap((layout) => (layout.stockId.startsWith("o") ? [layout.stockId] : [])))) {
      const there = order.stock.find(({ id }) => id === stockId)?.quantity ?? 0;
      if (usedOf(layouts, stockId) > there) return brokenRule("timber-offcut-used-already", { item: (await listMaterials(scope)).find(({ itemId }) => stockId === `o${itemId}`)?.name ?? "of this length", there });
    }
    const cost = order.stock.reduce((sum, { id, cost: each }) => sum + each * usedOf(layouts, id), 0);
    const wasteMm = layouts.reduce((sum, { count, offcutMm, kept }) => sum + (kept ? 0 : count * offcutMm), 0);
    if (checkTimberPlan(order, { layouts, cost, bound: 0, gap: 0, proven: false, wasteMm }).length > 0) return changed;
  }
  return null;
}

const orderOf = ({ orders }: CuttingTask, use: TimberUse): TimberOrder | undefined => orders.timbers.find((timber) => timber.use === use)?.order;

/** Lengths out of where they lie, as many as the ledger knows, and the offcuts worth keeping on to the rack by their length. */
export async function timberLines(scope: ProjectScope, task: CuttingTask, cut: readonly CutTimbers[], stock: SawStock): Promise<{ readonly lines: readonly Line[]; readonly told: readonly TimbersTold[] }> {
  const material = (use: TimberUse, lengthMm: number): Material => ({ use, material: task.orders.timbers.find((timber) => timber.use === use)?.material ?? "", lengthMm, widthMm: null });
  const boughtLength = (stockId: string): number | null => {
    const row = task.cuttingRule.timbers.find((_, index) => stockId === `t${index}`);
    return row && row.onHand === null ? row.lengthMm : null;
  };
  const wanted = cut.flatMap(({ use, layouts }) => layouts.flatMap(({ stockId, offcutMm, kept }) => [boughtLength(stockId), kept ? offcutMm : null].flatMap((lengthMm) => (lengthMm === null ? [] : [material(use, lengthMm)]))));
  const items = await itemsOf(scope, wanted, task.project.units);
  const itemId = (use: TimberUse, lengthMm: number): string => items.get(materialKey(material(use, lengthMm)))?.itemId ?? "";
  const lines: Line[] = [];
  const told = cut.map(({ use, layouts }): TimbersTold => {
    let [lengths, unknown] = [0, 0];
    for (const [stockId, same] of groupBy(layouts, (layout) => layout.stockId)) {
      const bought = boughtLength(stockId);
      // A count entered by hand is no part of the ledger.
      if (bought === null && !stockId.startsWith("o")) continue;
      const pieces = same.reduce((sum, { count }) => sum + count, 0);
      const taken = stock.take(bought === null ? stockId.slice(1) : itemId(use, bought), pieces);
      lines.push(...taken.lines);
      lengths += pieces - taken.missing;
      unknown += taken.missing;
    }
    const kept = layouts.filter((layout) => layout.kept);
    for (const [lengthMm, same] of groupBy(kept, ({ offcutMm }) => offcutMm)) lines.push(...stock.toRack(itemId(use, lengthMm), same.reduce((sum, { count }) => sum + count, 0)));
    return { use, lengths, unknown, kept: kept.reduce((sum, { count }) => sum + count, 0) };
  });
  return { lines, told };
}
