import type { Caller } from "#lib/server/gate/caller.ts";
import { getColumn } from "#lib/server/columns/get-column.ts";
import { makePanels } from "#lib/server/gear/panels/change-panels.ts";
import { saveFormSet } from "#lib/server/gear/panels/form-sets.ts";
import { gearOf, NOON } from "./a-stock.ts";
import { valueOf } from "./value-of.ts";

export const A_PANEL = { happenedAt: NOON, count: 1, widthMm: 600, heightMm: 3200, thicknessMm: 17, filmFaces: 2 as const, sheetBatch: "B-77", sheetCost: 3150, labourCost: 1800, sundryCost: 250 };

/** One panel in the rack. */
export async function aPanel(by: Caller, projectId: string, wishes: Partial<typeof A_PANEL> = {}): Promise<{ itemId: string; name: string }> {
  const placeId = (await gearOf(by, projectId)).place("rack");
  const [panel] = valueOf(await makePanels(by, { projectId, placeId, ...A_PANEL, ...wishes })).panels;
  if (!panel) throw new Error("No panel was made.");
  return panel;
}

/** A made set that closes a column, its panels in the rack. */
export async function aFormSet(by: Caller, projectId: string, columnId: string, name: string): Promise<{ setId: string; itemIds: readonly string[] }> {
  const { form } = valueOf(await getColumn(by, { projectId, columnId }));
  if (!form.formSet.ok) throw new Error("The column has no form set.");
  const panels: { face: "A" | "B" | "C" | "D"; itemId: string }[] = [];
  for (const { face, width, height } of form.formSet.value.panels) panels.push({ face, itemId: (await aPanel(by, projectId, { widthMm: width, heightMm: height })).itemId });
  return { setId: valueOf(await saveFormSet(by, { projectId, name, panels })).id, itemIds: panels.map(({ itemId }) => itemId) };
}
