import "server-only";
import { brokenRule, notFound, ok, type Result } from "#lib/kernel/result.ts";
import { transfer } from "#lib/trade/gear/ledger.ts";
import { objectionTo, objectionToCut, panelLife, shareByArea, type PanelSize } from "#lib/trade/gear/panel-life.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { newId } from "../../platform/new-id.ts";
import { projectPlaces } from "../ledger/place-store.ts";
import { postMovements } from "../ledger/post-movements.ts";
import { addPanelEvent, addPanels, listPanels, takePanelNumbers, type NewPanel, type PanelRow } from "./panel-store.ts";

/** Taken between two pieces by the saw. Common practice, no source. */
const KERF_MM = 3;

export const placeOf = async (scope: ProjectScope, kind: "bought" | "scrapped"): Promise<string> => (await projectPlaces(scope)).find((place) => place.kind === kind)?.id ?? "";

export async function findPanel(scope: ProjectScope, itemId: string): Promise<PanelRow | null> {
  const [panel] = await listPanels(scope, { itemIds: [itemId] });
  return panel && (panel.placeProjectId === null || panel.placeProjectId === scope.projectId) ? panel : null;
}

type Cut = { readonly pieces: readonly [PanelSize, ...PanelSize[]]; readonly brought: number; readonly happenedAt: string };

/** The panel ends, and the pieces it was cut into begin where it lay. */
export async function cutDown(scope: ProjectScope, panel: PanelRow, { pieces, brought, happenedAt }: Cut): Promise<Result<{ panels: readonly { itemId: string; name: string }[] }>> {
  if (panel.placeId === null) return notFound("panel");
  const objection = objectionTo("cut down", panel, panelLife(panel, panel.events, panel.strippedAt)) ?? objectionToCut(panel, pieces, KERF_MM);
  if (objection) return brokenRule(objection.code, objection.values);
  const [names, shares, source] = [await takePanelNumbers(scope, pieces.length), shareByArea(brought, pieces), await placeOf(scope, "bought")];
  const cut = pieces.map((piece, index): NewPanel => ({
    ...piece, itemId: newId(), name: names[index] ?? "", thicknessMm: panel.thicknessMm, filmFaces: panel.filmFaces, sheetBatch: panel.sheetBatch, cutFromId: panel.itemId,
    madeAt: happenedAt, sheetCost: shares[index] ?? 0, labourCost: 0, sundryCost: 0, currency: panel.currency,
  }));
  await addPanels(scope, cut);
  const here = panel.placeId;
  const lines = [...transfer(panel.itemId, here, await placeOf(scope, "scrapped"), 1), ...cut.flatMap((piece) => transfer(piece.itemId, source, here, 1))];
  const posted = await postMovements(scope, [{ kind: "cut down", projectId: scope.projectId, happenedAt, lines }]);
  if (!posted.ok) return posted;
  await addPanelEvent(scope, { itemId: panel.itemId, kind: "cut down", happenedAt, reason: `Into ${cut.map(({ name }) => name).join(" and ")}`, amount: brought, movementId: posted.value[0] });
  return ok({ panels: cut.map(({ itemId, name }) => ({ itemId, name })) });
}
