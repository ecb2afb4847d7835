import "server-only";
import { WIDTH_TOLERANCE_MM } from "#lib/trade/gear/set-fit.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { bindReserved, listReserved } from "./reserved-store.ts";
import { settleReserved } from "./settle-reserved.ts";

type Made = { readonly itemId: string; readonly widthMm: number; readonly heightMm: number };

/** Panels just made go to the faces that wait for new ones of that size, the lowest level first. */
export async function bindMade(scope: ProjectScope, made: readonly Made[]): Promise<void> {
  const free = [...made];
  const waiting = (await listReserved(scope)).filter(({ source, itemId }) => source === "new" && itemId === null);
  for (const { id, widthMm, heightMm } of waiting) {
    const at = free.findIndex((panel) => Math.abs(panel.widthMm - widthMm) <= WIDTH_TOLERANCE_MM && Math.abs(panel.heightMm - heightMm) <= WIDTH_TOLERANCE_MM);
    const [panel] = at >= 0 ? free.splice(at, 1) : [];
    if (panel) await bindReserved(scope, { id, itemId: panel.itemId });
  }
  if (free.length < made.length) await settleReserved(scope);
}
