import "server-only";
import { lockCountInput, projectInput, settleCountInput } from "#lib/contracts/gear.ts";
import { brokenRule, conflict, notFound, ok, type Result } from "#lib/kernel/result.ts";
import { panelLife } from "#lib/trade/gear/panel-life.ts";
import { isSource, transfer, type Line } from "#lib/trade/gear/ledger.ts";
import { differenceOf, totalLoss } from "#lib/trade/gear/stocktake.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { clashOf } from "../../platform/db.ts";
import { projectHead } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { listCountedItems } from "../ledger/item-store.ts";
import { holdBalances, listPlaces, listStandings } from "../ledger/ledger-store.ts";
import { listOpenPlaces, projectPlaces } from "../ledger/place-store.ts";
import { postMovements } from "../ledger/post-movements.ts";
import { listPanels } from "../panels/panel-store.ts";
import { settleReserved } from "../reserved/settle-reserved.ts";
import { addCount, findCount, findCountLine, listCounts, settleLine } from "./count-store.ts";

/** What there is to count and where, and the counts that were locked. */
export const getCounts = projectUseCase("gear.getCounts", "gear.read", projectInput, async (scope) => {
  const counts = (await listCounts(scope)).map(({ lines, photos, lockedAt, by, place, ...count }) => {
    const own = lines.map(({ item, lossPrice, ...line }) => ({ ...line, lossPrice: lossPrice === null ? null : Number(lossPrice), item: item.family === "clamp set" ? (item.clampKind?.name ?? item.name) : item.name }));
    return { ...count, photos: photos.map(({ id, takenAt }) => ({ id, takenAt: takenAt.toISOString() })), lockedAt: lockedAt.toISOString(), by: by.name, place: place.name, lines: own, ...totalLoss(own) };
  });
  return ok({
    project: projectHead(await readProject(scope)), counts, items: await listCountedItems(scope), places: await listOpenPlaces(scope, scope.projectId),
    standings: (await listStandings(scope, scope.projectId)).filter(({ family }) => family !== "panel"), role: scope.member.role,
    panels: (await listPanels(scope, { projectId: scope.projectId })).filter((panel) => panelLife(panel, panel.events, panel.strippedAt).ended === null).map(({ itemId, name, placeId }) => ({ itemId, name, placeId })),
  });
});

type Counted = { readonly itemId: string; readonly counted: number };
const isSameCount = (a: readonly Counted[], b: readonly Counted[]): boolean => a.length === b.length && a.every(({ itemId, counted }) => b.some((line) => line.itemId === itemId && line.counted === counted));

/** Locks a count with name and time against what the ledger says at this moment. Counted again, it is another count; sent again because the answer was lost, it is answered again. */
export const lockCount = projectUseCase("gear.lockCount", "gear.count", lockCountInput, async (scope, { countId, placeId, lines }) => {
  const [place] = await listPlaces(scope, [placeId]);
  if (!place || isSource(place.kind) || (place.projectId !== null && place.projectId !== scope.projectId)) return notFound("place");
  const locked = await findCount(scope, countId);
  if (locked) {
    const isOwn = locked.byPersonId === scope.member.id && locked.placeId === placeId && isSameCount(locked.lines, lines);
    return isOwn ? ok({ countId, differences: locked.lines.filter(({ counted, expected }) => counted !== expected).length }) : brokenRule("count-locked-already");
  }
  const items = new Map<string, Priced>((await listCountedItems(scope)).map((item) => [item.id, item]));
  const single = await pricedPanels(scope, lines.filter(({ itemId }) => !items.has(itemId)).map(({ itemId }) => itemId));
  const twice = lines.find(({ itemId, counted }) => counted > 1 && single.has(itemId));
  if (twice) return brokenRule("panel-counted-twice", { panel: single.get(twice.itemId)?.name ?? "" });
  for (const [itemId, panel] of single) items.set(itemId, panel);
  if (lines.some(({ itemId }) => !items.has(itemId))) return notFound("gear item");
  const balances = new Map((await holdBalances(scope, lines.map(({ itemId }) => itemId), [placeId])).map(({ itemId, quantity }) => [itemId, quantity]));
  try {
    await addCount(scope, countId, placeId, lines.map(({ itemId, counted }) => ({
      itemId, counted, expected: balances.get(itemId) ?? 0, lossPrice: items.get(itemId)?.lossPrice ?? null, currency: items.get(itemId)?.currency ?? null,
    })));
    return ok({ countId, differences: lines.filter(({ itemId, counted }) => counted !== (balances.get(itemId) ?? 0)).length });
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("count-locked-already");
    throw error;
  }
});

type Priced = { readonly name: string; readonly lossPrice: number | null; readonly currency: string | null };
/** A panel is counted by its label. Lost, it costs what making it cost: sheet, labour, fillet and nails; no price where none was kept. */
async function pricedPanels(scope: ProjectScope, itemIds: readonly string[]): Promise<Map<string, Priced>> {
  const panels = itemIds.length === 0 ? [] : await listPanels(scope, { itemIds });
  return new Map(panels.map(({ itemId, name, sheetCost, labourCost, sundryCost, currency }) => {
    const made = sheetCost + labourCost + sundryCost;
    return [itemId, { name, lossPrice: made === 0 ? null : made, currency: made === 0 ? null : currency }] as const;
  }));
}

/** A panel that lies here although the ledger has it elsewhere comes from there; one that has ended comes from nowhere. */
async function panelLines(scope: ProjectScope, itemId: string, here: string): Promise<Result<readonly Line[]>> {
  const [panel] = await listPanels(scope, { itemIds: [itemId] });
  if (!panel || panel.placeId === null || panel.placeId === here) return conflict("count");
  const { ended } = panelLife(panel, panel.events, panel.strippedAt);
  if (ended) return brokenRule("panel-ended", { panel: panel.name, how: ended.kind });
  return ok(transfer(itemId, panel.placeId, here, 1));
}

/** Found after all, with where; or accepted: what is missing goes to lost, what is over comes from lost or becomes own stock. */
export const settleCount = projectUseCase("gear.settleCount", "gear.settle", settleCountInput, async (scope, { countId, itemId, as, reason }) => {
  const line = await findCountLine(scope, countId, itemId);
  if (!line) return notFound("count");
  const difference = differenceOf(line);
  if (difference === 0) return brokenRule("count-agrees", { item: line.item.name });
  let movementId: string | null = null;
  if (as === "accepted") {
    const places = await projectPlaces(scope);
    const [lost, own] = [places.find(({ kind }) => kind === "lost")?.id ?? "", places.find(({ kind }) => kind === "bought")?.id ?? ""];
    const [known] = await holdBalances(scope, [itemId], [lost]);
    const fromLost = Math.min(difference, known?.quantity ?? 0);
    const here = line.count.placeId;
    const brought = difference > 0 && line.item.family === "panel" ? await panelLines(scope, itemId, here) : null;
    if (brought && !brought.ok) return brought;
    const lines = brought ? brought.value : difference < 0 ? transfer(itemId, here, lost, -difference) : [...transfer(itemId, lost, here, fromLost), ...transfer(itemId, own, here, difference - fromLost)];
    const posted = await postMovements(scope, [{ kind: difference < 0 ? "lost" : "found", projectId: scope.projectId, happenedAt: scope.now, reason, lines }]);
    if (!posted.ok) return posted;
    movementId = posted.value[0] ?? null;
    if (line.item.family === "panel") await settleReserved(scope);
  }
  return (await settleLine(scope, countId, itemId, { as, reason, movementId })) ? ok(null) : conflict("count");
});
