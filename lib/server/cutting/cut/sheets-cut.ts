import "server-only";
import { materialKey, type Material } from "#lib/contracts/planning/orders.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import type { Line } from "#lib/trade/gear/ledger.ts";
import type { SheetLayout } from "#lib/trade/planning/sheets/sheet-order.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { listMaterials } from "../../gear/orders/material-store.ts";
import { itemsOf } from "../../gear/orders/materials.ts";
import type { CuttingTask } from "../cutting-task.ts";
import type { SawStock } from "./stock-taken.ts";

const usedOf = (layouts: readonly SheetLayout[], id: string): number => layouts.reduce((sum, { sheetId, count }) => sum + (sheetId === id ? count : 0), 0);
const asMaterial = (material: string, { lengthMm, widthMm }: { readonly lengthMm: number; readonly widthMm: number }): Material => ({ use: "sheet", material, lengthMm, widthMm });

/** An offcut the plan counts on more often than it is still there. */
export async function lostOffcut(scope: ProjectScope, { offcuts }: CuttingTask, layouts: readonly SheetLayout[]): Promise<{ length: number; width: number; there: number } | null> {
  for (const sheetId of new Set(layouts.flatMap((layout) => (layout.sheetId.startsWith("o") ? [layout.sheetId] : [])))) {
    const there = offcuts.sheets.find(({ itemId }) => sheetId === `o${itemId}`)?.quantity ?? 0;
    if (usedOf(layouts, sheetId) <= there) continue;
    const size = (await listMaterials(scope)).find(({ itemId }) => sheetId === `o${itemId}`);
    return { length: size?.lengthMm ?? 0, width: size?.widthMm ?? 0, there };
  }
  return null;
}

type SheetsTold = { readonly lines: readonly Line[]; /** Whole sheets the ledger does not know of. */ readonly unknown: number; /** Offcuts on to the rack. */ readonly kept: number };

/** Sheets and offcuts out of where they lie, and the offcuts worth keeping on to the rack by their size; the longer side along the grain or not, as it was cut. */
export async function sheetLines(scope: ProjectScope, { orders, ply, project, cuttingRule }: CuttingTask, layouts: readonly SheetLayout[], stock: SawStock): Promise<SheetsTold> {
  const { longMm, shortMm } = orders.sheets.keepFrom;
  const kept = layouts.flatMap(({ offcuts, count }) => offcuts.filter(({ w, h }) => Math.max(w, h) >= longMm && Math.min(w, h) >= shortMm).map(({ w, h }) => ({ ...asMaterial(ply.label, { lengthMm: w, widthMm: h }), count })));
  const bought = (id: string): Material | null => {
    const row = cuttingRule.sheets.find((_, index) => id === `s${index}`);
    return row && row.onHand === null ? asMaterial(ply.label, row) : null;
  };
  const items = await itemsOf(scope, [...kept, ...layouts.flatMap(({ sheetId }) => bought(sheetId) ?? [])], project.units);
  const itemId = (material: Material): string => items.get(materialKey(material))?.itemId ?? "";
  const lines: Line[] = [];
  let unknown = 0;
  for (const { id } of orders.sheets.sheets) {
    const whole = bought(id);
    // A count entered by hand is no part of the ledger.
    if (usedOf(layouts, id) === 0 || (!whole && !id.startsWith("o"))) continue;
    const taken = stock.take(whole ? itemId(whole) : id.slice(1), usedOf(layouts, id));
    lines.push(...taken.lines);
    if (whole) unknown += taken.missing;
  }
  for (const [, same] of groupBy(kept, materialKey)) if (same[0]) lines.push(...stock.toRack(itemId(same[0]), same.reduce((sum, { count }) => sum + count, 0)));
  return { lines, unknown, kept: kept.reduce((sum, { count }) => sum + count, 0) };
}
