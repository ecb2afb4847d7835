import "server-only";
import { cutAsPlannedInput } from "#lib/contracts/planning/cutting.ts";
import { brokenRule, ok } from "#lib/kernel/result.ts";
import { shareByArea } from "#lib/trade/gear/panel-life.ts";
import { checkSheetPlan } from "#lib/trade/planning/sheets/check-sheet-plan.ts";
import type { SheetLayout } from "#lib/trade/planning/sheets/sheet-order.ts";
import { recordChange } from "../../gate/change-line.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { postMovements } from "../../gear/ledger/post-movements.ts";
import { addPanels, takePanelNumbers, type NewPanel } from "../../gear/panels/panel-store.ts";
import { bindMade } from "../../gear/reserved/bind-made.ts";
import { changeProjectRow } from "../../projects/store.ts";
import { newId } from "../../platform/new-id.ts";
import { readCuttingTask, type CuttingTask } from "../cutting-task.ts";
import { lostOffcut, sheetLines } from "./sheets-cut.ts";
import { sawStock } from "./stock-taken.ts";
import { objectionToTimbers, timberLines, type CutTimbers } from "./timbers-cut.ts";

/**
 * Cut as the plan was shown: sheets, lengths of timber and offcuts leave the ledger as cut up, the panels and the offcuts
 * worth keeping come in, all of it one movement. The plan is sawn through once more against what is there now, so that of
 * two plans that count on one offcut the second is refused. A whole sheet or length the ledger does not know of counts as
 * bought and cut the same day.
 */
export const cutAsPlanned = projectUseCase("cutting.cutAsPlanned", "gear.move", cutAsPlannedInput, async (scope, { levelId, sets, layouts, timbers, happenedAt, sheetBatch }) => {
  // Holds other writers of the project until all of it is posted.
  await recordChange(scope, { kind: "set-up", detail: { cutting: "cut as planned", sheets: layouts.reduce((sum, { count }) => sum + count, 0) } });
  const found = await readCuttingTask(scope, { levelId, sets });
  if (!found.ok) return found;
  const task = found.value;
  const level = task.level?.name ?? "a level";
  const lost = await lostOffcut(scope, task, layouts);
  if (lost) return brokenRule("offcut-used-already", lost);
  const cost = layouts.reduce((sum, { sheetId, count }) => sum + count * (task.orders.sheets.sheets.find(({ id }) => id === sheetId)?.cost ?? 0), 0);
  const [breach] = checkSheetPlan(task.orders.sheets, { layouts, cost, bound: 0, areaBound: 0, gap: 0, proven: false, wasteMm2: 0, keptMm2: 0 });
  if (breach) return brokenRule("cutting-plan-changed", { level });
  const objection = await objectionToTimbers(scope, task, timbers);
  if (objection) return objection;

  const panels = await panelsOf(scope, task, { cost, happenedAt, sheetBatch });
  await addPanels(scope, panels);
  const stock = await sawStock(scope);
  const ply = await sheetLines(scope, task, layouts, stock);
  const timber = await timberLines(scope, task, timbers, stock);
  const lines = [...ply.lines, ...timber.lines, ...panels.flatMap(({ itemId }) => stock.toRack(itemId, 1))];
  const posted = await postMovements(scope, [{ kind: "cut up", projectId: scope.projectId, happenedAt, reason: `Cutting plan of ${level}`, lines }]);
  if (!posted.ok) return posted;
  if (!(await countDown(scope, task, layouts, timbers))) return brokenRule("cutting-plan-changed", { level });
  await bindMade(scope, panels);
  return ok({ panels: panels.map(({ itemId, name }) => ({ itemId, name })), unknownSheets: ply.unknown, keptOffcuts: ply.kept, timbers: timber.told });
});

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

/** Counts entered by hand go down by what was cut of them. */
async function countDown(scope: ProjectScope, { cuttingRule, project }: CuttingTask, layouts: readonly SheetLayout[], cut: readonly CutTimbers[]): Promise<boolean> {
  const used = new Map<string, number>();
  const add = (id: string, count: number): void => void used.set(id, (used.get(id) ?? 0) + count);
  layouts.forEach(({ sheetId, count }) => { add(sheetId, count); });
  cut.forEach(({ layouts: own }) => own.forEach(({ stockId, count }) => { add(stockId, count); }));
  const less = <Row extends { readonly onHand: number | null }>(rows: readonly Row[], letter: string): Row[] =>
    rows.map((row, index) => (row.onHand === null ? row : { ...row, onHand: row.onHand - (used.get(`${letter}${index}`) ?? 0) }));
  const [sheets, timbers] = [less(cuttingRule.sheets, "s"), less(cuttingRule.timbers, "t")];
  const isSame = [...cuttingRule.sheets, ...cuttingRule.timbers].every(({ onHand }, index) => onHand === [...sheets, ...timbers][index]?.onHand);
  return isSame || changeProjectRow(scope, project.version, { cuttingRule: { ...cuttingRule, sheets, timbers } });
}
