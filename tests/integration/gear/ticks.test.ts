import { beforeAll, describe, expect, it } from "vitest";
import type { ProposedEventInput } from "#lib/contracts/progress.ts";
import { getColumn } from "#lib/server/columns/get-column.ts";
import { cleanGear, reverseMovement } from "#lib/server/gear/move-gear.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { anotherRack, aStock, gearOf, NOON } from "#tests/support/builders/a-stock.ts";
import { aSiteEvent, aTick } from "#tests/support/builders/a-site-event.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask } from "#tests/support/raw-sql.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Teasel Boxing")));

let count = 0;
/** A site whose rack holds clamps of the kind its columns are designed with. */
async function aSite(opened: { clamps: number; wedges: number } | null) {
  const project = await aProject(company.owner, { name: `Site ${(count += 1)}` });
  const { projectId, columnIds } = project;
  const column = (index: number): string => columnIds[index] ?? "";
  const { form } = valueOf(await getColumn(company.owner, { projectId, columnId: column(0) }));
  if (!form.formSet.ok) throw new Error("The columns of the test have no form set.");
  const { kind, heights } = form.formSet.value.clamps;
  const stock = opened === null ? await gearOf(company.owner, projectId) : await aStock(company.owner, projectId, { [kind.name]: opened.clamps, Wedge: opened.wedges });
  const record = async (...events: ProposedEventInput[]) => valueOf(await recordSiteEvents(company.leadingHand, { projectId, events, saved: true })).answers;
  return { projectId, column, stock, set: stock.item(kind.name), wedge: stock.item("Wedge"), clamps: heights.length, record, at: (itemId: string, where: string, columnId?: string) => pieces(projectId, itemId, where, columnId) };
}
const pieces = async (projectId: string, itemId: string, kind: string, columnId: string | null = null): Promise<number> =>
  (await ask<{ sum: number }>(database.url, `select coalesce(sum(b.quantity), 0)::int sum from gear_balance b join gear_place p on p.id = b.place_id
    where b.item_id = $1 and p.kind = $2 and ($3::uuid is null or p.column_id = $3) and p.project_id = $4`, [itemId, kind, columnId, projectId]))[0]?.sum ?? 0;
const shortfalls = (projectId: string) =>
  ask(database.url, "select about, kind, quantity, settled_as from gear_shortfall where project_id = $1 order by kind, quantity", [projectId]);

const hoursAgo = (hours: number): string => new Date(Date.now() - hours * 3_600_000).toISOString();
const aPour = (columnId: string): ProposedEventInput => aTick(columnId, "poured", { at: hoursAgo(40), reason: "Keyed the next day" });

