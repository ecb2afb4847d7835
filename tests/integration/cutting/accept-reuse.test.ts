import { beforeAll, describe, expect, it } from "vitest";
import { addColumns } from "#lib/server/columns/change-columns.ts";
import { getColumn } from "#lib/server/columns/get-column.ts";
import { acceptReuse } from "#lib/server/cutting/reuse/accept-reuse.ts";
import { getReuseOrder, planReuseOf } from "#lib/server/cutting/reuse/plan-reuse.ts";
import { getCuttingOrder } from "#lib/server/cutting/plan-cutting.ts";
import { withdrawReserved } from "#lib/server/cutting/reuse/withdraw-reserved.ts";
import { cutDownPanel, makePanels, recordPanelEvent } from "#lib/server/gear/panels/change-panels.ts";
import { assignSet } from "#lib/server/gear/panels/form-sets.ts";
import { gatherLines } from "#lib/server/gear/pages/gather-lines.ts";
import { cutReserved } from "#lib/server/gear/reserved/cut-reserved.ts";
import { getPanel } from "#lib/server/gear/pages/get-panels.ts";
import type { ReuseLine } from "#lib/contracts/planning/reuse.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { A_PANEL, aFormSet, aPanel } from "#tests/support/builders/a-form-set.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { aSiteEvent, anId, aTick } from "#tests/support/builders/a-site-event.ts";
import { gearOf, NOON } from "#tests/support/builders/a-stock.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask } from "#tests/support/raw-sql.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Sedge Boxing")), 120_000);

let count = 0;
/** One column on the ground whose form set is made and assigned, and one of the same size above it. */
async function twoStorey(gridX: readonly string[] = ["A"]) {
  const project = await aProject(company.owner, { name: `Two storeys ${(count += 1)}`, gridX, gridY: ["1"] });
  const { projectId, levels, marks, columnIds: lower } = project;
  const lift = { projectId, markId: marks["K1"] ?? "", fromLevelId: levels["First"] ?? "", toLevelId: levels["Roof"] ?? "", headedBy: "slab" as const };
  const upper = valueOf(await addColumns(company.owner, { ...lift, gridRefs: [...project.gridRefs] })).columnIds;
  const plan = async (whole = false) => valueOf(await planReuseOf(company.office, { projectId, whole }));
  const accept = (lines: readonly ReuseLine[], { by = company.owner, whole = false }: { by?: Caller; whole?: boolean } = {}) => acceptReuse(by, { projectId, whole, lines: [...lines] });
  const column = async (columnId: string) => valueOf(await getColumn(company.owner, { projectId, columnId })).state;
  const tick = async (columnId: string, ...stages: ("stood" | "poured" | "stripped")[]) => {
    const hours = { stood: 60, poured: 40, stripped: 1 };
    const events = stages.map((stage) => aTick(columnId, stage, { at: new Date(Date.now() - hours[stage] * 3_600_000).toISOString(), reason: "Keyed late" }));
    return valueOf(await recordSiteEvents(company.leadingHand, { projectId, saved: true, events }));
  };
  const lines = (state = "open") => ask<{ id: string; face: string; column_id: string; item_id: string | null; ended_as: string | null; reason: string | null }>(
    database.url, `select * from panel_reservation where project_id = $1 and ${state === "open" ? "ended_at is null" : "ended_as = $2"} order by column_id, face`, state === "open" ? [projectId] : [projectId, state]);
  const setFor = async (columnId: string, name: string) => {
    const made = await aFormSet(company.owner, projectId, columnId, name);
    valueOf(await assignSet(company.owner, { projectId, setId: made.setId, columnId, happenedAt: new Date(Date.now() - 90 * 3_600_000).toISOString() }));
    return made;
  };
  return { projectId, lower: lower[0] ?? "", upper: upper[0] ?? "", lowers: lower, uppers: upper, plan, accept, column, tick, lines, setFor };
}

