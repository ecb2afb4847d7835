import { beforeAll, describe, expect, it } from "vitest";
import { getColumn } from "#lib/server/columns/get-column.ts";
import { getPanel } from "#lib/server/gear/pages/get-panels.ts";
import { cutDownPanel, recordPanelEvent, withdrawPanelEvent } from "#lib/server/gear/panels/change-panels.ts";
import { assignSet, saveFormSet, unassignSet } from "#lib/server/gear/panels/form-sets.ts";
import { moveGear } from "#lib/server/gear/move-gear.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aFormSet, aPanel } from "#tests/support/builders/a-form-set.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { gearOf, NOON } from "#tests/support/builders/a-stock.ts";
import { aTick } from "#tests/support/builders/a-site-event.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask } from "#tests/support/raw-sql.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Burdock Boxing")));

let count = 0;
async function aSite() {
  const { projectId, columnIds } = await aProject(company.owner, { name: `Site ${(count += 1)}` });
  const column = (index: number): string => columnIds[index] ?? "";
  const panel = async (itemId: string) => valueOf(await getPanel(company.office, { projectId, itemId })).panel;
  const tick = async (columnId: string, ...stages: ("stood" | "poured" | "stripped")[]) => {
    const hours = { stood: 60, poured: 40, stripped: 1 };
    const events = stages.map((stage) => aTick(columnId, stage, { at: new Date(Date.now() - hours[stage] * 3_600_000).toISOString(), reason: "Keyed late" }));
    return valueOf(await recordSiteEvents(company.leadingHand, { projectId, saved: true, events }));
  };
  const doneOf = async (columnId: string) => valueOf(await getColumn(company.owner, { projectId, columnId })).state.done;
  return { projectId, column, panel, tick, doneOf };
}

describe("a set assigned to a column", () => {
  it("earns the cut, goes to the column when it is stood, and has one use more when it is stripped", async () => {
    const { projectId, column, panel, tick, doneOf } = await aSite();
    const { setId, itemIds } = await aFormSet(company.owner, projectId, column(0), "S-1");
    expect(valueOf(await assignSet(company.office, { projectId, setId, columnId: column(0), happenedAt: NOON.replace("2031", "2026") }))).toMatchObject({ earnedCut: true });
    expect(await doneOf(column(0))).toBe(1);
    await tick(column(0), "stood");
    for (const itemId of itemIds) expect(await panel(itemId)).toMatchObject({ placeKind: "column", columnId: column(0), life: { uses: 0 } });
    await tick(column(0), "poured", "stripped");
    for (const itemId of itemIds) expect(await panel(itemId)).toMatchObject({ placeKind: "cleaning bay", life: { uses: 1, costPerUse: 5200 } });
    // The next column takes them straight from the bay.
    valueOf(await assignSet(company.leadingHand, { projectId, setId, columnId: column(1), happenedAt: new Date().toISOString() }));
    valueOf(await recordSiteEvents(company.leadingHand, { projectId, events: [aTick(column(1), "stood")] }));
    expect(await panel(itemIds[0] ?? "")).toMatchObject({ columnId: column(1) });
  });

  it("is refused where it does not fit, where there is one, and taken off with the cut it earned", async () => {
    const { projectId, column, doneOf } = await aSite();
    const { setId, itemIds } = await aFormSet(company.owner, projectId, column(0), "S-1");
    const narrow = await aPanel(company.owner, projectId, { widthMm: 200 });
    const other = valueOf(await saveFormSet(company.owner, { projectId, name: "S-2", panels: [{ face: "A", itemId: narrow.itemId }] })).id;
    const assign = (which: string) => assignSet(company.owner, { projectId, setId: which, columnId: column(0), happenedAt: new Date().toISOString() });
    expect(refusal(await assign(other))).toBe("set-does-not-fit");
    const { id: assignmentId } = valueOf(await assign(setId));
    expect(refusal(await assign(setId))).toBe("column-has-set");
    expect(refusal(await saveFormSet(company.owner, { projectId, name: "S-3", panels: [{ face: "A", itemId: itemIds[0] ?? "" }] }))).toBe("panel-in-other-set");
    valueOf(await unassignSet(company.owner, { projectId, assignmentId, reason: "Another crew has it" }));
    expect(await doneOf(column(0))).toBe(0);
  });

  it("that stands elsewhere on the ledger is noted as short, never refused, never at two places", async () => {
    const { projectId, column, tick } = await aSite();
    const { setId, itemIds } = await aFormSet(company.owner, projectId, column(0), "S-1");
    for (const index of [0, 1]) valueOf(await assignSet(company.owner, { projectId, setId, columnId: column(index), happenedAt: new Date().toISOString() }));
    await tick(column(0), "stood");
    await tick(column(1), "stood");
    const places = await ask(database.url, "select item_id from gear_balance where item_id = any($1::uuid[]) and quantity = 1", [itemIds]);
    expect(places).toHaveLength(4);
    expect(await ask(database.url, "select 1 from gear_shortfall where column_id = $1", [column(1)])).toHaveLength(4);
  });
});

