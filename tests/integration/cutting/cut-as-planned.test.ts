import { beforeAll, describe, expect, it } from "vitest";
import { changeCuttingRule, getCuttingRule } from "#lib/server/cutting/cutting-rule.ts";
import { cutAsPlanned } from "#lib/server/cutting/cut/cut-as-planned.ts";
import { planCutting } from "#lib/server/cutting/plan-cutting.ts";
import { cutUpMaterial, takeInMaterial } from "#lib/server/gear/orders/stock-material.ts";
import { getPanel } from "#lib/server/gear/pages/get-panels.ts";
import { planBuying } from "#lib/server/gear/orders/plan-buying.ts";
import { reverseMovement } from "#lib/server/gear/move-gear.ts";
import type { Material } from "#lib/contracts/planning/orders.ts";
import type { SheetPlan } from "#lib/trade/planning/sheets/sheet-order.ts";
import type { TimberLayout } from "#lib/trade/planning/timber/timber-order.ts";
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
    const { task, sheets, timbers } = valueOf(await planCutting(company.owner, { projectId, levelId, sets: asked }));
    return { task, sheets: valueOf(sheets), timbers: timbers.map(({ use, plan: own }) => ({ use, layouts: valueOf(own).layouts })), sets: asked };
  };
  type Shown = { sets: { size: string; count: number }[]; sheets: SheetPlan; timbers: readonly { use: "backing" | "fillet"; layouts: readonly TimberLayout[] }[] };
  const cut = ({ sets, sheets, timbers }: Shown) =>
    cutAsPlanned(company.leadingHand, { projectId, levelId, sets, layouts: [...sheets.layouts] as never, timbers: timbers as never, happenedAt: new Date().toISOString(), sheetBatch: "LW-0418" });
  const stock = async (): Promise<Readonly<Record<string, number>>> => Object.fromEntries((await ask<{ size: string; kind: string; quantity: number }>(database.url, `select case m.use when 'sheet' then m.length_mm || ' x ' || m.width_mm else m.use || ' ' || m.length_mm end size, g.kind, b.quantity
    from gear_balance b join gear_material m on m.company_id = b.company_id and m.item_id = b.item_id join gear_place g on g.company_id = b.company_id and g.id = b.place_id
    where b.company_id = $1 and g.kind in ('rack', 'yard') and (g.project_id is null or g.project_id = $2) and b.quantity > 0`, [company.companyId, projectId])).map(({ size, kind, quantity }) => [`${kind} ${size}`, quantity]));
  const takeIn = async (...lines: (Material & { quantity: number })[]) => void valueOf(await takeInMaterial(company.owner, { projectId, placeId: (await gearOf(company.owner, projectId)).place("rack"), lines }));
  const lastCut = async (): Promise<string> => (await ask<{ id: string }>(database.url, "select id from gear_movement where project_id = $1 and kind = 'cut up' order by seq desc limit 1", [projectId]))[0]?.id ?? "";
  return { projectId, levelId, plan, cut, stock, takeIn, lastCut };
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
    const racked = Object.entries(await stock()).filter(([name]) => /^rack \d/.test(name)).flatMap(([name, pieces]) => Array.from({ length: pieces }, () => name));
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

/**
 * The fillets of one set by hand: four of 3600 - 220 - 75 = 3305 mm, each 3000 + 305. Of lengths of 3000 with a kerf of 3:
 * four whole, and 4 x 305 out of a fifth, which leaves 3000 - 4 x (305 + 3) = 1768, kept from 600.
 */
