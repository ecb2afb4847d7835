import { beforeAll, describe, expect, it } from "vitest";
import { saveItem } from "#lib/server/gear/stock.ts";
import { addTerms } from "#lib/server/hire/suppliers.ts";
import { countDocket } from "#lib/server/hire/record-docket.ts";
import { recordSiteEvents } from "#lib/server/progress/record-site-events.ts";
import { changeColumnGear, getColumnGear } from "#lib/server/returns/column-gear.ts";
import { getReturnPlan } from "#lib/server/returns/get-return-plan.ts";
import { orderReturnPlan } from "#lib/server/returns/order-plan.ts";
import { acceptReturns, getReturnTasks } from "#lib/server/returns/return-tasks.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aDelivery, aSupplier, paper, RULE, rateOf, type Hire } from "#tests/support/builders/a-hire.ts";
import { aProject, type Project } from "#tests/support/builders/a-project.ts";
import { aHireToReturn, aReturnPlan, inDays, linesOf, returnsOf, settingsFor } from "#tests/support/builders/a-return-plan.ts";
import { aTick } from "#tests/support/builders/a-site-event.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase();
/** A plan is worked out to its proof; on a busy machine that takes its time. */
const PATIENCE = 120_000;
const [WEDGES, MORE_WEDGES, PROPS] = [300, 200, 60];
let company: Company;
let project: Project;
let weir: Hire;
let lock: Hire;
let propId: string;

/** Two suppliers of wedges, the second of props too; each column takes four props. */
beforeAll(async () => {
  company = await aCompany("Dabchick Boxing");
  project = await aProject(company.owner);
  const { projectId } = project;
  weir = await aHireToReturn(company.owner, project, "Weir Gear", WEDGES);
  propId = valueOf(await saveItem(company.owner, { projectId, family: "prop", name: "Prop, long", lossPrice: null })).id;
  lock = await aSupplier(company.owner, projectId, "Lock Gear");
  valueOf(await addTerms(company.owner, { projectId, supplierId: lock.supplierId, validFrom: "2026-02-01", currency: "AUD", rule: RULE, rates: [rateOf(lock.itemId), { ...rateOf(propId), perDay: 9000 }] }));
  await aDelivery(company.owner, lock, "L1", inDays(-5), MORE_WEDGES);
  valueOf(await countDocket(company.owner, { ...paper(lock, "L2", inDays(-5)), kind: "delivery", bySupplier: true, lines: [{ itemId: propId, quantity: PROPS }] }));
}, PATIENCE);

const row = (part: object = {}) => ({ itemId: propId, count: 4, levelId: null, sideOverMm: null, sideUpToMm: null, heightOverMm: null, heightUpToMm: null, ...part });
const save = async (rows: ReturnType<typeof row>[]) => changeColumnGear(company.office, {
  projectId: project.projectId, version: valueOf(await getColumnGear(company.office, project)).project.version, columnGear: { rows },
});
const page = async () => valueOf(await getReturnPlan(company.office, project));

describe("gear of the columns beside their clamps", () => {
  it("is refused twice for one column, of an item nobody has, and for clamps, which their layout counts", async () => {
    expect(refusal(await save([row({ sideUpToMm: 600 }), row({ sideOverMm: 500 })]))).toBe("invalid");
    expect(refusal(await save([row({ itemId: weir.itemId })]))).toBe("not-found");
    expect(refusal(await save([row({ levelId: project.projectId })]))).toBe("not-found");
    expect(refusal(await save([row({ sideOverMm: 600, sideUpToMm: 600 })]))).toBe("invalid");
  });

  it("keeps an item out of the plan until somebody says what columns need of it", async () => {
    await aReturnPlan(company, weir, { ...lock, moreItems: [propId] });
    expect((await page()).plan?.leftOut).toMatchObject([{ supplier: "Lock Gear", item: "Prop, long", hired: PROPS, why: "no-need" }]);
  }, PATIENCE);

  // Six columns of 350 x 500 mm, four props each, all standing together: 24; with the float of 5 % 25.2, so 26. The row for sides over 500 takes none of them.
  it("is counted by its rows from then on, with the float", async () => {
    valueOf(await save([row({ sideUpToMm: 500 }), row({ sideOverMm: 500, count: 9 })]));
    expect((await page()).plan?.isStale).toBe(true);
    await aReturnPlan(company, weir, { ...lock, moreItems: [propId] });
    const { plan } = await page();
    expect(plan?.leftOut).toEqual([]);
    expect(plan?.pinned.find(({ itemId }) => itemId === propId)).toMatchObject({ needed: 26, spare: PROPS - 26 });
    expect(Math.max(...(plan?.need.find(({ itemId }) => itemId === propId)?.needed ?? []))).toBe(26);
  }, PATIENCE);
});

