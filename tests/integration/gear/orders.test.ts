import { beforeAll, describe, expect, it } from "vitest";
import { reverseMovement } from "#lib/server/gear/move-gear.ts";
import { toDay } from "#lib/kernel/days.ts";
import { wantedParts } from "#lib/server/gear/orders/buying-rows.ts";
import { getOrder, getOrders } from "#lib/server/gear/orders/get-orders.ts";
import { endOrder, placeOrder, saveBuyingRule } from "#lib/server/gear/orders/place-order.ts";
import { getBuyingTask, planBuying } from "#lib/server/gear/orders/plan-buying.ts";
import { receiveOrder, reverseReceipt } from "#lib/server/gear/orders/receive.ts";
import { cutUpMaterial, takeInMaterial } from "#lib/server/gear/orders/stock-material.ts";
import { savePlannedDays } from "#lib/server/pours/planned-days.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { anOrder, aReceipt, orderOf, PLY, receiptOf, siteDay } from "#tests/support/builders/an-order.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";
import { ask } from "#tests/support/raw-sql.ts";

const database = ownDatabase();
let company: Company;
beforeAll(async () => void (company = await aCompany("Withy Boxing")));

/** Said of the yard or of what was bought, whichever line of the movement is looked at first. */
const NOT_THERE = /^gear-(not-there|more-than-came)$/;

let count = 0;
async function ordered(wishes: Parameters<typeof anOrder>[2] = {}) {
  const { projectId } = await aProject(company.owner, { name: `Site ${(count += 1)}` });
  const order = await anOrder(company.office, projectId, wishes);
  const shown = async () => valueOf(await getOrder(company.leadingHand, { projectId, orderId: order.orderId })).order;
  const inYard = async () => (await ask<{ quantity: number }>(database.url, "select quantity from gear_balance where item_id = $1 and place_id = $2", [order.ply, order.yard]))[0]?.quantity ?? 0;
  return { projectId, order, shown, inYard };
}

describe("an order", () => {
  it("stands as its receipts say, which bring what was taken into the yard", async () => {
    const { projectId, order, shown, inYard } = await ordered();
    const before = await inYard();
    expect((await shown()).state).toBe("open");
    expect((await shown()).sum).toBe(40 * 7800);
    valueOf(await receiveOrder(company.leadingHand, receiptOf(projectId, order, { taken: 24, short: 6, refused: 2 }, { reason: "Two with broken corners" })));
    const part = await shown();
    expect([part.state, part.lines.find(({ itemId }) => itemId === order.ply)?.open, await inYard()]).toEqual(["part", 16, before + 24]);
    valueOf(await receiveOrder(company.leadingHand, { ...receiptOf(projectId, order, 16), lines: [{ itemId: order.ply, taken: 16 }, { itemId: order.pine, taken: 60 }] }));
    expect([(await shown()).state, await inYard()]).toEqual(["complete", before + 40]);
  });

  it("is written down once, by a number of its own with the merchant, and not for a day to come", async () => {
    const { projectId, order } = await ordered({ number: "PO-1" });
    expect(refusal(await placeOrder(company.office, orderOf(projectId, { number: "po-1" })))).toBe("order-known");
    expect(refusal(await placeOrder(company.office, orderOf(projectId, { number: "PO-1", supplier: "Alder Ply" })))).toBe(null);
    expect(refusal(await placeOrder(company.office, { ...orderOf(projectId), orderId: order.orderId }))).toBe("order-recorded-already");
    expect(refusal(await placeOrder(company.office, orderOf(projectId, { orderedOn: siteDay(1) })))).toBe("order-to-come");
    expect(refusal(await placeOrder(company.office, orderOf(projectId, { orderedOn: siteDay(-3), wantedOn: siteDay(-4) })))).toBe("invalid");
    expect(refusal(await placeOrder(company.office, orderOf(projectId, { ply: -3 })))).toBe("invalid");
    expect(refusal(await placeOrder(company.leadingHand, orderOf(projectId)))).toBe("not-allowed");
  });

  it("is cancelled while nothing has come, and closed when the rest will not", async () => {
    const { projectId, order, shown } = await ordered();
    const end = (kind: "cancelled" | "closed", orderId = order.orderId) => endOrder(company.office, { projectId, orderId, kind, reason: "Merchant out of stock" });
    expect(refusal(await end("closed"))).toBe("order-nothing-came");
    const receiptId = await aReceipt(company.leadingHand, projectId, order, 10);
    expect(refusal(await end("cancelled"))).toBe("order-received");
    valueOf(await end("closed"));
    expect((await shown()).state).toBe("closed");
    expect(refusal(await receiveOrder(company.leadingHand, receiptOf(projectId, order, 5)))).toBe("order-has-ended");
    expect(refusal(await end("closed"))).toBe("order-has-ended");
    expect(receiptId).not.toBe("");

    const other = await anOrder(company.office, projectId);
    const mistaken = await aReceipt(company.leadingHand, projectId, other, 3);
    valueOf(await reverseReceipt(company.office, { projectId, receiptId: mistaken, reason: "Another order's docket" }));
    valueOf(await end("cancelled", other.orderId));
  });
});

