import { beforeAll, describe, expect, it } from "vitest";
import { getColumn } from "#lib/server/columns/get-column.ts";
import { reverseMovement } from "#lib/server/gear/move-gear.ts";
import { gather } from "#lib/server/gear/pages/gather.ts";
import { gatherLines } from "#lib/server/gear/pages/gather-lines.ts";
import { assignSet } from "#lib/server/gear/panels/form-sets.ts";
import { savePlace } from "#lib/server/gear/stock.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aFormSet } from "#tests/support/builders/a-form-set.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { aSiteEvent, anId, aTick } from "#tests/support/builders/a-site-event.ts";
import { aStock } from "#tests/support/builders/a-stock.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask } from "#tests/support/raw-sql.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Yarrow Boxing")));

let count = 0;
/** A truck, clamps in the rack, and a set of panels assigned to the first column. */
async function aSite() {
  const { projectId, columnIds } = await aProject(company.owner, { name: `Site ${(count += 1)}` });
  const columnId = columnIds[0] ?? "";
  const { form } = valueOf(await getColumn(company.owner, { projectId, columnId }));
  if (!form.formSet.ok) throw new Error("The columns of the test have no form set.");
  const { kind, heights } = form.formSet.value.clamps;
  const stock = await aStock(company.owner, projectId, { [kind.name]: 60, Wedge: 300 });
  const { id: truckId } = valueOf(await savePlace(company.owner, { projectId, kind: "truck", name: "Flatbed" }));
  const set = await aFormSet(company.owner, projectId, columnId, `S-${count}`);
  valueOf(await assignSet(company.owner, { projectId, setId: set.setId, columnId, happenedAt: new Date().toISOString() }));
  const list = async () => valueOf(await gather(company.leadingHand, { projectId, columnIds: [columnId] })).list;
  const post = async (to: "truck" | "columns", itemIds?: readonly string[], movementId = anId()) => gatherLines(company.leadingHand, {
    projectId, movementId, happenedAt: new Date().toISOString(), to: to === "truck" ? { what: "truck", truckId } : { what: "columns" },
    lines: (await list()).take.filter(({ itemId }) => itemIds?.includes(itemId) ?? true).flatMap(({ itemId, placeId, columns }) => columns.map((each) => ({ itemId, fromId: placeId, ...each }))),
  });
  const tick = async (stage: "stood" | "clamped") => valueOf(await recordSiteEvents(company.leadingHand, { projectId, saved: true, events: [aTick(columnId, stage)] }));
  const at = async (itemId: string, place: string): Promise<number> =>
    (await ask<{ sum: number }>(database.url, "select coalesce(sum(b.quantity), 0)::int sum from gear_balance b join gear_place p on p.id = b.place_id where b.item_id = $1 and p.kind = $2 and p.project_id = $3", [itemId, place, projectId]))[0]?.sum ?? 0;
  return { projectId, columnId, truckId, clamp: stock.item(kind.name), wedge: stock.item("Wedge"), clamps: heights.length, panels: set.itemIds, list, post, tick, at };
}

