import "server-only";
import { TIMBER_USES, type CuttingRule, type TimberUse } from "#lib/contracts/planning/cutting.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { listStandings } from "../../gear/ledger/ledger-store.ts";
import { listMaterials, type MaterialItem } from "../../gear/orders/material-store.ts";
import type { MaterialNames } from "../material-names.ts";

/** A size that is not bought and lies on site: what was left of a sheet or a length before, or came from elsewhere. */
export type RackOffcut = { readonly itemId: string; readonly lengthMm: number; readonly quantity: number };
export type SheetOffcut = RackOffcut & { readonly widthMm: number };
export type RackOffcuts = { readonly sheets: readonly SheetOffcut[]; readonly timbers: Readonly<Record<TimberUse, readonly RackOffcut[]>> };

const LIES_AT = new Set(["rack", "cleaning bay", "truck", "yard"]);
/** More sizes would slow the plan down for pieces that hardly yield anything; the largest are offered. */
const MOST_SIZES = 15;

export async function listRackOffcuts(scope: ProjectScope, rule: CuttingRule, names: MaterialNames): Promise<RackOffcuts> {
  const materials = await listMaterials(scope);
  const standings = materials.length === 0 ? [] : (await listStandings(scope, scope.projectId)).filter(({ kind, quantity }) => quantity > 0 && LIES_AT.has(kind));
  const lying = (own: readonly MaterialItem[]) => own.flatMap(({ itemId, lengthMm, widthMm }) => {
    const quantity = standings.reduce((sum, at) => sum + (at.itemId === itemId ? at.quantity : 0), 0);
    return quantity === 0 ? [] : [{ itemId, lengthMm, widthMm: widthMm ?? 0, quantity }];
  });
  const called = (use: MaterialItem["use"], name: string | null) => materials.filter((each) => each.use === use && each.material.toLowerCase() === name?.toLowerCase());
  const boughtSheets = new Set(rule.sheets.filter(({ onHand }) => onHand === null).map(({ lengthMm, widthMm }) => `${lengthMm} ${widthMm}`));
  const sheets = lying(called("sheet", names.ply).filter(({ lengthMm, widthMm }) => !boughtSheets.has(`${lengthMm} ${widthMm}`)));
  const timbersOf = (use: TimberUse): RackOffcut[] => {
    const bought = new Set(rule.timbers.flatMap((row) => (row.use === use && row.onHand === null ? [row.lengthMm] : [])));
    return lying(called(use, names[use]).filter(({ lengthMm }) => !bought.has(lengthMm))).sort((a, b) => b.lengthMm - a.lengthMm).slice(0, MOST_SIZES);
  };
  return {
    sheets: sheets.sort((a, b) => b.lengthMm * b.widthMm - a.lengthMm * a.widthMm).slice(0, MOST_SIZES),
    timbers: Object.fromEntries(TIMBER_USES.map((use) => [use, timbersOf(use)])) as Record<TimberUse, RackOffcut[]>,
  };
}