describe("a receipt", () => {
  it("takes more than was ordered only with a reason, never a negative count, never before the order's day", async () => {
    const { projectId, order } = await ordered();
    const receive = (...more: Parameters<typeof receiptOf> extends [unknown, unknown, ...infer Rest] ? Rest : never) => receiveOrder(company.leadingHand, receiptOf(projectId, order, ...more));
    expect(refusal(await receive(41))).toBe("receipt-over");
    expect(refusal(await receive(-1))).toBe("invalid");
    expect(refusal(await receive(0))).toBe("invalid");
    expect(refusal(await receive(5, { on: siteDay(-4) }))).toBe("receipt-before-order");
    expect(refusal(await receive(5, { on: siteDay(1) }))).toBe("receipt-to-come");
    expect(refusal(await receive({ taken: 5, refused: 1 }))).toBe("receipt-refused-why");
    expect(refusal(await receive(43, { reason: "Full packs only" }))).toBe(null);
  });

  it("entered twice is there once", async () => {
    const { projectId, order, inYard } = await ordered();
    const before = await inYard();
    const given = receiptOf(projectId, order, 10);
    valueOf(await receiveOrder(company.leadingHand, given));
    expect(refusal(await receiveOrder(company.leadingHand, given))).toBe("receipt-recorded-already");
    expect(refusal(await receiveOrder(company.office, { ...receiptOf(projectId, order, 10), number: given.number }))).toBe("receipt-known");
    expect(await inYard()).toBe(before + 10);
  });

  it("is settled by the database between two who count the last sheets at once", async () => {
    for (let round = 0; round < 4; round += 1) {
      const { projectId, order, shown, inYard } = await ordered();
      const before = await inYard();
      const answers = await Promise.all([company.leadingHand, company.office].map((by) => receiveOrder(by, receiptOf(projectId, order, 25))));
      expect(answers.map(refusal).sort()).toEqual([null, "receipt-over"].sort());
      expect([(await shown()).lines.find(({ itemId }) => itemId === order.ply)?.taken, await inYard()]).toEqual([25, before + 25]);
    }
  });

  it("is reversed once, with a reason, and the pieces leave with it; not when they are cut up", async () => {
    const { projectId, order, shown, inYard } = await ordered();
    const before = await inYard();
    const receiptId = await aReceipt(company.leadingHand, projectId, order, 12);
    const { receipts } = await shown();
    expect(refusal(await reverseMovement(company.owner, { projectId, movementId: receipts[0]?.movementId ?? "", reason: "Not ours" }))).toBe("movement-of-receipt");
    expect(refusal(await reverseReceipt(company.leadingHand, { projectId, receiptId, reason: "Not ours" }))).toBe("not-allowed");
    valueOf(await reverseReceipt(company.office, { projectId, receiptId, reason: "Another order's docket" }));
    expect(refusal(await reverseReceipt(company.office, { projectId, receiptId, reason: "Again" }))).toBe("receipt-reversed-already");
    expect([(await shown()).state, await inYard()]).toEqual(["open", before]);

    const again = await aReceipt(company.leadingHand, projectId, order, 12);
    const happenedAt = new Date().toISOString();
    valueOf(await cutUpMaterial(company.leadingHand, { projectId, placeId: order.yard, happenedAt, lines: [{ itemId: order.ply, quantity: before + 5 }] }));
    expect(refusal(await reverseReceipt(company.office, { projectId, receiptId: again, reason: "Wrong size" }))).toMatch(NOT_THERE);
    expect(refusal(await cutUpMaterial(company.leadingHand, { projectId, placeId: order.yard, happenedAt, lines: [{ itemId: order.ply, quantity: before + 12 }] }))).toMatch(NOT_THERE);
  });

  it("with nothing taken moves nothing and is on record", async () => {
    const { projectId, order, shown, inYard } = await ordered();
    const before = await inYard();
    valueOf(await receiveOrder(company.leadingHand, receiptOf(projectId, order, { taken: 0, refused: 40 }, { reason: "Pack was soaked" })));
    const { state, receipts } = await shown();
    expect([state, receipts[0]?.movementId, receipts[0]?.lines[0]?.refused, await inYard()]).toEqual(["open", null, 40, before]);
  });
});