describe("a gather list", () => {
  it("moves what is ticked to the truck and on to the column, and leaves it off the list then", async () => {
    const site = await aSite();
    expect((await site.list()).take).toHaveLength(2 + 4);
    valueOf(await site.post("truck"));
    expect([await site.at(site.clamp, "truck"), await site.at(site.clamp, "rack")]).toEqual([site.clamps, 60 - site.clamps]);
    const loaded = await site.list();
    expect(new Set(loaded.take.map(({ placeId }) => placeId))).toEqual(new Set([site.truckId]));
    valueOf(await site.post("columns"));
    // Each clamp is one set with four wedges; all four panels came along.
    expect([await site.at(site.clamp, "column"), await site.at(site.wedge, "column"), await site.at(site.clamp, "truck")]).toEqual([site.clamps, site.clamps * 4, 0]);
    expect(await site.list()).toMatchObject({ take: [], short: [], elsewhere: [] });
  });

  it("is followed by ticks that move nothing twice: they take what is still missing", async () => {
    const site = await aSite();
    valueOf(await site.post("columns", [site.clamp, ...site.panels.slice(0, 3)]));
    await site.tick("stood");
    expect(await Promise.all(site.panels.map((panel) => site.at(panel, "column")))).toEqual([1, 1, 1, 1]);
    await site.tick("clamped");
    expect([await site.at(site.clamp, "column"), await site.at(site.clamp, "rack"), await site.at(site.wedge, "column")]).toEqual([site.clamps, 60 - site.clamps, site.clamps * 4]);
    expect(await ask(database.url, "select 1 from gear_shortfall where project_id = $1", [site.projectId])).toEqual([]);
    // Stripped, everything comes off once; what is told of the column afterwards puts nothing back on.
    const hoursAgo = new Date(Date.now() - 40 * 3_600_000).toISOString();
    valueOf(await recordSiteEvents(company.leadingHand, { projectId: site.projectId, saved: true, events: [aTick(site.columnId, "poured", { at: hoursAgo, reason: "Keyed the next day" }), aTick(site.columnId, "stripped", { reason: "Keyed at once" })] }));
    expect([await site.at(site.clamp, "column"), await site.at(site.clamp, "cleaning bay")]).toEqual([0, site.clamps]);
    valueOf(await recordSiteEvents(company.leadingHand, { projectId: site.projectId, saved: true, events: [aSiteEvent("held", site.columnId, {}, { reason: "Patch first" })] }));
    expect([await site.at(site.clamp, "column"), await site.at(site.clamp, "rack")]).toEqual([0, 60 - site.clamps]);
  });

  it("is taken back movement by movement, not while the form stands with it", async () => {
    const site = await aSite();
    const { movementId: loaded } = valueOf(await site.post("truck", [site.clamp]));
    const { movementId: brought } = valueOf(await site.post("columns", [site.clamp]));
    const back = (movementId: string) => reverseMovement(company.leadingHand, { projectId: site.projectId, movementId, reason: "Wrong column" });
    expect(refusal(await back(loaded))).toBe("gear-not-there");
    valueOf(await back(brought));
    valueOf(await back(loaded));
    expect([await site.at(site.clamp, "rack"), await site.at(site.clamp, "truck"), await site.at(site.clamp, "column")]).toEqual([60, 0, 0]);
    const { movementId: again } = valueOf(await site.post("columns", [site.clamp]));
    await site.tick("clamped");
    expect(refusal(await back(again))).toBe("gathered-stands");
  });

  it("sent twice moves once; two who take the same at once are told apart; a column that stands is not gathered for", async () => {
    const site = await aSite();
    const lines = (await site.list()).take.filter(({ itemId }) => itemId === site.panels[0]).flatMap(({ itemId, placeId, columns }) => columns.map((each) => ({ itemId, fromId: placeId, ...each })));
    const send = (movementId: string) => gatherLines(company.leadingHand, { projectId: site.projectId, movementId, happenedAt: new Date().toISOString(), to: { what: "columns" }, lines });
    const answers = (await Promise.all([send(anId()), send(anId())])).map(refusal);
    expect(answers.filter((answer) => answer === null)).toHaveLength(1);
    expect(await site.at(site.panels[0] ?? "", "column")).toBe(1);
    const movementId = anId();
    valueOf(await site.post("columns", [site.wedge], movementId));
    const wedges = await site.at(site.wedge, "column");
    expect(refusal(await gatherLines(company.leadingHand, { projectId: site.projectId, movementId, happenedAt: new Date().toISOString(), to: { what: "columns" }, lines: [{ itemId: site.clamp, fromId: lines[0]?.fromId ?? "", columnId: site.columnId, quantity: 1 }] }))).toBe("conflict");
    expect(await site.at(site.wedge, "column")).toBe(wedges);
    await site.tick("stood");
    expect(refusal(await send(anId()))).toBe("gather-column-stands");
  });
});

