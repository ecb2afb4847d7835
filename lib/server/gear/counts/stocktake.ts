import "server-only";
import { lockCountInput, projectInput, settleCountInput } from "#lib/contracts/gear.ts";
import { brokenRule, conflict, notFound, ok } from "#lib/kernel/result.ts";
import { isSource, transfer } from "#lib/trade/gear/ledger.ts";
import { differenceOf, totalLoss } from "#lib/trade/gear/stocktake.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { clashOf } from "../../platform/db.ts";
import { projectHead } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { listCountedItems } from "../ledger/item-store.ts";
import { holdBalances, listPlaces, listStandings } from "../ledger/ledger-store.ts";
import { listOpenPlaces, projectPlaces } from "../ledger/place-store.ts";
import { postMovements } from "../ledger/post-movements.ts";
import { addCount, findCountLine, listCounts, settleLine } from "./count-store.ts";

/** What there is to count and where, and the counts that were locked. */
export const getCounts = projectUseCase("gear.getCounts", "gear.read", projectInput, async (scope) => {
  const counts = (await listCounts(scope)).map(({ lines, lockedAt, by, place, ...count }) => {
    const own = lines.map(({ item, lossPrice, ...line }) => ({ ...line, lossPrice: lossPrice === null ? null : Number(lossPrice), item: item.family === "clamp set" ? (item.clampKind?.name ?? item.name) : item.name }));
    return { ...count, lockedAt: lockedAt.toISOString(), by: by.name, place: place.name, lines: own, ...totalLoss(own) };
  });
  return ok({
    project: projectHead(await readProject(scope)), counts, items: await listCountedItems(scope), places: await listOpenPlaces(scope, scope.projectId),
    standings: (await listStandings(scope, scope.projectId)).filter(({ family }) => family !== "panel"), role: scope.member.role,
  });
});

/** Locks a count with name and time against what the ledger says at this moment. Counted again, it is another count. */
export const lockCount = projectUseCase("gear.lockCount", "gear.count", lockCountInput, async (scope, { countId, placeId, lines }) => {
  const [place] = await listPlaces(scope, [placeId]);
  if (!place || isSource(place.kind) || (place.projectId !== null && place.projectId !== scope.projectId)) return notFound("place");
  const items = new Map((await listCountedItems(scope)).map((item) => [item.id, item]));
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
    const lines = difference < 0 ? transfer(itemId, here, lost, -difference) : [...transfer(itemId, lost, here, fromLost), ...transfer(itemId, own, here, difference - fromLost)];
    const posted = await postMovements(scope, [{ kind: difference < 0 ? "lost" : "found", projectId: scope.projectId, happenedAt: scope.now, reason, lines }]);
    if (!posted.ok) return posted;
    movementId = posted.value[0] ?? null;
  }
  return (await settleLine(scope, countId, itemId, { as, reason, movementId })) ? ok(null) : conflict("count");
});