describe("what the database itself holds", () => {
  const tryIt = async (sql: string, values: readonly unknown[]): Promise<string | null> => ask(database.url, sql, [...values]).then(() => null, (error: { constraint?: string }) => error.constraint ?? String(error));
  it("refuses more than was ordered without a reason, a receipt before its order or after its end, and a cancelling after a receipt", async () => {
    const { projectId, order } = await ordered();
    const [who, where] = [company.owner.personId, company.companyId];
    const receipt = (on: string, taken: number, reason: string | null) => tryIt(`with r as (insert into material_receipt (company_id, project_id, id, order_id, number, received_on, happened_at, reason, arrived_at, by_person_id)
      values ($1, $2, gen_random_uuid(), $3, 'X', $4::date, now(), $5, now(), $6) returning id)
      insert into material_receipt_line select $1, $2, r.id, $3, $7, $8, 0, 0 from r`, [where, projectId, order.orderId, on, reason, who, order.ply, taken]);
    const end = (kind: string) => tryIt("insert into material_order_end values ($1, $2, $3, $4, 'x', now(), $5)", [where, projectId, order.orderId, kind, who]);
    expect(await receipt(siteDay(), 41, null)).toBe("material_receipt_reason");
    expect(await receipt(siteDay(-9), 4, null)).toBe("material_receipt_before_order");
    expect(await receipt(siteDay(), -4, null)).toBe("material_receipt_line_pieces");
    expect(await receipt(siteDay(), 41, "Full packs")).toBe(null);
    expect(await end("cancelled")).toBe("material_order_received");
    expect(await end("closed")).toBe(null);
    expect(await receipt(siteDay(), 1, "More")).toBe("material_receipt_ended");
  });
});

