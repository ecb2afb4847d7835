import { beforeAll, describe, expect, it } from "vitest";
import { getCuttingOrder } from "#lib/server/cutting/plan-cutting.ts";
import { acceptReuse } from "#lib/server/cutting/reuse/accept-reuse.ts";
import { cutReserved } from "#lib/server/gear/reserved/cut-reserved.ts";
import { getReserved } from "#lib/server/gear/reserved/get-reserved.ts";
import { reverseMovement } from "#lib/server/gear/move-gear.ts";
import { cutUpMaterial } from "#lib/server/gear/orders/stock-material.ts";
import { getPanel } from "#lib/server/gear/pages/get-panels.ts";
import { cutDownPanel, makePanels, recordPanelEvent, withdrawPanelEvent } from "#lib/server/gear/panels/change-panels.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { A_PANEL, aPanel } from "#tests/support/builders/a-form-set.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { gearOf, NOON } from "#tests/support/builders/a-stock.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask } from "#tests/support/raw-sql.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Teasel Boxing")), 120_000);

let count = 0;
async function aBench() {
  const { projectId, columnIds: [columnId = ""] } = await aProject(company.owner, { name: `Bench ${(count += 1)}` });
  const stock = await gearOf(company.owner, projectId);
  type Size = { widthMm: number; heightMm: number };
  const cut = (itemId: string, pieces: Size[], rests?: Size[]) => cutDownPanel(company.leadingHand, { projectId, itemId, happenedAt: NOON, pieces, ...(rests ? { rests } : {}) });
  const offered = async () => valueOf(await getCuttingOrder(company.office, { projectId })).offcuts.sheets;
  const card = async (itemId: string) => valueOf(await getPanel(company.office, { projectId, itemId }));
  const withdraw = async (itemId: string, kind: string) => {
    const eventId = (await card(itemId)).panel.events.find((event) => event.kind === kind && !event.isWithdrawn)?.id ?? "";
    return withdrawPanelEvent(company.owner, { projectId, eventId, reason: "Not cut after all" });
  };
  return { projectId, columnId, stock, cut, offered, card, withdraw };
}

// By hand, a saw cut of 3 and offcuts kept from 600 x 200 mm: 900 - 500 - 3 = 397 beside a piece as high as the panel.
const WIDE = { widthMm: 900, heightMm: 2400 };
const PIECE = { widthMm: 500, heightMm: 2400 };
const REST = { widthMm: 397, heightMm: 2400 };

describe("what is left of a panel cut down", () => {
  it("is an offcut on the rack that the cutting plan offers, and is told with the panel it came from", async () => {
    const { projectId, cut, offered, card } = await aBench();
    const { itemId, name } = await aPanel(company.owner, projectId, WIDE);
    const { panels: [piece], rests } = valueOf(await cut(itemId, [PIECE]));
    // The grain runs along the height, so that is the length of the offcut.
    expect(await offered()).toMatchObject([{ lengthMm: REST.heightMm, widthMm: REST.widthMm, quantity: 1 }]);
    const { panel, movements } = await card(itemId);
    expect(rests).toEqual([expect.stringMatching(/, 2400 × 397 mm$/)]);
    expect(panel.events[0]?.reason).toBe(`Into ${piece?.name}; kept ${rests[0]}`);
    expect(movements[0]).toMatchObject({ kind: "cut down", reason: `${name} cut down` });
    expect(movements[0]?.lines.filter(({ item, kind }) => item === rests[0] && kind === "rack")).toMatchObject([{ quantity: 1 }]);
  });

  it("is left out where nobody wants it, and never more than is left", async () => {
    const { projectId, cut, offered } = await aBench();
    const [first, second] = [await aPanel(company.owner, projectId, WIDE), await aPanel(company.owner, projectId, WIDE)];
    expect(await cut(first.itemId, [PIECE], [{ ...REST, widthMm: 398 }])).toMatchObject({ failure: { code: "panel-rest-changed", values: { panel: first.name, size: "398 × 2400 mm" } } });
    expect(refusal(await cut(first.itemId, [PIECE], [REST, REST]))).toBe("panel-rest-changed");
    valueOf(await cut(first.itemId, [PIECE], []));
    expect(await offered()).toEqual([]);
    valueOf(await cut(second.itemId, [PIECE], [REST]));
    expect(await offered()).toHaveLength(1);
  });

  it("goes back with the cut when that is withdrawn", async () => {
    const { projectId, cut, offered, card, withdraw } = await aBench();
    const { itemId } = await aPanel(company.owner, projectId, WIDE);
    valueOf(await cut(itemId, [PIECE]));
    valueOf(await withdraw(itemId, "cut down"));
    expect(await offered()).toEqual([]);
    expect((await card(itemId)).panel).toMatchObject({ placeKind: "rack", life: { ended: null } });
    // Whole again, it can be cut anew.
    valueOf(await cut(itemId, [PIECE]));
    expect(await offered()).toMatchObject([{ quantity: 1 }]);
  });

  it("holds the cut once it was used itself, and says so", async () => {
    const { projectId, stock, cut, offered, card, withdraw } = await aBench();
    const { itemId, name } = await aPanel(company.owner, projectId, WIDE);
    valueOf(await cut(itemId, [PIECE]));
    const [offcut] = await offered();
    valueOf(await cutUpMaterial(company.leadingHand, { projectId, placeId: stock.place("rack"), happenedAt: NOON, lines: [{ itemId: offcut?.itemId ?? "", quantity: 1 }] }));
    expect(await withdraw(itemId, "cut down")).toMatchObject({ failure: { code: "cut-used-already", values: { item: expect.stringMatching(/2400 × 397 mm$/) as string, asked: 1, there: 0, place: "Rack" } } });
    expect((await card(itemId)).panel.life.ended?.kind).toBe("cut down");
    // Not past the panel's own page either, which would leave its life saying otherwise.
    const movementId = (await card(itemId)).movements.find(({ kind }) => kind === "cut down")?.id ?? "";
    expect(await reverseMovement(company.owner, { projectId, movementId, reason: "Not cut" })).toMatchObject({ failure: { code: "movement-of-panel", values: { panel: name, what: "cut down" } } });
  });

  it("is kept of worn or broken ply only when asked for", async () => {
    const { projectId, cut, offered } = await aBench();
    const panels = [await aPanel(company.owner, projectId, WIDE), await aPanel(company.owner, projectId, WIDE), await aPanel(company.owner, projectId, WIDE)];
    const told = { projectId, happenedAt: NOON, reason: "Corner broken out" };
    for (const [index, kind] of (["damaged", "demoted", "turned"] as const).entries()) valueOf(await recordPanelEvent(company.leadingHand, { ...told, itemId: panels[index]?.itemId ?? "", kind }));
    for (const { itemId } of panels.slice(0, 2)) valueOf(await cut(itemId, [PIECE]));
    expect(await offered()).toEqual([]);
    valueOf(await cut(panels[2]?.itemId ?? "", [PIECE], [REST]));
    expect(await offered()).toHaveLength(1);
  });

  it("is kept of a panel higher than its sheets only when asked for, as their joint may run through it", async () => {
    const { projectId, cut, offered, card } = await aBench();
    const high = { ...WIDE, heightMm: 3200 };
    const [first, second] = [await aPanel(company.owner, projectId, high), await aPanel(company.owner, projectId, high)];
    expect((await card(first.itemId)).panel.restDoubt).toBe("joint");
    valueOf(await cut(first.itemId, [{ ...PIECE, heightMm: 3200 }]));
    expect(await offered()).toEqual([]);
    valueOf(await cut(second.itemId, [{ ...PIECE, heightMm: 3200 }], [{ ...REST, heightMm: 3200 }]));
    expect(await offered()).toMatchObject([{ lengthMm: 3200, widthMm: 397, quantity: 1 }]);
  });

  it("of another thickness is kept under its own name, and is not cut into panels of the project's ply", async () => {
    const { projectId, cut, offered } = await aBench();
    const { itemId } = await aPanel(company.owner, projectId, { ...WIDE, thicknessMm: 12 });
    expect(valueOf(await cut(itemId, [PIECE])).rests).toEqual(["Ply 12 mm, 2400 × 397 mm"]);
    expect(await offered()).toEqual([]);
  });
});

