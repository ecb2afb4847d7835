import { beforeAll, describe, expect, it } from "vitest";
import { changeCuttingRule, getCuttingRule } from "#lib/server/cutting/cutting-rule.ts";
import { cutAsPlanned } from "#lib/server/cutting/cut/cut-as-planned.ts";
import { planCutting } from "#lib/server/cutting/plan-cutting.ts";
import { takeInMaterial } from "#lib/server/gear/orders/stock-material.ts";
import { getPanel } from "#lib/server/gear/pages/get-panels.ts";
import type { SheetPlan } from "#lib/trade/planning/sheets/sheet-order.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { gearOf } from "#tests/support/builders/a-stock.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask } from "#tests/support/raw-sql.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Rush Boxing")), 120_000);

let count = 0;
async function aBench() {
  const { projectId, levels } = await aProject(company.owner, { name: `Bench ${(count += 1)}` });
  const levelId = levels["Ground"] ?? "";
  const plan = async (sets: number) => {
    const first = valueOf(await planCutting(company.owner, { projectId, levelId, sets: [] })).task;
    const asked = [{ size: first.groups[0]?.size ?? "", count: sets }];
    const { task, sheets } = valueOf(await planCutting(company.owner, { projectId, levelId, sets: asked }));
    return { task, sheets: valueOf(sheets), sets: asked };
  };
  const cut = ({ sets, sheets }: { sets: { size: string; count: number }[]; sheets: SheetPlan }) =>
    cutAsPlanned(company.leadingHand, { projectId, levelId, sets, layouts: [...sheets.layouts] as never, happenedAt: new Date().toISOString(), sheetBatch: "LW-0418" });
  const stock = async (): Promise<Readonly<Record<string, number>>> => Object.fromEntries((await ask<{ size: string; kind: string; quantity: number }>(database.url, `select m.length_mm || ' x ' || m.width_mm size, g.kind, b.quantity
    from gear_balance b join gear_material m on m.company_id = b.company_id and m.item_id = b.item_id join gear_place g on g.company_id = b.company_id and g.id = b.place_id
    where b.company_id = $1 and g.kind in ('rack', 'yard') and (g.project_id is null or g.project_id = $2) and b.quantity > 0`, [company.companyId, projectId])).map(({ size, kind, quantity }) => [`${kind} ${size}`, quantity]));
  return { projectId, plan, cut, stock };
}

describe("a plan cut as it was shown", () => {
  it("takes the sheets out of the yard, and brings in the panels and the offcuts kept", async () => {
    const { projectId, plan, cut, stock } = await aBench();
    const shown = await plan(1);
    const { ply, cuttingRule: { sheets: [sheet] } } = shown.task;
    const yard = (await gearOf(company.owner, projectId)).place("yard");
    valueOf(await takeInMaterial(company.owner, { projectId, placeId: yard, lines: [{ use: "sheet", material: ply.label, lengthMm: sheet?.lengthMm ?? 0, widthMm: sheet?.widthMm ?? 0, quantity: 9 }] }));
    const { panels, unknownSheets } = valueOf(await cut(shown));
    // One set is four panels; the sheets came out of the nine there were.
    const used = shown.sheets.layouts.reduce((sum, layout) => sum + layout.count, 0);
    expect([panels.length, unknownSheets]).toEqual([4, 0]);
    expect((await stock())[`yard ${sheet?.lengthMm} x ${sheet?.widthMm}`]).toBe(9 - used);
    // What the sheets cost is shared by the panels, to the last cent: used x 78.00.
    const cards = await Promise.all(panels.map(async ({ itemId }) => valueOf(await getPanel(company.office, { projectId, itemId })).panel));
    expect(cards.reduce((sum, { sheetCost }) => sum + sheetCost, 0)).toBe(used * 7800);
    expect(cards.every(({ sheetBatch, placeKind }) => sheetBatch === "LW-0418" && placeKind === "rack")).toBe(true);
    // Every kept offcut lies on the rack by its size: at least 600 x 200 mm, either way round.
    const kept = shown.sheets.layouts.flatMap(({ offcuts, count: copies }) => offcuts.filter(({ w, h }) => Math.max(w, h) >= 600 && Math.min(w, h) >= 200).flatMap(({ w, h }) => Array.from({ length: copies }, () => `rack ${w} x ${h}`)));
    expect(kept.length).toBeGreaterThan(0);
    const racked = Object.entries(await stock()).filter(([name]) => name.startsWith("rack")).flatMap(([name, pieces]) => Array.from({ length: pieces }, () => name));
    expect(racked.sort()).toEqual(kept.sort());
  }, 60_000);

  it("is refused where another plan used the offcut first, and offers what is left", async () => {
    const { plan, cut, stock } = await aBench();
    valueOf(await cut(await plan(1)));
    const before = await stock();
    const shown = await plan(1);
    // The offcuts of the first plan are paid for, so the second takes some of them.
    const ofRack = shown.sheets.layouts.filter(({ sheetId }) => sheetId.startsWith("o"));
    expect(ofRack.length).toBeGreaterThan(0);
    const answers = await Promise.all([cut(shown), cut(shown)]);
    expect(answers.map(refusal).sort()).toEqual([null, "offcut-used-already"].sort());
    const after = await stock();
    const [used] = ofRack;
    const sheet = shown.task.orders.sheets.sheets.find(({ id }) => id === used?.sheetId);
    const name = `rack ${sheet?.widthMm} x ${sheet?.heightMm}`;
    expect(after[name] ?? 0).toBeLessThan(before[name] ?? 0);
  }, 60_000);

  it("is refused when the sets asked for are others, and counts entered by hand go down by what was cut", async () => {
    const { projectId, plan, cut } = await aBench();
    const shown = await plan(1);
    expect(refusal(await cut({ ...shown, sets: [{ size: shown.sets[0]?.size ?? "", count: 2 }] }))).toBe("cutting-plan-changed");
    const { project, cuttingRule } = valueOf(await getCuttingRule(company.owner, { projectId }));
    const [sheet] = cuttingRule.sheets;
    if (!sheet) throw new Error("no sheet");
    // The same size by hand, dearer than nothing and cheaper than bought: the plan takes both there are.
    valueOf(await changeCuttingRule(company.owner, { projectId, version: project.version, cuttingRule: { ...cuttingRule, sheets: [sheet, { ...sheet, price: 1, onHand: 2 }] } }));
    valueOf(await cut(await plan(1)));
    expect(valueOf(await getCuttingRule(company.owner, { projectId })).cuttingRule.sheets[1]?.onHand).toBe(0);
  }, 60_000);
});
