"use server";

import { revalidatePath } from "next/cache";
import type { Result } from "#lib/kernel/result.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { fittingColumns } from "#lib/server/gear/pages/fitting-columns.ts";
import { cleanGear, moveGear, reverseMovement } from "#lib/server/gear/move-gear.ts";
import { settleShortfalls } from "#lib/server/gear/pages/settle-shortfalls.ts";
import { cutDownPanel, makePanels, recordPanelEvent, withdrawPanelEvent } from "#lib/server/gear/panels/change-panels.ts";
import { assignSet, saveFormSet, unassignSet } from "#lib/server/gear/panels/form-sets.ts";
import { openStock, prepareGear, saveItem, savePlace } from "#lib/server/gear/stock.ts";

/** Pages are read anew once a change was taken; a refused one changes nothing. */
async function afresh<T>(answer: Promise<Result<T>>): Promise<Result<T>> {
  const given = await answer;
  if (given.ok) revalidatePath("/projects/[projectId]", "layout");
  return given;
}

export async function prepareGearAction(input: Parameters<typeof prepareGear>[1]) {
  return afresh(prepareGear(await currentCaller(), input));
}
export async function openStockAction(input: Parameters<typeof openStock>[1]) {
  return afresh(openStock(await currentCaller(), input));
}
export async function saveItemAction(input: Parameters<typeof saveItem>[1]) {
  return afresh(saveItem(await currentCaller(), input));
}
export async function savePlaceAction(input: Parameters<typeof savePlace>[1]) {
  return afresh(savePlace(await currentCaller(), input));
}
export async function moveGearAction(input: Parameters<typeof moveGear>[1]) {
  return afresh(moveGear(await currentCaller(), input));
}
export async function cleanGearAction(input: Parameters<typeof cleanGear>[1]) {
  return afresh(cleanGear(await currentCaller(), input));
}
export async function reverseMovementAction(input: Parameters<typeof reverseMovement>[1]) {
  return afresh(reverseMovement(await currentCaller(), input));
}
export async function settleShortfallsAction(input: Parameters<typeof settleShortfalls>[1]) {
  return afresh(settleShortfalls(await currentCaller(), input));
}
export async function makePanelsAction(input: Parameters<typeof makePanels>[1]) {
  return afresh(makePanels(await currentCaller(), input));
}
export async function recordPanelEventAction(input: Parameters<typeof recordPanelEvent>[1]) {
  return afresh(recordPanelEvent(await currentCaller(), input));
}
export async function cutDownPanelAction(input: Parameters<typeof cutDownPanel>[1]) {
  return afresh(cutDownPanel(await currentCaller(), input));
}
export async function withdrawPanelEventAction(input: Parameters<typeof withdrawPanelEvent>[1]) {
  return afresh(withdrawPanelEvent(await currentCaller(), input));
}
export async function saveFormSetAction(input: Parameters<typeof saveFormSet>[1]) {
  return afresh(saveFormSet(await currentCaller(), input));
}
export async function assignSetAction(input: Parameters<typeof assignSet>[1]) {
  return afresh(assignSet(await currentCaller(), input));
}
export async function unassignSetAction(input: Parameters<typeof unassignSet>[1]) {
  return afresh(unassignSet(await currentCaller(), input));
}
export async function fittingColumnsAction(input: Parameters<typeof fittingColumns>[1]) {
  return fittingColumns(await currentCaller(), input);
}