describe("a plan for several suppliers", () => {
  it("sends all of it back, to each its own, and never leaves the columns short", async () => {
    const back = await returnsOf(company.office, weir);
    const sent = (supplierId: string, itemId: string) => back.filter((line) => line.supplierId === supplierId && line.itemId === itemId).reduce((sum, { quantity }) => sum + quantity, 0);
    expect([sent(weir.supplierId, weir.itemId), sent(lock.supplierId, weir.itemId), sent(lock.supplierId, propId), sent(weir.supplierId, propId)]).toEqual([WEDGES, MORE_WEDGES, PROPS, 0]);
    const { plan } = await page();
    expect(plan).toMatchObject({ isStale: false, result: { proven: true } });
    for (const { itemId, needed, owned } of plan?.need ?? []) {
      const there = plan?.stock.find((each) => each.itemId === itemId)?.onHire ?? [];
      needed.forEach((count, day) => expect((there[day] ?? 0) + owned).toBeGreaterThanOrEqual(count));
    }
  });

  it("makes tasks for each supplier, and a newer plan without one of them leaves that one's alone", async () => {
    const { projectId } = project;
    valueOf(await acceptReturns(company.owner, { projectId, planId: (await page()).plan?.id ?? "", lines: await linesOf(company.owner, weir) }));
    const open = async () => valueOf(await getReturnTasks(company.leadingHand, { projectId })).tasks;
    const pieces = async (supplier: string) => (await open()).filter((task) => task.supplier === supplier && task.kind === "collect").flatMap(({ lines }) => lines).reduce((sum, { quantity }) => sum + quantity, 0);
    expect([await pieces("Weir Gear"), await pieces("Lock Gear")]).toEqual([WEDGES, MORE_WEDGES + PROPS]);
    const before = (await open()).filter(({ supplier }) => supplier === "Lock Gear");
    const planId = await aReturnPlan(company, weir);
    valueOf(await acceptReturns(company.owner, { projectId, planId, lines: await linesOf(company.owner, weir) }));
    expect((await open()).filter(({ supplier }) => supplier === "Lock Gear")).toEqual(before);
    expect(await pieces("Weir Gear")).toBe(WEDGES);
  }, PATIENCE);

  it("is refused without a supplier, and with one nobody knows", async () => {
    const { projectId } = project;
    expect(refusal(await orderReturnPlan(company.owner, { projectId, settings: settingsFor() }))).toBe("invalid");
    expect(refusal(await orderReturnPlan(company.owner, { projectId, settings: settingsFor({ supplierId: projectId }) }))).toBe("not-found");
    // Nobody has said what a prop weighs, and a truck is filled by weight.
    expect(await orderReturnPlan(company.owner, { projectId, settings: settingsFor(weir, lock) })).toMatchObject({ failure: { kind: "invalid", problems: [{ field: `settings.unitKg.${propId}`, message: expect.stringContaining("Prop, long") as string }] } });
  });

  it("no longer holds, and is accepted no more, once a tick has changed what is needed", async () => {
    const { projectId, columnIds } = project;
    const planId = await aReturnPlan(company, weir, { ...lock, moreItems: [propId] });
    const lines = await linesOf(company.owner, weir);
    valueOf(await recordSiteEvents(company.leadingHand, { projectId, events: [aTick(columnIds[0] ?? "", "stood", { at: new Date(Date.now() - 60_000).toISOString() })] }));
    expect((await page()).plan?.isStale).toBe(true);
    expect(refusal(await acceptReturns(company.owner, { projectId, planId, lines }))).toBe("return-plan-outdated");
  }, PATIENCE);

  // A delivery brings 10 more: what is on hire is not what the plan was made from.
  it("no longer holds once a delivery has come", async () => {
    await aReturnPlan(company, weir, { ...lock, moreItems: [propId] });
    expect((await page()).plan?.isStale).toBe(false);
    await aDelivery(company.owner, weir, "D9", inDays(0), 10);
    expect((await page()).plan?.isStale).toBe(true);
  }, PATIENCE);
});
