import "server-only";
import type { CuttingRule } from "#lib/contracts/planning/cutting.ts";
import { panelLife } from "#lib/trade/gear/panel-life.ts";
import type { ReusePanel } from "#lib/trade/planning/reuse/reuse-order.ts";
import type { PanelRow } from "../../gear/panels/panel-store.ts";
import type { ReuseDays } from "./reuse-days.ts";
import type { ComingLift } from "./reuse-store.ts";

export const SITE = "site";
export const YARD = "yard";
const GONE = new Set(["lost", "scrapped"]);

/** The panels that can still serve, each from the day it is back; one on a column nobody knows the end of stays out. */
export function panelsAtHand(rows: readonly PanelRow[], lifts: readonly ComingLift[], days: ReuseDays, { panelUses }: CuttingRule): ReusePanel[] {
  const liftOf = new Map(lifts.map((lift) => [lift.id, lift]));
  return rows.flatMap((row): ReusePanel[] => {
    const life = panelLife(row, row.events, row.strippedAt);
    if (life.ended || life.demoted || row.placeId === null || GONE.has(row.placeKind ?? "")) return [];
    const on = row.columnId === null ? undefined : liftOf.get(row.columnId);
    const readyDay = row.columnId === null ? 0 : (on && days.spanOf(on)?.backDay) ?? null;
    if (readyDay === null) return [];
    const faces = row.filmFaces > 1 && life.turnedAt === null ? 2 : 1;
    const usesLeft = Math.max(0, faces * panelUses - life.usesOfFace - (on ? 1 : 0));
    const [widthMm, heightMm, thicknessMm] = [Math.floor(row.widthMm), Math.floor(row.heightMm), Math.round(row.thicknessMm)];
    return [{ id: row.itemId, widthMm, heightMm, thicknessMm, readyDay, usesLeft, place: row.placeProjectId === null ? YARD : SITE }];
  });
}