describe("ticks on columns", () => {
  it("move clamps and wedges to the column, to the cleaning bay and, cleaned, back to the rack", async () => {
    const site = await aSite({ clamps: 60, wedges: 300 });
    await site.record(aTick(site.column(0), "clamped"));
    // Each clamp is one set with four wedges.
    expect([await site.at(site.set, "column", site.column(0)), await site.at(site.wedge, "column"), await site.at(site.set, "rack")]).toEqual([site.clamps, site.clamps * 4, 60 - site.clamps]);
    await site.record(aPour(site.column(0)), aTick(site.column(0), "stripped"));
    expect([await site.at(site.set, "column"), await site.at(site.set, "cleaning bay")]).toEqual([0, site.clamps]);
    valueOf(await cleanGear(company.leadingHand, { projectId: site.projectId, happenedAt: NOON, fromId: site.stock.place("cleaning bay"), toId: site.stock.place("rack") }));
    expect([await site.at(site.set, "rack"), await site.at(site.wedge, "rack"), await site.at(site.set, "cleaning bay")]).toEqual([60, 300, 0]);
    expect(await shortfalls(site.projectId)).toEqual([]);
  });

  it("are told once, however often they are sent", async () => {
    const site = await aSite({ clamps: 60, wedges: 300 });
    const tick = aTick(site.column(0), "clamped");
    for (let round = 0; round < 3; round += 1) await site.record(tick, aTick(site.column(0), "clamped"));
    expect(await site.at(site.set, "column")).toBe(site.clamps);
  });

  it("taken back or set back take their gear with them, and stand again when told again", async () => {
    const site = await aSite({ clamps: 60, wedges: 300 });
    const tick = aTick(site.column(0), "clamped");
    await site.record(tick);
    await site.record(aSiteEvent("withdrawn", site.column(0), { eventId: tick.id ?? "" }));
    expect([await site.at(site.set, "column"), await site.at(site.set, "rack")]).toEqual([0, 60]);
    await site.record(aTick(site.column(0), "clamped"));
    expect(await site.at(site.set, "column")).toBe(site.clamps);
    await site.record(aSiteEvent("set-back", site.column(0), { to: "cut", cause: "others" }, { reason: "Cast-in left out" }));
    expect([await site.at(site.set, "column"), await site.at(site.wedge, "rack")]).toEqual([0, 300]);
  });

  it("are taken whatever the ledger holds, and what is short waits for the office", async () => {
    const site = await aSite({ clamps: 3, wedges: 5 });
    const [answer] = await site.record(aTick(site.column(0), "clamped"));
    expect(answer?.outcome).toBe("accepted");
    expect([await site.at(site.set, "column"), await site.at(site.wedge, "column")]).toEqual([3, 5]);
    const short = [["clamped", site.clamps - 3], ["clamped", site.clamps * 4 - 5]].sort((a, b) => Number(a[1]) - Number(b[1]));
    expect((await shortfalls(site.projectId)).map(({ kind, quantity }) => [kind, quantity])).toEqual(short);
    await site.record(aTick(site.column(0), "clamped"));
    expect(await shortfalls(site.projectId)).toHaveLength(2);
    await site.record(aSiteEvent("set-back", site.column(0), { to: null, cause: "ours" }, { reason: "Wrong side of the grid" }));
    expect((await shortfalls(site.projectId)).map((row) => row["settled_as"])).toEqual(["gone", "gone"]);
  });

  it("taken back after their gear has gone on are noted, and the gear stays where it is", async () => {
    const site = await aSite({ clamps: 60, wedges: 300 });
    const strip = aTick(site.column(0), "stripped");
    await site.record(aPour(site.column(0)), strip);
    const bay = site.stock.place("cleaning bay");
    valueOf(await cleanGear(company.leadingHand, { projectId: site.projectId, happenedAt: NOON, fromId: bay, toId: await anotherRack(company.owner, site.projectId, "Far rack") }));
    const [answer] = await site.record(aSiteEvent("withdrawn", site.column(0), { eventId: strip.id ?? "" }, { reason: "Ticked on the wrong column" }));
    expect(answer?.outcome).toBe("accepted");
    expect(await site.at(site.set, "rack")).toBe(60);
    expect((await shortfalls(site.projectId)).map(({ about, kind }) => [about, kind])).toEqual([["gone on", "stripped"], ["gone on", "stripped"]]);
  });

  it("leave no trace where the project keeps no gear", async () => {
    const site = await aSite(null);
    await site.record(aTick(site.column(0), "stripped"));
    expect(await ask(database.url, "select 1 from gear_movement where project_id = $1 union all select 1 from gear_shortfall where project_id = $1", [site.projectId])).toEqual([]);
  });

  it("are taken back with their tick, not on the Gear page", async () => {
    const site = await aSite({ clamps: 60, wedges: 300 });
    await site.record(aTick(site.column(0), "clamped"));
    const [movement] = await ask<{ id: string }>(database.url, "select id::text from gear_movement where project_id = $1 and kind = 'clamped'", [site.projectId]);
    expect(refusal(await reverseMovement(company.owner, { projectId: site.projectId, movementId: movement?.id ?? "", reason: "Not used" }))).toBe("movement-follows-tick");
  });
});
