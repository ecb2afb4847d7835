import { beforeAll, describe, expect, it } from "vitest";
import { changeCuttingRule, getCuttingRule } from "#lib/server/cutting/cutting-rule.ts";
import { getCuttingOrder, planCutting } from "#lib/server/cutting/plan-cutting.ts";
import { checkSheetPlan } from "#lib/trade/planning/sheets/check-sheet-plan.ts";
import { checkTimberPlan } from "#lib/trade/planning/timber/check-timber-plan.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject, type Project } from "#tests/support/builders/a-project.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase();
let company: Company;
let project: Project;
beforeAll(async () => {
  company = await aCompany("Saw Bench Boxing");
  project = await aProject(company.owner);
}, 120_000);

const ruled = async () => valueOf(await getCuttingRule(company.owner, { projectId: project.projectId }));

describe("a cutting plan of a level", () => {
  it("cuts every piece of one form set for each column, and nothing else", async () => {
    const { task, sheets, timbers } = valueOf(await planCutting(company.leadingHand, { projectId: project.projectId }));
    expect(task.level?.name).toBe("Ground");
    expect(task.groups.map(({ marks, columns, sets }) => ({ marks, columns, sets }))).toEqual([{ marks: ["K1"], columns: 6, sets: 6 }]);
    expect(checkSheetPlan(task.orders.sheets, valueOf(sheets))).toEqual([]);
    expect(timbers.map(({ use }) => use)).toEqual(["backing", "fillet"]);
    for (const { use, plan } of timbers) {
      const order = task.orders.timbers.find((timber) => timber.use === use)?.order;
      expect(order && checkTimberPlan(order, valueOf(plan))).toEqual([]);
    }
    // Four faces a set, each of 3600 - 220 - 75 mm: more than one sheet's length of 2440, so two pieces a face, 8 x 6 in all.
    expect(task.orders.sheets.parts.reduce((sum, part) => sum + part.quantity, 0)).toBe(48);
    // Four fillets a set, 24 of 3305 mm, each made up from a length of 3000 mm and 305 mm.
    expect(task.orders.timbers.find(({ use }) => use === "fillet")?.order.parts).toMatchObject([{ quantity: 24, lengthMm: 3000 }, { quantity: 24, lengthMm: 305 }]);
  }, 60_000);

  it("is for the form sets asked for", async () => {
    const { groups: [group] } = valueOf(await getCuttingOrder(company.owner, { projectId: project.projectId }));
    const two = valueOf(await getCuttingOrder(company.owner, { projectId: project.projectId, levelId: project.levels["Ground"], sets: [{ size: group?.size ?? "", count: 2 }] }));
    expect(two.orders.sheets.parts.reduce((sum, part) => sum + part.quantity, 0)).toBe(16);
    const none = valueOf(await planCutting(company.owner, { projectId: project.projectId, sets: [] }));
    expect(none.sheets).toMatchObject({ ok: true, value: { cost: 0, layouts: [] } });
  }, 60_000);

  it("knows no level of another project", async () => {
    const other = await aProject(company.owner, { name: "Other" });
    expect(refusal(await getCuttingOrder(company.owner, { projectId: project.projectId, levelId: other.levels["Ground"] }))).toBe("not-found");
  });
});

describe("the stock", () => {
  it("begins with the sheet the form sets are made with, and keeps what is saved", async () => {
    const { project: head, cuttingRule, ply } = await ruled();
    expect(cuttingRule.sheets).toMatchObject([{ lengthMm: ply.sheetLength, widthMm: ply.sheetWidth, onHand: null }]);
    const own = { ...cuttingRule, kerfMm: 4, source: "Merchant's list", sheets: [...cuttingRule.sheets, { lengthMm: 1200, widthMm: 600, price: 900, onHand: 3 }] };
    valueOf(await changeCuttingRule(company.office, { projectId: project.projectId, version: head.version, cuttingRule: own }));
    expect((await ruled()).cuttingRule).toEqual(own);
    expect(refusal(await changeCuttingRule(company.office, { projectId: project.projectId, version: head.version, cuttingRule: own }))).toBe("conflict");
  });

  it("says which piece comes out of no sheet", async () => {
    const { project: head, cuttingRule } = await ruled();
    const small = { ...cuttingRule, sheets: [{ lengthMm: 1200, widthMm: 600, price: 900, onHand: null }] };
    valueOf(await changeCuttingRule(company.office, { projectId: project.projectId, version: head.version, cuttingRule: small }));
    const { sheets } = valueOf(await planCutting(company.owner, { projectId: project.projectId }));
    expect(refusal(sheets)).toBe("part-larger-than-sheet");
  }, 60_000);

  it("must have a sheet that can be bought", async () => {
    const { project: head, cuttingRule } = await ruled();
    const none = { ...cuttingRule, sheets: [{ lengthMm: 2440, widthMm: 1220, price: 900, onHand: 3 }] };
    expect(refusal(await changeCuttingRule(company.office, { projectId: project.projectId, version: head.version, cuttingRule: none }))).toBe("invalid");
  });
});