describe("a panel cut down for its face by the reuse plan", () => {
  it("leaves an offcut for the next cutting plan, and both go back with the cut", async () => {
    const { projectId, columnId, offered, withdraw } = await aBench();
    const { itemId } = await aPanel(company.owner, projectId, { widthMm: 1200, heightMm: 3400 });
    valueOf(await acceptReuse(company.owner, { projectId, whole: false, lines: [{ columnId, face: "A", source: { kind: "panel", itemId } }] }));
    const line = async () => valueOf(await getReserved(company.leadingHand, { projectId })).lines[0];
    const shown = await line();
    // A saw cut of 3 beside the piece, over the full height; the 3400 - 3305 - 3 = 92 over it are not worth keeping.
    const rest = { widthMm: 1200 - (shown?.widthMm ?? 0) - 3, heightMm: 3400 };
    expect(shown).toMatchObject({ standing: "cut-down", heightMm: 3305, rests: [rest], restDoubt: "joint" });
    const cut = (rests?: (typeof rest)[]) => cutReserved(company.leadingHand, { projectId, reservationId: shown?.id ?? "", happenedAt: NOON, ...(rests ? { rests } : {}) });
    valueOf(await cut([rest]));
    expect(await offered()).toMatchObject([{ lengthMm: 3400, widthMm: rest.widthMm, quantity: 1 }]);
    valueOf(await withdraw(itemId, "cut down"));
    expect([await offered(), (await line())?.itemId]).toEqual([[], itemId]);
    // Cut again, and the rest left where it fell.
    valueOf(await cut([]));
    expect(await offered()).toEqual([]);
  });
});

describe("a panel in the yard", () => {
  // The last one: the yard is the company's, so every project is offered what lies there.
  it("is cut down by one of two at once, and what is left of it lies there too", async () => {
    const { projectId, stock, cut } = await aBench();
    const [panel] = valueOf(await makePanels(company.owner, { projectId, placeId: stock.place("yard"), ...A_PANEL, ...WIDE, widthMm: 910 })).panels;
    const answers = await Promise.all([cut(panel?.itemId ?? "", [PIECE]), cut(panel?.itemId ?? "", [PIECE])]);
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
    const lying = await ask<{ kind: string; quantity: number }>(database.url, `select g.kind, b.quantity from gear_balance b join gear_material m on m.company_id = b.company_id and m.item_id = b.item_id
      join gear_place g on g.company_id = b.company_id and g.id = b.place_id where b.company_id = $1 and m.width_mm = 407 and b.quantity > 0`, [company.companyId]);
    expect(lying).toEqual([{ kind: "yard", quantity: 1 }]);
  });
});
