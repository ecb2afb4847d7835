import "server-only";
import type { CuttingRule } from "#lib/contracts/planning/cutting.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { listStandings } from "../../gear/ledger/ledger-store.ts";
import { listMaterials } from "../../gear/orders/material-store.ts";

/** A size of sheet that is not bought and lies on site: what was left of a sheet before, or came from elsewhere. */
export type RackOffcut = { readonly itemId: string; readonly lengthMm: number; readonly widthMm: number; readonly quantity: number; readonly at: readonly { readonly placeId: string; readonly quantity: number }[] };

const LIES_AT = ["rack", "cleaning bay", "truck", "yard"];
/** More sizes would slow the plan down for pieces that hardly yield a panel; the largest are offered. */
const MOST_SIZES = 15;

export async function listRackOffcuts(scope: ProjectScope, { sheets }: CuttingRule, ply: string): Promise<RackOffcut[]> {
  const bought = new Set(sheets.filter(({ onHand }) => onHand === null).map(({ lengthMm, widthMm }) => `${lengthMm} ${widthMm}`));
  const sizes = (await listMaterials(scope)).flatMap(({ use, material, itemId, lengthMm, widthMm }) =>
    use === "sheet" && widthMm !== null && material.toLowerCase() === ply.toLowerCase() && !bought.has(`${lengthMm} ${widthMm}`) ? [{ itemId, lengthMm, widthMm }] : []);
  const standings = sizes.length === 0 ? [] : await listStandings(scope, scope.projectId);
  const there = sizes.flatMap((size) => {
    const at = standings.filter(({ itemId, kind, quantity }) => itemId === size.itemId && quantity > 0 && LIES_AT.includes(kind))
      .sort((a, b) => LIES_AT.indexOf(a.kind) - LIES_AT.indexOf(b.kind)).map(({ placeId, quantity }) => ({ placeId, quantity }));
    return at.length === 0 ? [] : [{ ...size, at, quantity: at.reduce((sum, { quantity }) => sum + quantity, 0) }];
  });
  return there.sort((a, b) => b.lengthMm * b.widthMm - a.lengthMm * a.widthMm).slice(0, MOST_SIZES);
}
