import "server-only";
import { cutDownInput, makePanelsInput, panelEventInput, withdrawPanelEventInput } from "#lib/contracts/gear.ts";
import { brokenRule, conflict, notFound, ok, type Result } from "#lib/kernel/result.ts";
import { transfer } from "#lib/trade/gear/ledger.ts";
import { objectionTo, panelLife } from "#lib/trade/gear/panel-life.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { clashOf } from "../../platform/db.ts";
import { newId } from "../../platform/new-id.ts";
import { readProject } from "../../projects/store.ts";
import { postMovements, reverseMovement } from "../ledger/post-movements.ts";
import { bindMade } from "../reserved/bind-made.ts";
import { settleReserved } from "../reserved/settle-reserved.ts";
import { cutDown, findPanel, placeOf } from "./cut-down.ts";
import { addPanelEvent, addPanels, findPanelEvent, takePanelNumbers, type NewPanel, type PanelRow } from "./panel-store.ts";

const lifeOf = (panel: PanelRow) => panelLife(panel, panel.events, panel.strippedAt);

/** Panels cut from sheets: each one an item of its own, at one place. */
export const makePanels = projectUseCase("gear.makePanels", "gear.move", makePanelsInput, async (scope, input) => {
  const { projectId, happenedAt, placeId, count, ...made } = input;
  const { currency } = await readProject(scope);
  const names = await takePanelNumbers(scope, count);
  const panels = names.map((name): NewPanel => ({ ...made, itemId: newId(), name, cutFromId: null, madeAt: happenedAt, currency }));
  await addPanels(scope, panels);
  const source = await placeOf(scope, "bought");
  const posted = await postMovements(scope, [{ kind: "made", projectId, happenedAt, lines: panels.flatMap(({ itemId }) => transfer(itemId, source, placeId, 1)) }]);
  if (!posted.ok) return posted;
  await bindMade(scope, panels);
  return ok({ panels: panels.map(({ itemId, name }) => ({ itemId, name })) });
});

/** Found damaged, repaired, turned, demoted or scrapped; a scrapped one leaves where it is. */
export const recordPanelEvent = projectUseCase("gear.recordPanelEvent", "gear.move", panelEventInput, async (scope, input) => {
  const panel = await findPanel(scope, input.itemId);
  if (!panel) return notFound("panel");
  const objection = objectionTo(input.kind, panel, lifeOf(panel));
  if (objection) return brokenRule(objection.code, objection.values);
  const moved = input.kind === "scrapped" ? await scrap(scope, panel, input.happenedAt, input.reason) : ok([]);
  if (!moved.ok) return moved;
  const event = await addPanelEvent(scope, { itemId: panel.itemId, kind: input.kind, happenedAt: input.happenedAt, reason: input.reason, amount: input.amount, movementId: moved.value[0] });
  await settleReserved(scope);
  return ok(event);
});

async function scrap(scope: ProjectScope, panel: PanelRow, happenedAt: string, reason: string): Promise<Result<readonly string[]>> {
  if (panel.placeId === null) return notFound("place");
  const lines = transfer(panel.itemId, panel.placeId, await placeOf(scope, "scrapped"), 1);
  return postMovements(scope, [{ kind: "scrapped", projectId: scope.projectId, happenedAt, reason, lines }]);
}

/** Bigger to smaller, one way: the panel ends, and the pieces it was cut into begin where it lay; what is left worth keeping goes on to the rack. */
export const cutDownPanel = projectUseCase("gear.cutDownPanel", "gear.move", cutDownInput, async (scope, { itemId, happenedAt, pieces, rests: kept, brought }) => {
  const panel = await findPanel(scope, itemId);
  const [first, ...rest] = pieces;
  if (!panel || !first) return notFound("panel");
  const cut = await cutDown(scope, panel, { pieces: [first, ...rest], brought, happenedAt, rests: kept });
  if (cut.ok) await settleReserved(scope);
  return cut;
});

/** Takes an entry out of a panel's life, and the movement that went with it. */
export const withdrawPanelEvent = projectUseCase("gear.withdrawPanelEvent", "gear.move", withdrawPanelEventInput, async (scope, { eventId, reason }) => {
  const event = await findPanelEvent(scope, eventId);
  const panel = event ? await findPanel(scope, event.itemId) : null;
  if (!event || !panel) return notFound("entry");
  if (event.kind === "withdrawn" || event.withdrawn.length > 0) return brokenRule("panel-event-withdrawn");
  if (event.movementId !== null) {
    const reversed = await reverseMovement(scope, event.movementId, reason);
    if (!reversed.ok) return reversed;
  }
  try {
    const entry = await addPanelEvent(scope, { itemId: event.itemId, kind: "withdrawn", happenedAt: scope.now, reason, amount: 0, eventId });
    await settleReserved(scope);
    return ok(entry);
  } catch (error) {
    if (clashOf(error) === "duplicate") return conflict("panel");
    throw error;
  }
});
