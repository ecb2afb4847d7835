import { addDays, dayIn, instantOf } from "#lib/kernel/days.ts";
import { getColumn } from "#lib/server/columns/get-column.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { assignSet, saveFormSet } from "#lib/server/gear/panels/form-sets.ts";
import { makePanels } from "#lib/server/gear/panels/change-panels.ts";
import { openStock, prepareGear, saveItem, savePlace } from "#lib/server/gear/stock.ts";
import { atMoment } from "#lib/server/platform/clock.ts";
import type { LaidColumn } from "./lay-out-site.ts";
import { must } from "./must.ts";
import { WHARF } from "./scenario.ts";
import { workingDayBefore } from "./work-done.ts";

/** Invented: what the company owns when the site begins, a few wedges less than the crew will use. */
const CLAMPS_OF_A_KIND = 96;
const WEDGES = 660;
const PROPS = 70;
/** Invented, in cents: a panel's share of sheet, making, fillet and nails. */
const PANEL_COSTS = { sheetCost: 4180, labourCost: 2650, sundryCost: 390 };

/** Own stock in the rack, and a made set for every second mark of Level 2, so that the level above can take them over. */
export async function stockGear(by: Caller, { projectId, columns }: { projectId: string; columns: readonly LaidColumn[] }): Promise<void> {
  const today = dayIn(new Date().toISOString(), WHARF.project.timeZone);
  const begun = instantOf(addDays(today, -29), "06:30", WHARF.project.timeZone);
  await atMoment(begun, async () => {
    must("name the truck", await savePlace(by, { projectId, kind: "truck", name: "Flatbed" }));
    must("add props", await saveItem(by, { projectId, family: "prop", name: "Push-pull prop", lossPrice: 14_500 }));
    const { items, places } = must("prepare the gear", await prepareGear(by, { projectId }));
    const pieces = { "clamp set": CLAMPS_OF_A_KIND, wedge: WEDGES, prop: PROPS };
    const lines = items.flatMap(({ id, family }) => (family in pieces ? [{ itemId: id, quantity: pieces[family as keyof typeof pieces] }] : []));
    const placeId = places.find(({ kind }) => kind === "rack")?.id ?? "";
    must("take in own stock", await openStock(by, { projectId, happenedAt: begun, placeId, lines, reason: "Counted when the container was unpacked" }));
  });
  const made = instantOf(workingDayBefore(today, 8, WHARF.project.workingDays), "06:40", WHARF.project.timeZone);
  await atMoment(made, async () => {
    const placeId = must("find the rack", await prepareGear(by, { projectId })).places.find(({ kind }) => kind === "rack")?.id ?? "";
    for (const [index, { id: columnId }] of columns.filter(({ level, place }) => level === "Level 2" && place % 2 === 1).entries()) {
      const { form, column } = must("read a column", await getColumn(by, { projectId, columnId }));
      if (!form.formSet.ok) continue;
      const panels: { face: "A" | "B" | "C" | "D"; itemId: string }[] = [];
      for (const { face, width, height } of form.formSet.value.panels) {
        const answer = await makePanels(by, { projectId, happenedAt: made, placeId, count: 1, widthMm: width, heightMm: height, thicknessMm: 17, filmFaces: 2, sheetBatch: "LW-0412", ...PANEL_COSTS });
        panels.push({ face, itemId: must("make a panel", answer).panels[0]?.itemId ?? "" });
      }
      const { id: setId } = must("make a set", await saveFormSet(by, { projectId, name: `S-${index + 1}`, panels }));
      must(`assign a set to ${column.gridRef}`, await assignSet(by, { projectId, setId, columnId, happenedAt: made }));
    }
  });
}
