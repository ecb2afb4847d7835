import "server-only";
import { gatherLinesInput } from "#lib/contracts/gear.ts";
import { brokenRule, conflict, fail, notFound, ok, type Result } from "#lib/kernel/result.ts";
import { gathered, transfer, type Line } from "#lib/trade/gear/ledger.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { findMovement, holdMovementId, listPlaces, type KnownMovement } from "../ledger/ledger-store.ts";
import { postMovements } from "../ledger/post-movements.ts";
import { settleReserved } from "../reserved/settle-reserved.ts";
import { columnPlaces } from "../ticks/tick-store.ts";
import { findGatheredByOthers, listColumnsToStand } from "./gear-store.ts";

const TAKEN_FROM = ["rack", "cleaning bay", "truck", "yard"];

/** `takenAt` is the server's instant: lists read later know of it. */
export type Gathered = { readonly movementId: string; readonly takenAt: string };

/**
 * Posts what a crew says it has gathered: on to the truck, or on to the columns it is for. A later tick on the column
 * takes only what is still missing there; what somebody else brought there since the list was read is not brought again. The same id twice moves once and gets the same answer, however late.
 */
export const gatherLines = projectUseCase("gear.gatherLines", "gear.move", gatherLinesInput, async (scope, { movementId, personId, happenedAt, readAt, to, lines }): Promise<Result<Gathered>> => {
  if (personId !== undefined && personId !== scope.member.id) return fail({ kind: "not-signed-in" });
  await holdMovementId(scope, movementId);
  const columnIds = [...new Set(lines.map(({ columnId }) => columnId))];
  const atColumn = new Map(to.what === "truck" ? [] : (await columnPlaces(scope, columnIds)).map((place) => [place.columnId, place.id]));
  const target = (columnId: string): string => (to.what === "truck" ? to.truckId : (atColumn.get(columnId) ?? ""));
  const moved = gathered(lines.flatMap(({ itemId, fromId, columnId, quantity }) => transfer(itemId, fromId, target(columnId), quantity)));
  const known = await findMovement(scope, movementId);
  if (known) return isSame(scope, known, moved) ? ok({ movementId, takenAt: known.arrivedAt }) : conflict("movement");
  const open = new Map((await listColumnsToStand(scope)).map((column) => [column.id, column]));
  if (columnIds.some((id) => !open.has(id))) return brokenRule("gather-column-stands");
  const places = await listPlaces(scope, [...new Set(lines.map(({ fromId }) => fromId)), ...(to.what === "truck" ? [to.truckId] : [])]);
  const kindOf = new Map(places.map(({ id, kind }) => [id, kind]));
  if (lines.some(({ fromId }) => !TAKEN_FROM.includes(kindOf.get(fromId) ?? ""))) return notFound("place");
  if (to.what === "truck" && kindOf.get(to.truckId) !== "truck") return notFound("truck");
  const gone = readAt === undefined || to.what === "truck" ? null : await findGatheredByOthers(scope, readAt, lines);
  if (gone) return brokenRule("gathered-by-another", gone);
  const [only] = columnIds;
  const posted = await postMovements(scope, [{
    id: movementId, kind: "gathered", projectId: scope.projectId, columnId: to.what === "columns" && columnIds.length === 1 ? (only ?? null) : null,
    happenedAt: notAhead(happenedAt, scope.now), lines: moved,
  }]);
  if (!posted.ok) return posted;
  await settleReserved(scope);
  return ok({ movementId, takenAt: scope.now });
});

/** A phone's clock may run ahead; what has arrived has happened. */
const notAhead = (happenedAt: string, now: string): string => (Date.parse(happenedAt) > Date.parse(now) ? now : happenedAt);

const inWords = (lines: readonly Line[]): string => lines.map(({ itemId, placeId, quantity }) => `${itemId} ${placeId} ${quantity}`).sort().join();

const isSame = ({ projectId, member }: ProjectScope, known: KnownMovement, moved: readonly Line[]): boolean =>
  known.kind === "gathered" && known.projectId === projectId && known.byPersonId === member.id && inWords(known.lines) === inWords(moved);