describe("an accepted reuse plan", () => {
  it("gives the column above the set that comes off the one below, and the cut without cutting", async () => {
    const site = await twoStorey();
    const { setId, itemIds } = await site.setFor(site.lower, "S-1");
    const { lines, plan } = await site.plan();
    // One size on both levels, so all four faces take a panel of the set as it is.
    expect(plan).toMatchObject({ newPanels: 0, cutDowns: 0, cost: 0, proven: true });
    expect(valueOf(await site.accept(lines))).toMatchObject({ lines: 4 });
    expect((await site.column(site.upper)).done).toBe(0);
    await site.tick(site.lower, "stood", "poured", "stripped");
    expect((await site.column(site.upper)).done).toBe(1);
    // The set stays together: the same four panels, on the same faces, are the same set.
    const assigned = await ask(database.url, "select set_id from gear_assignment where column_id = $1 and withdrawn_at is null", [site.upper]);
    expect(assigned).toEqual([{ set_id: setId }]);
    await site.tick(site.upper, "stood");
    expect((await site.lines("served")).map(({ item_id: item }) => item).sort()).toEqual([...itemIds].sort());
    expect(await site.lines()).toEqual([]);
  });

  it("takes the cut back with the tick that brought the panels, and gives it again", async () => {
    const site = await twoStorey();
    await site.setFor(site.lower, "S-1");
    valueOf(await site.accept((await site.plan()).lines));
    const { answers } = await site.tick(site.lower, "stood", "poured", "stripped");
    expect((await site.column(site.upper)).done).toBe(1);
    const withdrawn = aSiteEvent("withdrawn", site.lower, { eventId: answers[2]?.id ?? "" }, { reason: "Wrong column" });
    valueOf(await recordSiteEvents(company.leadingHand, { projectId: site.projectId, events: [withdrawn] }));
    expect((await site.column(site.upper)).done).toBe(0);
    expect(await site.lines()).toHaveLength(4);
    await site.tick(site.lower, "stripped");
    expect((await site.column(site.upper)).done).toBe(1);
  });

  it("leaves the set to a column its panels were gathered for before it stands", async () => {
    const site = await twoStorey();
    const { itemIds } = await site.setFor(site.lower, "S-1");
    valueOf(await site.accept((await site.plan()).lines));
    await site.tick(site.lower, "stood", "poured", "stripped");
    const bay = (await gearOf(company.owner, site.projectId)).place("cleaning bay");
    const gathered = { movementId: anId(), happenedAt: new Date().toISOString(), to: { what: "columns" as const }, lines: itemIds.map((itemId) => ({ itemId, fromId: bay, columnId: site.upper, quantity: 1 })) };
    valueOf(await gatherLines(company.leadingHand, { projectId: site.projectId, ...gathered }));
    expect([(await site.column(site.upper)).done, (await site.lines()).length]).toEqual([1, 4]);
    await site.tick(site.upper, "stood");
    expect((await site.lines("served")).map(({ item_id: item }) => item).sort()).toEqual([...itemIds].sort());
  });

  it("gives the loser of two who take one panel its name and the column it goes to", async () => {
    const site = await twoStorey(["A", "B"]);
    const { itemId, name } = await aPanel(company.owner, site.projectId, { widthMm: 600, heightMm: 3400 });
    const [first = "", second = ""] = site.lowers;
    const line = (columnId: string): ReuseLine => ({ columnId, face: "A", source: { kind: "panel", itemId } });
    const answers = await Promise.all([site.accept([line(first)]), site.accept([line(second)], { by: company.office })]);
    expect(answers.map(refusal).filter((code) => code === null)).toHaveLength(1);
    const won = answers[0]?.ok ? "A/1" : "B/1";
    expect(answers.find(({ ok }) => !ok)).toMatchObject({ failure: { code: "panel-spoken-for", values: { panel: name, column: won, level: "Ground", face: "A" } } });
    expect(await site.lines()).toHaveLength(1);
  });

  it("is settled by the database where two projects take one panel out of the yard", async () => {
    const [here, there] = [await twoStorey(), await twoStorey()];
    const yard = (await gearOf(company.owner, here.projectId)).place("yard");
    const panel = valueOf(await makePanels(company.owner, { ...A_PANEL, projectId: here.projectId, placeId: yard, heightMm: 3400 })).panels[0];
    const accept = (site: typeof here) => site.accept([{ columnId: site.lower, face: "A", source: { kind: "panel", itemId: panel?.itemId ?? "" } }]);
    const answers = await Promise.all([accept(here), accept(there)]);
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
    expect(answers.find(({ ok }) => !ok)).toMatchObject({ failure: { code: "panel-spoken-for", values: { panel: panel?.name, column: "A/1" } } });
    expect(await ask(database.url, "select 1 from panel_reservation where item_id = $1 and ended_at is null", [panel?.itemId ?? ""])).toHaveLength(1);
  });

  it("speaks for what comes off a face once, and needs the earlier line", async () => {
    const site = await twoStorey(["A", "B"]);
    const [before = ""] = site.lowers;
    const after = (columnId: string): ReuseLine => ({ columnId, face: "A", source: { kind: "after", columnId: before, face: "A" } });
    const [first = "", second = ""] = site.uppers;
    expect(refusal(await site.accept([after(first)]))).toBe("earlier-line-not-chosen");
    valueOf(await site.accept([{ columnId: before, face: "A", source: { kind: "new" } }, after(first)]));
    // What was accepted stays: the panel that comes off is offered no more.
    expect(refusal(await site.accept([after(second)]))).toBe("earlier-line-not-chosen");
    const { task } = await site.plan();
    expect(task.order.panels.map(({ id }) => id)).toEqual([`${first} A`]);
  });
});

