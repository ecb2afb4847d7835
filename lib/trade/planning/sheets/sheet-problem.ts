import { groupBy } from "#lib/kernel/group-by.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import type { Pattern } from "../patterns/cutting-problem.ts";
import type { Piece, Shape } from "./filling/piece.ts";
import type { SheetOrder } from "./sheet-order.ts";

export type SheetPattern = Pattern & { readonly piece: Piece };

/** The order in the form the search works on: parts and sheets grown by one kerf, so that parts pack without gaps; equal parts merged; largest first. */
export type SheetProblem = {
  readonly mostStages: number;
  readonly demand: readonly number[];
  readonly areas: readonly number[];
  readonly shapes: readonly Shape[];
  readonly partsOf: readonly (readonly { readonly id: string; readonly quantity: number }[])[];
  readonly stock: readonly { readonly id: string; readonly w: number; readonly h: number; readonly cost: number; readonly supply: number | null }[];
};

export function sheetProblem(order: SheetOrder): SheetProblem {
  const { kerfMm: kerf } = order;
  const wanted = order.parts.filter((part) => part.quantity > 0).map((part) => {
    const flip = part.mayTurn && part.heightMm > part.widthMm;
    const [w, h] = flip ? [part.heightMm + kerf, part.widthMm + kerf] : [part.widthMm + kerf, part.heightMm + kerf];
    return { id: part.id, quantity: part.quantity, flip, mayTurn: part.mayTurn, w, h };
  });
  const types = [...groupBy(wanted, (part) => `${part.w}x${part.h} ${part.mayTurn && part.w !== part.h} ${part.flip}`).values()]
    .flatMap((parts) => { const first = parts[0]; return first ? [{ ...first, parts }] : []; })
    .sort((a, b) => b.w * b.h - a.w * a.h || b.w - a.w || naturalOrder(a.id, b.id));
  return {
    mostStages: order.mostStages ?? Infinity,
    demand: types.map((type) => type.parts.reduce((sum, part) => sum + part.quantity, 0)),
    areas: types.map((type) => type.w * type.h),
    shapes: types.flatMap(({ w, h, mayTurn, flip }, type) => [{ type, turned: flip, w, h }, ...(mayTurn && w !== h ? [{ type, turned: !flip, w: h, h: w }] : [])]),
    partsOf: types.map((type) => [...type.parts].sort((a, b) => naturalOrder(a.id, b.id))),
    stock: order.sheets
      .filter((sheet) => sheet.quantity !== 0)
      .map((sheet) => ({ id: sheet.id, w: sheet.widthMm - 2 * sheet.trimMm + kerf, h: sheet.heightMm - 2 * sheet.trimMm + kerf, cost: sheet.cost, supply: sheet.quantity }))
      .sort((a, b) => a.w * a.h - b.w * b.h || a.cost - b.cost || naturalOrder(a.id, b.id)),
  };
}
