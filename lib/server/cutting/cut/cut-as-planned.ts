import "server-only";
import { cutAsPlannedInput } from "#lib/contracts/planning/cutting.ts";
import { materialKey, type Material } from "#lib/contracts/planning/orders.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import { brokenRule, ok } from "#lib/kernel/result.ts";
import { transfer, type Line } from "#lib/trade/gear/ledger.ts";
import { shareByArea } from "#lib/trade/gear/panel-life.ts";
import { checkSheetPlan } from "#lib/trade/planning/sheets/check-sheet-plan.ts";
import type { SheetLayout } from "#lib/trade/planning/sheets/sheet-order.ts";
import { recordChange } from "../../gate/change-line.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { listStandings } from "../../gear/ledger/ledger-store.ts";
import { projectPlaces } from "../../gear/ledger/place-store.ts";
import { postMovements } from "../../gear/ledger/post-movements.ts";
import { listMaterials } from "../../gear/orders/material-store.ts";
import { itemsOf } from "../../gear/orders/materials.ts";
import { addPanels, takePanelNumbers, type NewPanel } from "../../gear/panels/panel-store.ts";
import { bindMade } from "../../gear/reserved/bind-made.ts";
import { changeProjectRow } from "../../projects/store.ts";
import { newId } from "../../platform/new-id.ts";
import { readCuttingTask, type CuttingTask } from "../cutting-task.ts";

/** Where sheets are taken from, the first first. */
const TAKEN_FROM = ["yard", "rack", "cleaning bay", "truck"];

/**
 * Cut as the plan was shown: sheets and offcuts leave the ledger, the panels and the offcuts worth keeping come in. The
 * plan is sawn through once more against what is there now, so that of two plans that count on one offcut the second is
 * refused. A whole sheet the ledger does not know of counts as bought and cut the same day.
 */
export const cutAsPlanned = projectUseCase("cutting.cutAsPlanned", "gear.move", cutAsPlannedInput, async (scope, { levelId, sets, layouts, happenedAt, sheetBatch }) => {
  // Holds other writers of the project until all of it is posted.
  await recordChange(scope, { kind: "set-up", detail: { cutting: "cut as planned", sheets: layouts.reduce((sum, { count }) => sum + count, 0) } });
  const found = await readCuttingTask(scope, { levelId, sets });
  if (!found.ok) return found;
  const task = found.value;
  const lost = await lostOffcut(scope, task, layouts);
  if (lost) return brokenRule("offcut-used-already", lost);
  const cost = layouts.reduce((sum, { sheetId, count }) => sum + count * (task.orders.sheets.sheets.find(({ id }) => id === sheetId)?.cost ?? 0), 0);
  const [breach] = checkSheetPlan(task.orders.sheets, { layouts, cost, bound: 0, areaBound: 0, gap: 0, proven: false, wasteMm2: 0, keptMm2: 0 });
  if (breach) return brokenRule("cutting-plan-changed", { level: task.level?.name ?? "" });

  const panels = await panelsOf(scope, task, { cost, happenedAt, sheetBatch });
  await addPanels(scope, panels);
  const taken = await takenLines(scope, task, layouts);
  const posted = await postMovements(scope, [{ kind: "cut up", projectId: scope.projectId, happenedAt, reason: `Cutting plan of ${task.level?.name ?? "a level"}`, lines: [...taken.lines, ...(await madeLines(scope, panels)), ...(await keptLines(scope, task, layouts))] }]);
  if (!posted.ok) return posted;
  if (!(await countDown(scope, task, layouts))) return brokenRule("cutting-plan-changed", { level: task.level?.name ?? "" });
  await bindMade(scope, panels);
  return ok({ panels: panels.map(({ itemId, name }) => ({ itemId, name })), unknownSheets: taken.unknown });
});

/** An offcut the plan counts on more often than it is still there. */
async function lostOffcut(scope: ProjectScope, { offcuts }: CuttingTask, layouts: readonly SheetLayout[]): Promise<{ length: number; width: number; there: number } | null> {
  for (const [sheetId, alike] of groupBy(layouts.filter((layout) => layout.sheetId.startsWith("o")), (layout) => layout.sheetId)) {
    const there = offcuts.find(({ itemId }) => sheetId === `o${itemId}`)?.quantity ?? 0;
    if (alike.reduce((sum, { count }) => sum + count, 0) <= there) continue;
    const size = (await listMaterials(scope)).find(({ itemId }) => sheetId === `o${itemId}`);
    return { length: size?.lengthMm ?? 0, width: size?.widthMm ?? 0, there };
  }
  return null;
}

const placeId = async (scope: ProjectScope, kind: "bought" | "rack"): Promise<string> => (await projectPlaces(scope)).find((place) => place.kind === kind)?.id ?? "";

