import "server-only";
import type { CuttingRule } from "#lib/contracts/planning/cutting.ts";
import { materialKey, type Material } from "#lib/contracts/planning/orders.ts";
import { brokenRule, notFound, ok, type Result } from "#lib/kernel/result.ts";
import { transfer } from "#lib/trade/gear/ledger.ts";
import { objectionTo, objectionToCut, panelLife, shareByArea, type PanelSize } from "#lib/trade/gear/panel-life.ts";
import { isSound, panelRests, restDoubt, SAME_PLY_MM, strangeRest, type RestRule } from "#lib/trade/gear/panel-rests.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { newId } from "../../platform/new-id.ts";
import { readCuttingRule } from "../../cutting/read-cutting-rule.ts";
import { projectHead, readRules } from "../../projects/project-head.ts";
import { readProject, type ProjectRow } from "../../projects/store.ts";
import { itemsOf } from "../orders/materials.ts";
import { projectPlaces } from "../ledger/place-store.ts";
import { postMovements } from "../ledger/post-movements.ts";
import { addPanelEvent, addPanels, listPanels, takePanelNumbers, type NewPanel, type PanelRow } from "./panel-store.ts";

/** Where an offcut is found by the next plan; of a panel cut down elsewhere it goes on to the rack. */
const KEPT_AT = new Set(["rack", "cleaning bay", "truck", "yard"]);

export const placeOf = async (scope: ProjectScope, kind: "bought" | "scrapped"): Promise<string> => (await projectPlaces(scope)).find((place) => place.kind === kind)?.id ?? "";

export async function findPanel(scope: ProjectScope, itemId: string): Promise<PanelRow | null> {
  const [panel] = await listPanels(scope, { itemIds: [itemId] });
  return panel && (panel.placeProjectId === null || panel.placeProjectId === scope.projectId) ? panel : null;
}

type Cut = { readonly pieces: readonly [PanelSize, ...PanelSize[]]; readonly brought: number; readonly happenedAt: string; readonly rests: readonly PanelSize[] | undefined };
type Made = { readonly panels: readonly { readonly itemId: string; readonly name: string }[]; /** Offcuts of what was left, by the name they go by. */ readonly rests: readonly string[] };

/** The panel ends, and the pieces it was cut into begin where it lay; of what is left, what was said or else all that is worth keeping is an offcut from now on. */
export async function cutDown(scope: ProjectScope, panel: PanelRow, { pieces, brought, happenedAt, rests }: Cut): Promise<Result<Made>> {
  if (panel.placeId === null) return notFound("panel");
  const project = await readProject(scope);
  const rule = restRule(readCuttingRule(project));
  const life = panelLife(panel, panel.events, panel.strippedAt);
  const objection = objectionTo("cut down", panel, life) ?? objectionToCut(panel, pieces, rule.kerfMm);
  if (objection) return brokenRule(objection.code, objection.values);
  const found = panelRests(panel, pieces, rule);
  const kept = rests ?? (restDoubt(isSound(panel, life), panel, rule) === null ? found : []);
  const strange = strangeRest(kept, found);
  if (strange) return brokenRule("panel-rest-changed", { panel: panel.name, size: `${strange.widthMm} × ${strange.heightMm} mm` });
  const [names, shares, source] = [await takePanelNumbers(scope, pieces.length), shareByArea(brought, pieces), await placeOf(scope, "bought")];
  const cut = pieces.map((piece, index): NewPanel => ({
    ...piece, itemId: newId(), name: names[index] ?? "", thicknessMm: panel.thicknessMm, filmFaces: panel.filmFaces, sheetBatch: panel.sheetBatch, cutFromId: panel.itemId,
    madeAt: happenedAt, sheetCost: shares[index] ?? 0, labourCost: 0, sundryCost: 0, currency: panel.currency,
  }));
  await addPanels(scope, cut);
  const here = panel.placeId;
  const offcuts = await offcutsOf(scope, panel, kept, project);
  const lines = [
    ...transfer(panel.itemId, here, await placeOf(scope, "scrapped"), 1), ...cut.flatMap((piece) => transfer(piece.itemId, source, here, 1)),
    ...offcuts.flatMap(({ itemId, placeId }) => transfer(itemId, source, placeId, 1)),
  ];
  const posted = await postMovements(scope, [{ kind: "cut down", projectId: scope.projectId, happenedAt, reason: `${panel.name} cut down`, lines }]);
  if (!posted.ok) return posted;
  await addPanelEvent(scope, { itemId: panel.itemId, kind: "cut down", happenedAt, reason: [`Into ${cut.map(({ name }) => name).join(" and ")}`, ...offcuts.map(({ name }) => `kept ${name}`)].join("; "), amount: brought, movementId: posted.value[0] });
  return ok({ panels: cut.map(({ itemId, name }) => ({ itemId, name })), rests: offcuts.map(({ name }) => name) });
}

/** As sheets are sawn, panels are. */
export const restRule = ({ kerfMm, keepLongMm, keepShortMm, sheets }: CuttingRule): RestRule => ({
  kerfMm, longMm: keepLongMm, shortMm: keepShortMm,
  sheet: { heightMm: Math.max(...sheets.map(({ lengthMm }) => lengthMm)), widthMm: Math.max(...sheets.map(({ widthMm }) => widthMm)) },
});

/** Ply offcuts like those of a sheet, the height along the grain: of the project's ply where it is as thick as that, else named by their thickness. */
async function offcutsOf(scope: ProjectScope, panel: PanelRow, rests: readonly PanelSize[], project: ProjectRow) {
  if (rests.length === 0) return [];
  const { ply } = readRules(project).shutterRule;
  const material = Math.abs(panel.thicknessMm - ply.thickness) <= SAME_PLY_MM ? ply.label : `Ply ${Math.round(panel.thicknessMm * 10) / 10} mm`;
  const sizes = rests.map(({ widthMm, heightMm }): Material => ({ use: "sheet", material, lengthMm: heightMm, widthMm }));
  const items = await itemsOf(scope, sizes, projectHead(project).units);
  const places = await projectPlaces(scope);
  const placeId = places.find(({ id, kind }) => id === panel.placeId && KEPT_AT.has(kind))?.id ?? places.find(({ kind }) => kind === "rack")?.id ?? "";
  return sizes.map((size) => {
    const { itemId = "", name = "" } = items.get(materialKey(size)) ?? {};
    return { itemId, name, placeId };
  });
}
