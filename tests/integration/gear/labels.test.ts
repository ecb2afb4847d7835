import { beforeAll, describe, expect, it } from "vitest";
import type { LabelKind } from "#lib/contracts/gear.ts";
import { findLabelled, listLabels } from "#lib/server/gear/pages/labels.ts";
import { recordPanelEvent } from "#lib/server/gear/panels/change-panels.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aFormSet, aPanel } from "#tests/support/builders/a-form-set.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { anId } from "#tests/support/builders/a-site-event.ts";
import { NOON } from "#tests/support/builders/a-stock.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Saltbush Shutters")));

async function aSite() {
  const { projectId, columnIds } = await aProject(company.owner, { name: `Site ${anId()}` });
  const set = await aFormSet(company.owner, projectId, columnIds[0] ?? "", "S-1");
  return { projectId, columnIds, ...set };
}
const listed = async (projectId: string, kind: LabelKind) => valueOf(await listLabels(company.leadingHand, { projectId, kind })).labels;

describe("labels", () => {
  it("are for every column of a level, every set and every panel that has not ended", async () => {
    const { projectId, columnIds, setId, itemIds } = await aSite();
    expect((await listed(projectId, "column")).map(({ id }) => id).sort()).toEqual([...columnIds].sort());
    expect((await listed(projectId, "set")).map(({ id, panels }) => [id, panels.length])).toEqual([[setId, 4]]);
    const before = (await listed(projectId, "panel")).map(({ id }) => id);
    expect(before).toEqual(expect.arrayContaining([...itemIds]));
    const scrapped = await aPanel(company.owner, projectId);
    valueOf(await recordPanelEvent(company.owner, { projectId, itemId: scrapped.itemId, kind: "scrapped", happenedAt: NOON, reason: "Split", amount: 0 }));
    expect((await listed(projectId, "panel")).map(({ id }) => id)).toEqual(before);
  });

  it("lead to what they name, and nowhere for an id of nothing, another kind, another company or a stranger", async () => {
    const { projectId, columnIds, setId, itemIds } = await aSite();
    const [column = "", panel = ""] = [columnIds[0], itemIds[0]];
    const find = (kind: LabelKind, id: string, by = company.leadingHand) => findLabelled(by, { projectId, kind, id });
    for (const [kind, id] of [["column", column], ["panel", panel], ["set", setId]] as const) expect(valueOf(await find(kind, id))).toMatchObject({ kind, id, projectId });
    for (const [kind, id] of [["column", anId()], ["panel", anId()], ["set", anId()], ["set", column], ["column", panel]] as const) {
      expect(await find(kind, id)).toMatchObject({ ok: false, failure: { kind: "not-found" } });
    }
    const others = await aCompany("Mallow Forms");
    expect(await find("column", column, others.owner)).toMatchObject({ ok: false, failure: { kind: "not-found" } });
    expect(await findLabelled(null, { projectId, kind: "column", id: column })).toMatchObject({ ok: false, failure: { kind: "not-signed-in" } });
  });
});