describe("a panel", () => {
  it("is at one place: of two who move it at once one does", async () => {
    const { projectId, panel } = await aSite();
    const { itemId } = await aPanel(company.owner, projectId);
    const stock = await gearOf(company.owner, projectId);
    const move = (toId: string) => moveGear(company.leadingHand, { projectId, fromId: stock.place("rack"), toId, happenedAt: NOON, lines: [{ itemId, quantity: 1 }] });
    const answers = (await Promise.all([move(stock.place("cleaning bay")), move(stock.place("yard"))])).map(refusal);
    expect(answers.filter((answer) => answer === null)).toHaveLength(1);
    expect(answers).toContain("gear-not-there");
    expect(["cleaning bay", "yard"]).toContain((await panel(itemId)).placeKind);
  });

  it("is cut down one way, into panels that know where they came from", async () => {
    const { projectId, panel } = await aSite();
    const { itemId, name } = await aPanel(company.owner, projectId);
    const cut = (pieces: { widthMm: number; heightMm: number }[]) => cutDownPanel(company.leadingHand, { projectId, itemId, happenedAt: NOON, pieces, brought: 100 });
    expect(refusal(await cut([{ widthMm: 601, heightMm: 3200 }]))).toBe("panel-cut-larger");
    const { panels } = valueOf(await cut([{ widthMm: 300, heightMm: 3200 }, { widthMm: 297, heightMm: 3200 }]));
    expect(refusal(await cut([{ widthMm: 100, heightMm: 100 }]))).toBe("panel-ended");
    const child = valueOf(await getPanel(company.office, { projectId, itemId: panels[0]?.itemId ?? "" }));
    expect(child).toMatchObject({ parent: { itemId, name }, panel: { placeKind: "rack", sheetBatch: "B-77", sheetCost: 50 } });
    expect((await panel(itemId)).life).toMatchObject({ ended: { kind: "cut down" }, cost: 5100 });
  });

  it("is scrapped with a reason, and back where it was when that is withdrawn", async () => {
    const { projectId, panel } = await aSite();
    const { itemId } = await aPanel(company.owner, projectId);
    const scrap = (reason: string) => recordPanelEvent(company.leadingHand, { projectId, itemId, kind: "scrapped", happenedAt: NOON, reason });
    expect(refusal(await scrap(" "))).toBe("invalid");
    const { id: eventId } = valueOf(await scrap("Edges swollen"));
    expect(await panel(itemId)).toMatchObject({ placeKind: "scrapped", life: { ended: { reason: "Edges swollen" } } });
    valueOf(await withdrawPanelEvent(company.owner, { projectId, eventId, reason: "Another panel" }));
    expect(refusal(await withdrawPanelEvent(company.owner, { projectId, eventId, reason: "Again" }))).toBe("panel-event-withdrawn");
    expect(await panel(itemId)).toMatchObject({ placeKind: "rack", life: { ended: null } });
  });
});
