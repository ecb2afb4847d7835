import "server-only";
import { gearInput, panelInput } from "#lib/contracts/gear.ts";
import { notFound, ok } from "#lib/kernel/result.ts";
import { panelLife } from "#lib/trade/gear/panel-life.ts";
import { isSound, restDoubt } from "#lib/trade/gear/panel-rests.ts";
import { readCuttingRule } from "../../cutting/read-cutting-rule.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { projectHead } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { listOpenPlaces } from "../ledger/place-store.ts";
import { restRule } from "../panels/cut-down.ts";
import { listCutInto, listPanels, type PanelRow } from "../panels/panel-store.ts";
import { listSets } from "../panels/set-store.ts";
import { listReserved } from "../reserved/reserved-store.ts";
import { listMovements } from "./gear-store.ts";

const withLife = ({ events, strippedAt, ...panel }: PanelRow) => {
  const { withdrawn, ...life } = panelLife(panel, events, strippedAt);
  return { ...panel, life, events: events.map((event) => ({ ...event, isWithdrawn: withdrawn.has(event.id) })) };
};

const projectOnly = gearInput.pick({ projectId: true });

/** Every panel at hand or in the company's own places, with where it stands in its life, and the sets they make. */
export const getPanels = projectUseCase("gear.getPanels", "gear.read", projectOnly, async (scope) => {
  const panels = (await listPanels(scope, { projectId: scope.projectId })).map(withLife).map(({ events: _, ...panel }) => panel);
  return ok({
    project: projectHead(await readProject(scope)), panels, sets: await listSets(scope), places: await listOpenPlaces(scope, scope.projectId), readAt: scope.now, role: scope.member.role,
  });
});
export type PanelsPage = Extract<Awaited<ReturnType<typeof getPanels>>, { ok: true }>["value"];

/** The columns that speak for the panel, one after another. */
async function comingFor(scope: ProjectScope, itemId: string) {
  const lines = await listReserved(scope);
  const coming: { columnId: string; gridRef: string; level: string; face: string; stoodOn: string | null; cutDown: boolean }[] = [];
  for (let line = lines.find((each) => each.itemId === itemId); line && coming.length < lines.length; ) {
    const { columnId, gridRef, level, face, stoodOn, cutDown } = line;
    coming.push({ columnId, gridRef, level, face, stoodOn, cutDown });
    line = lines.find((each) => each.itemId === null && each.afterColumnId === columnId && each.afterFace === face);
  }
  return coming;
}

export const getPanel = projectUseCase("gear.getPanel", "gear.read", panelInput, async (scope, { itemId }) => {
  const [panel] = await listPanels(scope, { itemIds: [itemId] });
  if (!panel || (panel.placeProjectId !== null && panel.placeProjectId !== scope.projectId)) return notFound("panel");
  const project = await readProject(scope);
  const [parent] = panel.cutFromId === null ? [] : await listPanels(scope, { itemIds: [panel.cutFromId] });
  const saw = restRule(readCuttingRule(project));
  return ok({
    project: projectHead(project), panel: { ...withLife(panel), restDoubt: restDoubt(isSound(panel, panelLife(panel, panel.events, panel.strippedAt)), panel, saw) }, saw, parent: parent ? { itemId: parent.itemId, name: parent.name } : null,
    cutInto: (await listCutInto(scope, itemId)).map(({ item, ...rest }) => ({ ...rest, name: item.name })), movements: await listMovements(scope, { itemId, most: 100 }), coming: await comingFor(scope, itemId), role: scope.member.role,
  });
});
export type PanelPage = Extract<Awaited<ReturnType<typeof getPanel>>, { ok: true }>["value"];