describe("what to buy", () => {
  it("keeps apart a size of which only some faces are cut from the whole one", () => {
    const on = (day: string) => ({ made: [toDay(day)], again: [], undated: 0 });
    const groups = [{ size: "600x400x2750", sets: 1, days: on("2031-03-03") }, { size: "600x400x2750 AB", sets: 1, days: on("2031-03-10") }];
    const parts = [{ id: "600x400x2750 0", quantity: 2 }, { id: "600x400x2750 AB 0", quantity: 4 }, { id: "600x400x2750 AB 3 rest", quantity: 8 }];
    expect(wantedParts(parts, groups).map(({ on: day, count: pieces }) => [day, pieces])).toEqual([["2031-03-03", 2], ["2031-03-10", 4], ["2031-03-10", 8]]);
  });

  it("goes by the planned days, the company's lead time and allowance, less what is there and on order", async () => {
    // A company of its own: sheets of another size in a shared yard would be cut first.
    const company = await aCompany("Meadow Boxing");
    const project = await aProject(company.owner, { name: `Site ${(count += 1)}` });
    const { projectId, columnIds, levels } = project;
    const levelId = levels["Ground"] ?? "";
    // Monday 3 March 2031: two columns; Monday the 10th: the other four, by when the first two sets are free again.
    const days = [["2031-03-03", "2031-03-04"], ["2031-03-10", "2031-03-11"]] as const;
    valueOf(await savePlannedDays(company.office, { projectId, columns: columnIds.map((columnId, index) => ({ columnId, pour: null, stoodOn: days[index < 2 ? 0 : 1][0], pouredOn: days[index < 2 ? 0 : 1][1] })) }));
    valueOf(await saveBuyingRule(company.office, { projectId, leadDays: 5, makingDays: 2, waste: 0 }));
    const task = valueOf(await getBuyingTask(company.leadingHand, { projectId, levelId }));
    expect(task.groups.map(({ sets, days: own }) => ({ sets, made: own.made, again: own.again }))).toEqual([{ sets: 4, made: ["2031-03-03", "2031-03-03", "2031-03-10", "2031-03-10"], again: ["2031-03-10", "2031-03-10"] }]);

    const plain = valueOf(await planBuying(company.leadingHand, { projectId, levelId }));
    const ply = plain.sizes.find(({ use }) => use === "sheet");
    // Two working days before Monday the 3rd of a Monday-to-Friday week is Thursday 27 February; five before that, Thursday the 20th.
    expect(ply?.rows.map(({ standOn, on, orderBy }) => [standOn, on, orderBy])).toEqual([["2031-03-03", "2031-02-27", "2031-02-20"], ["2031-03-10", "2031-03-06", "2031-02-27"]]);
    const planned = ply?.rows.map((row) => row.planned) ?? [];
    const all = planned.reduce((sum, pieces) => sum + pieces, 0);
    // By area no fewer: 4 sets with at least 2 x 350 and 2 x 500 mm of face, over 3.2 m high, on sheets of 2.4 x 1.2 m: 4 x 1.7 x 3.2 / 2.88 = 7.6, so 8.
    expect(all).toBeGreaterThanOrEqual(8);
    expect(ply?.rows.every((row) => row.buy === row.planned)).toBe(true);

    valueOf(await takeInMaterial(company.leadingHand, { projectId, lines: [{ ...PLY, lengthMm: ply?.lengthMm ?? 0, widthMm: ply?.widthMm ?? 0, material: ply?.material ?? "", quantity: 3 }] }));
    valueOf(await saveBuyingRule(company.owner, { projectId, leadDays: 5, makingDays: 2, waste: 1000 }));
    const netted = valueOf(await planBuying(company.leadingHand, { projectId, levelId })).sizes.find(({ use }) => use === "sheet");
    const sum = (of: "buy" | "fromHand" | "allowance"): number => netted?.rows.reduce((total, row) => total + row[of], 0) ?? 0;
    expect([sum("fromHand"), sum("buy"), sum("allowance")]).toEqual([netted?.atHand, Math.ceil(all * 1.1) - (netted?.atHand ?? 0), Math.ceil(all * 1.1) - all]);
    expect(refusal(await saveBuyingRule(company.leadingHand, { projectId, leadDays: 1, makingDays: 1, waste: 0 }))).toBe("not-allowed");
  });

  it("lists what lies at hand by size", async () => {
    const { projectId, order } = await ordered();
    await aReceipt(company.leadingHand, projectId, order, 7);
    const { materials } = valueOf(await getOrders(company.leadingHand, { projectId }));
    const ply = materials.find(({ itemId }) => itemId === order.ply);
    expect(ply).toMatchObject({ ...PLY, name: "Film-faced ply 18 mm, 2400 × 1200 mm" });
    expect(ply?.coming.filter(({ number }) => number === order.number)).toEqual([{ on: siteDay(4), count: 33, number: order.number }]);
  });
});
