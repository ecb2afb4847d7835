import "server-only";
import { settleShortfallsInput } from "#lib/contracts/gear.ts";
import { brokenRule, conflict, notFound, ok } from "#lib/kernel/result.ts";
import { transfer } from "#lib/trade/gear/ledger.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { listPlaces } from "../ledger/ledger-store.ts";
import { postMovements } from "../ledger/post-movements.ts";
import { columnPlaces } from "../ticks/tick-store.ts";
import { listShortfalls, settleRows } from "./gear-store.ts";

/**
 * What was used is taken into the ledger, from where it came, at its column or, that one stripped, at the place given;
 * or it is dismissed with a reason. What had gone on can only be dismissed: it is where the ledger says.
 */
export const settleShortfalls = projectUseCase("gear.settleShortfalls", "gear.settle", settleShortfallsInput, async (scope, input) => {
  const rows = await listShortfalls(scope, input.shortfallIds);
  if (rows.length < new Set(input.shortfallIds).size) return conflict("discrepancy");
  const ids = rows.map(({ id }) => id);
  if (input.as === "dismissed") return ok({ settled: (await settleRows(scope, ids, { as: "dismissed", reason: input.reason, movementId: null })).count });
  const goneOn = rows.find(({ about, family }) => about === "gone on" || family === "panel");
  if (goneOn) return brokenRule("shortfall-only-dismissed", { item: goneOn.item });
  const places = await listPlaces(scope, [input.placeId, input.sourceId]);
  const source = places.find(({ id, kind }) => id === input.sourceId && (kind === "bought" || kind === "supplier"));
  if (!source || !places.some(({ id, kind }) => id === input.placeId && (kind === "rack" || kind === "cleaning bay"))) return notFound("place");
  const atColumn = new Map((await columnPlaces(scope, [...new Set(rows.map(({ columnId }) => columnId))])).map((place) => [place.columnId, place.id]));
  const lines = rows.flatMap(({ itemId, quantity, columnId, stripped }) => transfer(itemId, source.id, (stripped ? null : atColumn.get(columnId)) ?? input.placeId, quantity));
  const posted = await postMovements(scope, [{ kind: "settled", projectId: scope.projectId, happenedAt: input.happenedAt, reason: "Used, but was not in the ledger", lines }]);
  if (!posted.ok) return posted;
  return ok({ settled: (await settleRows(scope, ids, { as: "added", reason: null, movementId: posted.value[0] ?? null })).count });
});