describe("what a phone kept of gathering", () => {
  const linesOf = async (site: Awaited<ReturnType<typeof aSite>>, itemId: string) =>
    (await site.list()).take.filter((line) => line.itemId === itemId).flatMap(({ placeId, columns }) => columns.map((each) => ({ itemId, fromId: placeId, ...each })));
  const movementsOf = async (projectId: string, kind: string) =>
    ask<{ id: string; happened: Date }>(database.url, "select id::text, happened_at happened from gear_movement where project_id = $1 and kind = $2", [projectId, kind]);

  it("moves once however often it comes, at once or later, and gets the same answer; under its own id and at its own moment", async () => {
    const site = await aSite();
    const happenedAt = new Date(Date.now() - 3 * 3_600_000).toISOString();
    const message = { projectId: site.projectId, movementId: anId(), personId: company.leadingHand.personId, happenedAt, to: { what: "columns" as const }, lines: await linesOf(site, site.wedge) };
    const send = () => gatherLines(company.leadingHand, message);
    const [first, second] = (await Promise.all([send(), send()])).map(valueOf);
    expect(second).toEqual(first);
    await site.tick("stood");
    expect(valueOf(await send())).toEqual(first);
    expect(await movementsOf(site.projectId, "gathered")).toEqual([{ id: message.movementId, happened: new Date(happenedAt) }]);
    // Each clamp has four wedges; sixty clamps and three hundred wedges were opened.
    expect([await site.at(site.wedge, "column"), await site.at(site.wedge, "rack")]).toEqual([site.clamps * 4, 300 - site.clamps * 4]);
  });

  it("is not taken for somebody else who is signed in by now, nor under an id another used", async () => {
    const site = await aSite();
    const message = { projectId: site.projectId, movementId: anId(), happenedAt: new Date().toISOString(), to: { what: "columns" as const }, lines: await linesOf(site, site.wedge) };
    expect(refusal(await gatherLines(company.office, { ...message, personId: company.leadingHand.personId }))).toBe("not-signed-in");
    valueOf(await gatherLines(company.leadingHand, message));
    expect(refusal(await gatherLines(company.office, message))).toBe("conflict");
    expect(await movementsOf(site.projectId, "gathered")).toHaveLength(1);
  });

  it("of two phones that took the same panel one is told that it lies there no more, and nothing else of its load moves", async () => {
    const site = await aSite();
    const [panel = ""] = site.panels;
    const [wanted, wedges] = [await linesOf(site, panel), await linesOf(site, site.wedge)];
    const send = (caller: typeof company.office, lines: typeof wanted) => gatherLines(caller, { projectId: site.projectId, movementId: anId(), happenedAt: new Date().toISOString(), to: { what: "truck", truckId: site.truckId }, lines });
    const answers = await Promise.all([send(company.leadingHand, [...wanted, ...wedges]), send(company.office, [...wanted, ...wedges])]);
    expect(answers.map(refusal).sort()).toEqual(["gear-not-there", null]);
    const [refused] = answers.flatMap((answer) => (answer.ok ? [] : [answer.failure]));
    expect(refused).toMatchObject({ kind: "rule", values: { asked: expect.any(Number) as number, there: expect.any(Number) as number } });
    expect([await site.at(panel, "truck"), await site.at(site.wedge, "truck")]).toEqual([1, site.clamps * 4]);
  });

  it("is not brought a second time where somebody else brought it since the list was read, unless that was taken back", async () => {
    const site = await aSite();
    const lines = await linesOf(site, site.wedge);
    const readAt = new Date(Date.now() - 60_000).toISOString();
    const send = (caller: typeof company.office, given = lines) => gatherLines(caller, { projectId: site.projectId, movementId: anId(), happenedAt: new Date().toISOString(), readAt, to: { what: "columns" }, lines: given });
    const { movementId } = valueOf(await send(company.office));
    const again = await send(company.leadingHand);
    expect(again).toMatchObject({ ok: false, failure: { code: "gathered-by-another", values: { item: "Wedge" } } });
    expect(await site.at(site.wedge, "column")).toBe(site.clamps * 4);
    valueOf(await send(company.leadingHand, await linesOf(site, site.clamp)));
    valueOf(await reverseMovement(company.office, { projectId: site.projectId, movementId, reason: "Wrong column" }));
    valueOf(await send(company.leadingHand));
    expect(await site.at(site.wedge, "column")).toBe(site.clamps * 4);
  });

  it("has happened once it arrives, though the phone's clock runs ahead", async () => {
    const site = await aSite();
    const tomorrow = new Date(Date.now() + 24 * 3_600_000).toISOString();
    valueOf(await gatherLines(company.leadingHand, { projectId: site.projectId, movementId: anId(), happenedAt: tomorrow, to: { what: "columns" }, lines: await linesOf(site, site.wedge) }));
    const [movement] = await movementsOf(site.projectId, "gathered");
    expect(movement?.happened.getTime()).toBeLessThanOrEqual(Date.now() + 60_000);
  });

  it("is taken back once however often that comes; by another id it is taken back already", async () => {
    const site = await aSite();
    const { movementId } = valueOf(await site.post("columns", [site.wedge]));
    const back = (reversalId: string) => reverseMovement(company.leadingHand, { projectId: site.projectId, movementId, reason: "Wrong column", reversalId, personId: company.leadingHand.personId });
    const reversalId = anId();
    expect((await Promise.all([back(reversalId), back(reversalId)])).map(valueOf)).toEqual([[reversalId], [reversalId]]);
    expect(valueOf(await back(reversalId))).toEqual([reversalId]);
    expect(await movementsOf(site.projectId, "reversed")).toHaveLength(1);
    expect(await site.at(site.wedge, "rack")).toBe(300);
    expect(refusal(await back(anId()))).toBe("movement-reversed-already");
    expect(refusal(await back(movementId))).toBe("conflict");
    expect(refusal(await reverseMovement(company.office, { projectId: site.projectId, movementId, reason: "Other", reversalId: anId(), personId: company.leadingHand.personId }))).toBe("not-signed-in");
  });
});