/** A panel for each face of each set, with its share of what the sheets cost. */
async function panelsOf(scope: ProjectScope, { groups, ply, project }: CuttingTask, made: { readonly cost: number; readonly happenedAt: string; readonly sheetBatch: string | null }): Promise<NewPanel[]> {
  const sizes = groups.flatMap(({ panels, sets }) => Array.from({ length: sets }, () => panels).flat());
  const names = await takePanelNumbers(scope, sizes.length);
  const shares = shareByArea(made.cost, sizes);
  return sizes.map(({ widthMm, heightMm }, index) => ({
    itemId: newId(), name: names[index] ?? "", widthMm, heightMm, thicknessMm: ply.thickness, filmFaces: 2, sheetBatch: made.sheetBatch, cutFromId: null, madeAt: made.happenedAt,
    sheetCost: shares[index] ?? 0, labourCost: 0, sundryCost: 0, currency: project.currency,
  }));
}

const madeLines = async (scope: ProjectScope, panels: readonly NewPanel[]): Promise<Line[]> => {
  const [source, rack] = [await placeId(scope, "bought"), await placeId(scope, "rack")];
  return panels.flatMap(({ itemId }) => transfer(itemId, source, rack, 1));
};

/** Offcuts out of where they lie; of whole sheets as many as the ledger knows. */
async function takenLines(scope: ProjectScope, { orders, offcuts, ply, project, cuttingRule }: CuttingTask, layouts: readonly SheetLayout[]): Promise<{ lines: Line[]; unknown: number }> {
  const source = await placeId(scope, "bought");
  const standings = (await listStandings(scope, scope.projectId)).filter(({ kind, quantity }) => quantity > 0 && TAKEN_FROM.includes(kind)).sort((a, b) => TAKEN_FROM.indexOf(a.kind) - TAKEN_FROM.indexOf(b.kind));
  const items = await itemsOf(scope, cuttingRule.sheets.map((sheet) => asMaterial(ply.label, sheet)), project.units);
  const lines: Line[] = [];
  let unknown = 0;
  for (const sheet of orders.sheets.sheets) {
    let missing = layouts.reduce((sum, { sheetId, count }) => sum + (sheetId === sheet.id ? count : 0), 0);
    const isBought = sheet.quantity === null;
    const itemId = offcuts.find((offcut) => sheet.id === `o${offcut.itemId}`)?.itemId ?? (isBought ? items.get(materialKey(asMaterial(ply.label, { lengthMm: sheet.widthMm, widthMm: sheet.heightMm })))?.itemId : undefined);
    for (const at of standings.filter((standing) => standing.itemId === itemId)) {
      const pieces = Math.min(missing, at.quantity);
      if (pieces > 0) lines.push(...transfer(at.itemId, at.placeId, source, pieces));
      missing -= pieces;
    }
    if (isBought) unknown += missing;
  }
  return { lines, unknown };
}

const asMaterial = (material: string, { lengthMm, widthMm }: { readonly lengthMm: number; readonly widthMm: number }): Material => ({ use: "sheet", material, lengthMm, widthMm });

/** Offcuts worth keeping, on to the rack by their size; the longer side along the grain or not, as it was cut. */
async function keptLines(scope: ProjectScope, { orders, ply, project }: CuttingTask, layouts: readonly SheetLayout[]): Promise<Line[]> {
  const { longMm, shortMm } = orders.sheets.keepFrom;
  const kept = layouts.flatMap(({ offcuts, count }) => offcuts.filter(({ w, h }) => Math.max(w, h) >= longMm && Math.min(w, h) >= shortMm).map(({ w, h }) => ({ lengthMm: w, widthMm: h, count })));
  const items = await itemsOf(scope, kept.map((size) => asMaterial(ply.label, size)), project.units);
  const [source, rack] = [await placeId(scope, "bought"), await placeId(scope, "rack")];
  return [...groupBy(kept, (size) => materialKey(asMaterial(ply.label, size)))].flatMap(([key, same]) =>
    transfer(items.get(key)?.itemId ?? "", source, rack, same.reduce((sum, { count }) => sum + count, 0)));
}

/** Counts entered by hand go down by what was cut of them. */
async function countDown(scope: ProjectScope, { cuttingRule, project }: CuttingTask, layouts: readonly SheetLayout[]): Promise<boolean> {
  const used = (index: number): number => layouts.reduce((sum, { sheetId, count }) => sum + (sheetId === `s${index}` ? count : 0), 0);
  const sheets = cuttingRule.sheets.map((sheet, index) => (sheet.onHand === null ? sheet : { ...sheet, onHand: sheet.onHand - used(index) }));
  if (sheets.every(({ onHand }, index) => onHand === cuttingRule.sheets[index]?.onHand)) return true;
  return changeProjectRow(scope, project.version, { cuttingRule: { ...cuttingRule, sheets } });
}
