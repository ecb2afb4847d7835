import { beforeAll, describe, expect, it } from "vitest";
import { addColumns, removeColumns } from "#lib/server/columns/change-columns.ts";
import { savePlannedDays } from "#lib/server/pours/planned-days.ts";
import { planReuseOf } from "#lib/server/cutting/reuse/plan-reuse.ts";
import { checkReusePlan } from "#lib/trade/planning/reuse/check-reuse-plan.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject, type Project } from "#tests/support/builders/a-project.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase();
let company: Company;
let project: Project;
let upper: readonly string[];
beforeAll(async () => {
  company = await aCompany("Second Use Boxing");
  project = await aProject(company.owner);
  const { levels, marks, gridRefs, projectId } = project;
  const lift = { projectId, markId: marks["K1"] ?? "", fromLevelId: levels["First"] ?? "", toLevelId: levels["Roof"] ?? "", headedBy: "slab" as const };
  upper = valueOf(await addColumns(company.owner, { ...lift, gridRefs: [...gridRefs] })).columnIds;
}, 120_000);

const planned = async () => {
  const { task, plan } = valueOf(await planReuseOf(company.leadingHand, { projectId: project.projectId }));
  expect(checkReusePlan(task.order, plan)).toEqual([]);
  return { task, plan };
};

describe("panels to use again", () => {
  it("go from level to level while days are not known", async () => {
    const { task, plan } = await planned();
    // Six columns a level, four panels each, both levels of one size and height: the lower level's 24 are new, the upper's none.
    expect(task.by).toBe("level");
    expect(plan).toMatchObject({ newPanels: 24, cutDowns: 0, proven: true });
  }, 60_000);

  it("go from column to column by their days", async () => {
    // Column after column, a week apart: stood Monday, poured Tuesday, stripped a day later and clean the day after.
    valueOf(await removeColumns(company.owner, { projectId: project.projectId, columnIds: [...upper], reason: "Left out by the engineer" }));
    const days = project.columnIds.map((columnId, index) => {
      const monday = new Date(Date.UTC(2031, 2, 3 + 7 * index)).toISOString().slice(0, 10);
      const tuesday = new Date(Date.UTC(2031, 2, 4 + 7 * index)).toISOString().slice(0, 10);
      return { columnId, pour: null, stoodOn: monday, pouredOn: tuesday };
    });
    valueOf(await savePlannedDays(company.owner, { projectId: project.projectId, columns: days }));
    const { task, plan } = await planned();
    expect(task.by).toBe("day");
    // Six columns in a row take one set of four panels, since a film face holds seven pours.
    expect(plan).toMatchObject({ newPanels: 4, cutDowns: 0, proven: true });
  }, 60_000);
});
