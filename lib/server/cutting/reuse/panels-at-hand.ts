import "server-only";
import { FACE_LETTERS, type FaceLetter } from "#lib/contracts/gear.ts";
import type { CuttingRule } from "#lib/contracts/planning/cutting.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import { panelLife } from "#lib/trade/gear/panel-life.ts";
import { SAME_PLY_MM } from "#lib/trade/gear/panel-rests.ts";
import type { Reserved } from "#lib/trade/gear/reserved.ts";
import type { ReusePanel } from "#lib/trade/planning/reuse/reuse-order.ts";
import { wholeWidth } from "#lib/trade/planning/whole-sizes.ts";
import type { PanelRow } from "../../gear/panels/panel-store.ts";
import type { ReuseDays } from "./reuse-days.ts";
import type { ComingLift } from "./reuse-store.ts";

export const SITE = "site";
export const YARD = "yard";
const GONE = new Set(["lost", "scrapped"]);

type Known = { readonly lifts: readonly ComingLift[]; readonly days: ReuseDays; readonly rule: CuttingRule; readonly columnsOfSet: ReadonlyMap<string, readonly string[]>; readonly thicknessMm: number };

/**
 * The panels that can still serve, each from the day it is back from the column it stands on and from those its set is
 * assigned to; one on a column nobody knows the end of stays out. Panels of one set stand together, so that where several
 * are alike the set stays together.
 */
export function panelsAtHand(rows: readonly PanelRow[], { lifts, days, rule, columnsOfSet, thicknessMm: ply }: Known): ReusePanel[] {
  const liftOf = new Map(lifts.map((lift) => [lift.id, lift]));
  const together = [...rows].sort((a, b) => naturalOrder(a.set ?? "~", b.set ?? "~") || (a.face ?? "").localeCompare(b.face ?? "") || naturalOrder(a.name, b.name));
  return together.flatMap((row): ReusePanel[] => {
    const life = panelLife(row, row.events, row.strippedAt);
    if (life.ended || life.demoted || life.damaged || row.placeId === null || GONE.has(row.placeKind ?? "")) return [];
    const before = [...new Set([...(row.columnId === null ? [] : [row.columnId]), ...(row.setId === null ? [] : columnsOfSet.get(row.setId) ?? [])])];
    const backDays = before.map((columnId) => { const lift = liftOf.get(columnId); return lift ? days.spanOf(lift)?.backDay ?? null : null; });
    if (backDays.includes(null)) return [];
    const faces = row.filmFaces > 1 && life.turnedAt === null ? 2 : 1;
    const usesLeft = Math.max(0, faces * rule.panelUses - life.usesOfFace - before.length);
    const [widthMm, heightMm, thicknessMm] = [wholeWidth(row.widthMm), Math.floor(row.heightMm), Math.abs(row.thicknessMm - ply) <= SAME_PLY_MM ? ply : Math.round(row.thicknessMm)];
    return [{ id: row.itemId, widthMm, heightMm, thicknessMm, readyDay: Math.max(0, ...backDays.map((day) => day ?? 0)), usesLeft, place: row.placeProjectId === null ? YARD : SITE, ...(row.setId === null ? {} : { set: row.setId }) }];
  });
}

export const faceKey = (columnId: string, face: string): string => `${columnId} ${face}`;
export function faceOf(key: string): { readonly columnId: string; readonly face: FaceLetter } {
  const [columnId = "", letter] = key.split(" ");
  const face = FACE_LETTERS.find((each) => each === letter);
  if (face === undefined) throw new RangeError(`No face: ${key}`);
  return { columnId, face };
}

/**
 * What accepted lines yield: the panel that comes off a face which is spoken for and that nobody has spoken for after it,
 * on the day its column gives it back.
 */
export function yieldsOf(lines: readonly Reserved[], free: readonly ReusePanel[], { lifts, days, rule, thicknessMm }: Known): ReusePanel[] {
  const byFace = new Map(lines.map((line) => [faceKey(line.columnId, line.face), line]));
  const liftOf = new Map(lifts.map((lift) => [lift.id, lift]));
  const followed = new Set(lines.flatMap(({ afterColumnId, afterFace }) => (afterColumnId && afterFace ? [faceKey(afterColumnId, afterFace)] : [])));
  // A panel of a set that is assigned has that column counted already.
  const usesBefore = (line: Reserved, links: number): number => {
    const earlier = line.itemId === null && line.afterColumnId && line.afterFace ? byFace.get(faceKey(line.afterColumnId, line.afterFace)) : undefined;
    if (earlier && links <= lines.length) return usesBefore(earlier, links + 1);
    return (free.find(({ id }) => id === line.itemId)?.usesLeft ?? rule.panelUses) - links;
  };
  return lines.flatMap((line): ReusePanel[] => {
    const lift = liftOf.get(line.columnId);
    const span = lift ? days.spanOf(lift) : null;
    const id = faceKey(line.columnId, line.face);
    if (!span || followed.has(id)) return [];
    return [{ id, widthMm: line.widthMm, heightMm: line.heightMm, thicknessMm, readyDay: span.backDay, usesLeft: Math.max(0, usesBefore(line, lift?.setId ? 0 : 1)), place: SITE, set: line.columnId }];
  });
}
