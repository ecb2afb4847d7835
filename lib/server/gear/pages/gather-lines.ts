import "server-only";
import { gatherLinesInput } from "#lib/contracts/gear.ts";
import { brokenRule, notFound, type Result } from "#lib/kernel/result.ts";
import { transfer } from "#lib/trade/gear/ledger.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { listPlaces } from "../ledger/ledger-store.ts";
import { postMovements } from "../ledger/post-movements.ts";
import { settleReserved } from "../reserved/settle-reserved.ts";
import { columnPlaces } from "../ticks/tick-store.ts";
import { listColumnsToStand } from "./gear-store.ts";

const TAKEN_FROM = ["rack", "cleaning bay", "truck", "yard"];

/**
 * Posts what a crew says it has gathered: on to the truck, or on to the columns it is for. A later tick on the column
 * takes only what is still missing there.
 */
export const gatherLines = projectUseCase("gear.gatherLines", "gear.move", gatherLinesInput, async (scope, { movementId, happenedAt, to, lines }): Promise<Result<readonly string[]>> => {
  const columnIds = [...new Set(lines.map(({ columnId }) => columnId))];
  const open = new Map((await listColumnsToStand(scope)).map((column) => [column.id, column]));
  if (columnIds.some((id) => !open.has(id))) return brokenRule("gather-column-stands");
  const places = await listPlaces(scope, [...new Set(lines.map(({ fromId }) => fromId)), ...(to.what === "truck" ? [to.truckId] : [])]);
  const kindOf = new Map(places.map(({ id, kind }) => [id, kind]));
  if (lines.some(({ fromId }) => !TAKEN_FROM.includes(kindOf.get(fromId) ?? ""))) return notFound("place");
  if (to.what === "truck" && kindOf.get(to.truckId) !== "truck") return notFound("truck");
  const atColumn = new Map(to.what === "truck" ? [] : (await columnPlaces(scope, columnIds)).map((place) => [place.columnId, place.id]));
  const target = (columnId: string): string => (to.what === "truck" ? to.truckId : (atColumn.get(columnId) ?? ""));
  const [only] = columnIds;
  const posted = await postMovements(scope, [{
    id: movementId, kind: "gathered", projectId: scope.projectId, columnId: to.what === "columns" && columnIds.length === 1 ? (only ?? null) : null, happenedAt,
    lines: lines.flatMap(({ itemId, fromId, columnId, quantity }) => transfer(itemId, fromId, target(columnId), quantity)),
  }]);
  if (posted.ok) await settleReserved(scope);
  return posted;
});