describe("the timbers of a plan cut as shown", () => {
  const FILLETS = { lengths: 5, left: 1768 };

  it("leave the stock as cut up, as many as it knows, and their offcuts come on to the rack by length", async () => {
    const { plan, cut, stock, takeIn } = await aBench();
    const shown = await plan(1);
    const called = (use: "backing" | "fillet") => shown.task.orders.timbers.find((each) => each.use === use)?.material ?? "";
    const backing = shown.task.cuttingRule.timbers.find(({ use }) => use === "backing")?.lengthMm ?? 0;
    const used = shown.timbers.find(({ use }) => use === "backing")?.layouts ?? [];
    const lengths = used.reduce((sum, { count: pieces }) => sum + pieces, 0);
    await takeIn({ use: "backing", material: called("backing"), lengthMm: backing, widthMm: null, quantity: lengths + 4 }, { use: "fillet", material: called("fillet"), lengthMm: 3000, widthMm: null, quantity: 2 });
    const { timbers } = valueOf(await cut(shown));
    const kept = used.filter(({ offcutMm }) => offcutMm >= 600);
    expect(timbers).toEqual([
      { use: "backing", lengths, unknown: 0, kept: kept.reduce((sum, { count: pieces }) => sum + pieces, 0) },
      // Two were there; three count as bought and cut the same day, as sheets do.
      { use: "fillet", lengths: 2, unknown: FILLETS.lengths - 2, kept: 1 },
    ]);
    const after = await stock();
    expect(after[`rack backing ${backing}`]).toBe(4);
    expect(after["rack fillet 3000"]).toBeUndefined();
    expect(after[`rack fillet ${FILLETS.left}`]).toBe(1);
    for (const { offcutMm } of kept) expect(after[`rack backing ${offcutMm}`]).toBe(kept.filter((other) => other.offcutMm === offcutMm).reduce((sum, { count: pieces }) => sum + pieces, 0));
  }, 60_000);

  it("give their offcuts to the next plan first, and to what is to be bought", async () => {
    const { projectId, levelId, plan, cut, stock } = await aBench();
    valueOf(await cut(await plan(1)));
    const next = await plan(1);
    const fillets = next.timbers.find(({ use }) => use === "fillet")?.layouts ?? [];
    // The four rests of 305 come out of the offcut: 4 x 308 = 1232 of 1768; four new lengths instead of five.
    expect(fillets.filter(({ stockId }) => stockId.startsWith("o"))).toMatchObject([{ count: 1, offcutMm: FILLETS.left - 4 * 308, kept: false }]);
    expect(fillets.filter(({ stockId }) => stockId.startsWith("t")).reduce((sum, { count: pieces }) => sum + pieces, 0)).toBe(4);
    const buying = valueOf(await planBuying(company.office, { projectId, levelId, sets: next.sets }));
    expect(buying.fromRack.find(({ use, lengthMm }) => use === "fillet" && lengthMm === FILLETS.left)?.count).toBe(1);
    expect(buying.sizes.filter(({ use }) => use === "fillet").flatMap(({ rows }) => rows.map(({ planned }) => planned))).toEqual([4]);
    valueOf(await cut(next));
    expect((await stock())[`rack fillet ${FILLETS.left}`]).toBeUndefined();
  }, 60_000);

  it("are refused where the offcut is gone, and where they are not what the sets take", async () => {
    const { projectId, plan, cut } = await aBench();
    valueOf(await cut(await plan(1)));
    const next = await plan(1);
    const fillets = next.timbers.find(({ use }) => use === "fillet")?.layouts ?? [];
    const short = { ...next, timbers: next.timbers.map((each) => (each.use === "fillet" ? { ...each, layouts: fillets.slice(1) } : each)) };
    expect(refusal(await cut(short))).toBe("cutting-plan-changed");
    const [offcut] = fillets.filter(({ stockId }) => stockId.startsWith("o"));
    const rack = (await gearOf(company.owner, projectId)).place("rack");
    valueOf(await cutUpMaterial(company.leadingHand, { projectId, placeId: rack, happenedAt: new Date().toISOString(), lines: [{ itemId: offcut?.stockId.slice(1) ?? "", quantity: 1 }], reason: "Props' sole boards" }));
    expect(await cut(next)).toMatchObject({ failure: { code: "timber-offcut-used-already", values: { there: 0, item: expect.stringContaining("1768 mm") as string } } });
  }, 60_000);

  it("come back with the sheets in one step, but not once an offcut of theirs was cut", async () => {
    const { projectId, plan, cut, stock, takeIn, lastCut } = await aBench();
    const first = await plan(1);
    await takeIn({ use: "fillet", material: first.task.orders.timbers.find(({ use }) => use === "fillet")?.material ?? "", lengthMm: 3000, widthMm: null, quantity: 20 });
    const before = await stock();
    valueOf(await cut(first));
    const movement = await lastCut();
    const back = (movementId: string) => reverseMovement(company.leadingHand, { projectId, movementId, reason: "Not cut yet" });
    valueOf(await cut(await plan(1)));
    expect(refusal(await back(movement))).toBe("cut-used-already");
    valueOf(await back(await lastCut()));
    valueOf(await back(movement));
    expect(await stock()).toEqual(before);
    expect(refusal(await back(movement))).toBe("movement-reversed-already");
  }, 60_000);

  it("go down in counts entered by hand", async () => {
    const { projectId, plan, cut } = await aBench();
    const { project, cuttingRule } = valueOf(await getCuttingRule(company.owner, { projectId }));
    const timbers = cuttingRule.timbers.map((row) => (row.use === "fillet" ? { ...row, onHand: 7 } : row));
    valueOf(await changeCuttingRule(company.owner, { projectId, version: project.version, cuttingRule: { ...cuttingRule, timbers } }));
    valueOf(await cut(await plan(1)));
    expect(valueOf(await getCuttingRule(company.owner, { projectId })).cuttingRule.timbers.find(({ use }) => use === "fillet")?.onHand).toBe(7 - FILLETS.lengths);
  }, 60_000);
});