describe("a line of it", () => {
  it("that is to be cut down waits for the saw and remembers the panel it came from", async () => {
    const site = await twoStorey();
    const larger = await aPanel(company.owner, site.projectId, { widthMm: 650, heightMm: 3400 });
    const { lines } = await site.plan();
    const own = lines.filter(({ columnId, source }) => columnId === site.lower && source.kind === "panel");
    expect(own).toHaveLength(1);
    valueOf(await site.accept(own));
    const [line] = await site.lines();
    const { panel } = valueOf(await cutReserved(company.leadingHand, { projectId: site.projectId, reservationId: line?.id ?? "", happenedAt: NOON }));
    const child = valueOf(await getPanel(company.office, { projectId: site.projectId, itemId: panel?.itemId ?? "" }));
    expect(child.parent).toEqual({ itemId: larger.itemId, name: larger.name });
    expect((await site.lines())[0]?.item_id).toBe(panel?.itemId);
    expect(refusal(await cutReserved(company.leadingHand, { projectId: site.projectId, reservationId: line?.id ?? "", happenedAt: NOON }))).toBe("panel-cut-already");
  });

  it("that uses a panel again leaves its face out of the cutting plan", async () => {
    const site = await twoStorey(["A", "B"]);
    const { itemId } = await aPanel(company.owner, site.projectId, { widthMm: 650, heightMm: 3400 });
    valueOf(await site.accept([{ columnId: site.lower, face: "A", source: { kind: "panel", itemId } }]));
    const { groups } = valueOf(await getCuttingOrder(company.office, { projectId: site.projectId }));
    // Two columns of one size: of the first B, C and D are new, of the second all four; seven panels of two pieces each.
    expect(groups.map(({ faces, sets }) => ({ faces, sets }))).toEqual([{ faces: null, sets: 1 }, { faces: "BCD", sets: 1 }]);
    expect(groups.flatMap(({ cutting, sets }) => cutting.filter(({ part }) => part === "ply").map(({ count: pieces }) => pieces * sets)).reduce((sum, pieces) => sum + pieces, 0)).toBe(14);
    expect(groups.flatMap(({ cutting }) => cutting.filter(({ part }) => part === "fillet").map(({ count: strips }) => strips))).toEqual([4, 3]);
  });

  it("that asks for new panels gets them as they are made, and the column its cut", async () => {
    const site = await twoStorey();
    const { lines, task } = await site.plan();
    valueOf(await site.accept(lines));
    const stock = await gearOf(company.owner, site.projectId);
    for (const { columnId, widthMm, heightMm } of Object.values(task.wanted)) {
      if (columnId === site.lower) valueOf(await makePanels(company.leadingHand, { ...A_PANEL, projectId: site.projectId, placeId: stock.place("rack"), widthMm, heightMm }));
    }
    expect((await site.column(site.lower)).done).toBe(1);
    expect((await site.lines()).filter(({ item_id: item }) => item !== null)).toHaveLength(4);
  });

  it("falls with a panel found damaged after stripping: the cut goes, and the face is planned again", async () => {
    const site = await twoStorey();
    const { itemIds } = await site.setFor(site.lower, "S-1");
    valueOf(await site.accept((await site.plan()).lines));
    await site.tick(site.lower, "stood", "poured", "stripped");
    const damage = { projectId: site.projectId, itemId: itemIds[0] ?? "", kind: "damaged" as const, happenedAt: new Date().toISOString(), reason: "Corner broken out" };
    valueOf(await recordPanelEvent(company.leadingHand, damage));
    expect((await site.column(site.upper)).done).toBe(0);
    const [fallen] = await site.lines("fallen");
    expect(fallen).toMatchObject({ column_id: site.upper, reason: expect.stringMatching(/^P-\d+ is damaged: Corner broken out$/) as string });
    const { lines } = await site.plan();
    expect(lines).toEqual([{ columnId: site.upper, face: fallen?.face, source: { kind: "new" } }]);
    // Repaired, it is offered again.
    valueOf(await recordPanelEvent(company.leadingHand, { ...damage, kind: "repaired", reason: "Plugged" }));
    expect((await site.plan()).lines).toEqual([{ columnId: site.upper, face: fallen?.face, source: { kind: "panel", itemId: itemIds[0] } }]);
    valueOf(await site.accept((await site.plan()).lines));
    expect((await site.column(site.upper)).done).toBe(1);
  });

  it("falls when its panel is cut into something else", async () => {
    const site = await twoStorey();
    const { itemId } = await aPanel(company.owner, site.projectId, { widthMm: 600, heightMm: 3400 });
    valueOf(await site.accept([{ columnId: site.lower, face: "A", source: { kind: "panel", itemId } }]));
    valueOf(await cutDownPanel(company.leadingHand, { projectId: site.projectId, itemId, happenedAt: NOON, pieces: [{ widthMm: 200, heightMm: 600 }], brought: 0 }));
    expect(await site.lines("fallen")).toMatchObject([{ reason: expect.stringMatching(/is cut down/) as string }]);
  });

  it("is withdrawn with a reason, and the set and its cut with it", async () => {
    const site = await twoStorey();
    await site.setFor(site.lower, "S-1");
    valueOf(await site.accept((await site.plan()).lines));
    await site.tick(site.lower, "stood", "poured", "stripped");
    const [line] = await site.lines();
    expect(refusal(await withdrawReserved(company.office, { projectId: site.projectId, reservationIds: [line?.id ?? ""], reason: "" }))).toBe("invalid");
    valueOf(await withdrawReserved(company.office, { projectId: site.projectId, reservationIds: [line?.id ?? ""], reason: "Wanted elsewhere" }));
    expect((await site.column(site.upper)).done).toBe(0);
    expect(await site.lines()).toHaveLength(3);
  });
});

describe("a newer plan of the whole", () => {
  it("takes the place of the older one's open lines, and nothing is doubled", async () => {
    const site = await twoStorey(["A", "B"]);
    const older = await site.plan();
    valueOf(await site.accept(older.lines));
    expect((await site.plan()).lines).toEqual([]);
    const newer = await site.plan(true);
    expect(newer.lines).toEqual(older.lines);
    valueOf(await site.accept(newer.lines, { whole: true }));
    expect(await site.lines()).toHaveLength(older.lines.length);
    expect(await site.lines("superseded")).toHaveLength(older.lines.length);
    // Shown before that, accepted after it: the one who comes late is told.
    expect(refusal(await site.accept(older.lines))).toBe("face-spoken-for");
  });

  it("leaves alone a column that has its set", async () => {
    const site = await twoStorey();
    await site.setFor(site.lower, "S-1");
    valueOf(await site.accept((await site.plan()).lines));
    await site.tick(site.lower, "stood", "poured", "stripped");
    const { order } = valueOf(await getReuseOrder(company.owner, { projectId: site.projectId, whole: true }));
    expect(order.demands).toEqual([]);
  });
});
