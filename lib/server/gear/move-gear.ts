import "server-only";
import { cleanGearInput, moveGearInput, reverseMovementInput } from "#lib/contracts/gear.ts";
import { brokenRule, conflict, fail, notFound, ok, type Result } from "#lib/kernel/result.ts";
import { isSource, TICK_KINDS, transfer } from "#lib/trade/gear/ledger.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { findMovement, holdMovementId, listPlaces, listStandings } from "./ledger/ledger-store.ts";
import { findReceiptOf } from "./orders/order-store.ts";
import { findPanelEventOf } from "./panels/panel-store.ts";
import { findStandingOn } from "./ticks/tick-store.ts";
import { postMovements, reverseMovement as mirrorMovement } from "./ledger/post-movements.ts";
import { settleReserved } from "./reserved/settle-reserved.ts";

/** From one place to another. What is lost or scrapped is said by a count or on the panel, with its price. */
export const moveGear = projectUseCase("gear.moveGear", "gear.move", moveGearInput, async (scope, { fromId, toId, happenedAt, lines, reason }) => {
  const places = await listPlaces(scope, [fromId, toId]);
  const closed = places.find(({ kind }) => isSource(kind) || kind === "lost" || kind === "scrapped");
  if (closed) return brokenRule("place-not-for-moving", { place: closed.name });
  const posted = await postMovements(scope, [{
    kind: "moved", projectId: scope.projectId, happenedAt, reason, lines: lines.flatMap(({ itemId, quantity }) => transfer(itemId, fromId, toId, quantity)),
  }]);
  if (posted.ok) await settleReserved(scope);
  return posted;
});

/** Scraped, oiled and back in the rack: the lines given, or everything in the bay. */
export const cleanGear = projectUseCase("gear.cleanGear", "gear.move", cleanGearInput, async (scope, { fromId, toId, happenedAt, lines }) => {
  const places = new Map((await listPlaces(scope, [fromId, toId])).map(({ id, kind }) => [id, kind]));
  if (places.get(fromId) !== "cleaning bay" || places.get(toId) !== "rack") return notFound("place");
  const cleaned = lines ?? (await listStandings(scope, scope.projectId)).filter(({ placeId }) => placeId === fromId);
  if (cleaned.length === 0) return ok([] as readonly string[]);
  return postMovements(scope, [{
    kind: "cleaned", projectId: scope.projectId, happenedAt, lines: cleaned.flatMap(({ itemId, quantity }) => transfer(itemId, fromId, toId, quantity)),
  }]);
});

/** Takes back a movement somebody keyed; the same id twice takes back once. One that follows from a tick goes with its tick. */
export const reverseMovement = projectUseCase("gear.reverseMovement", "gear.move", reverseMovementInput, async (scope, { movementId, reason, reversalId, personId }): Promise<Result<readonly string[]>> => {
  if (personId !== undefined && personId !== scope.member.id) return fail({ kind: "not-signed-in" });
  if (reversalId !== undefined) {
    await holdMovementId(scope, reversalId);
    const known = await findMovement(scope, reversalId);
    if (known) return known.reversesId === movementId ? ok([reversalId]) : conflict("movement");
  }
  const movement = await findMovement(scope, movementId);
  if (!movement || (movement.projectId !== null && movement.projectId !== scope.projectId)) return notFound("movement");
  if (movement.siteEventId !== null && (TICK_KINDS as readonly string[]).includes(movement.kind)) return brokenRule("movement-follows-tick");
  if (movement.kind === "gathered") {
    const standing = await findStandingOn(scope, movement.lines.filter(({ quantity }) => quantity > 0));
    if (standing) return brokenRule("gathered-stands", standing);
  }
  const receipt = await findReceiptOf(scope, movementId);
  if (receipt) return brokenRule("movement-of-receipt", { docket: receipt.number ?? "", number: receipt.order.number });
  const entry = await findPanelEventOf(scope, movementId);
  if (entry) return brokenRule("movement-of-panel", { panel: entry.panel.item.name, what: entry.kind });
  const mirrored = await mirrorMovement(scope, movementId, reason, reversalId);
  if (mirrored.ok) await settleReserved(scope);
  return mirrored;
});
