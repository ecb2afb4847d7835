import { beforeAll, describe, expect, it } from "vitest";
import { addDays, toDay, weekday } from "#lib/kernel/days.ts";
import { GET } from "#app/api/calendar/[token]/route.ts";
import { savePlannedDays } from "#lib/server/pours/planned-days.ts";
import { openCalendarFeed, readCalendar, revokeCalendarFeed } from "#lib/server/returns/calendar-feed.ts";
import { getReturnPlan } from "#lib/server/returns/get-return-plan.ts";
import { orderReturnPlan } from "#lib/server/returns/order-plan.ts";
import { acceptReturns, getReturnTasks, setReturnTask } from "#lib/server/returns/return-tasks.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aDelivery, aSupplier, type Hire } from "#tests/support/builders/a-hire.ts";
import { aProject, type Project } from "#tests/support/builders/a-project.ts";
import { aHireToReturn, aReturnPlan, inDays, linesOf, returnsOf, settingsFor } from "#tests/support/builders/a-return-plan.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase();
const PIECES = 2000;
let company: Company;
let project: Project;
let hire: Hire;
let planId: string;
beforeAll(async () => {
  company = await aCompany("Sandpiper Boxing");
  project = await aProject(company.owner);
  hire = await aHireToReturn(company.owner, project, "Weir Gear", PIECES);
  planId = await aReturnPlan(company, hire);
}, 60_000);

const page = async () => valueOf(await getReturnPlan(company.office, { projectId: hire.projectId }));
const isWorkingDay = (day: string): boolean => weekday(toDay(day)) <= 5;

describe("a return plan", () => {
  it("is proven, checked and kept with what found it", async () => {
    const plan = (await page())?.plan;
    expect(plan).toMatchObject({ status: "ready", isStale: false, solver: expect.stringContaining("HiGHS"), result: { proven: true, gap: 0 } });
    expect(plan?.result?.cost.total).toBe(plan?.result?.bound);
    expect(plan?.result?.cost.total).toBeLessThanOrEqual(plan?.result?.keepToLast?.total ?? 0);
  });

  it("sends every piece back once, on working days, never earlier than two working days' notice from today", async () => {
    const returns = await returnsOf(company.office, hire);
    expect(returns.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(PIECES);
    for (const { on, callOn } of returns) {
      expect(isWorkingDay(on)).toBe(true);
      expect(callOn >= inDays(0)).toBe(true);
      const between = Array.from({ length: 8 }, (_, day) => addDays(toDay(callOn), day)).filter((day) => day < on && isWorkingDay(day));
      expect(between).toHaveLength(2);
    }
  });

  it("names the columns that hold gear at the coming peak", async () => {
    const [pin] = (await page())?.plan?.pinned ?? [];
    expect(pin?.columns).toHaveLength(project.columnIds.length);
    expect(pin?.spare).toBe(PIECES - (pin?.needed ?? 0));
  });

  it("is refused where nothing that columns need is on hire, or a supplier has no terms", async () => {
    const bare = await aSupplier(company.owner, hire.projectId, "Empty Yard");
    expect(refusal(await orderReturnPlan(company.owner, { projectId: hire.projectId, settings: settingsFor(bare) }))).toBe("nothing-on-hire");
  });
});

describe("accepted returns", () => {
  it("become three dated tasks, once, however often they are accepted", async () => {
    const [first] = await returnsOf(company.office, hire);
    const line = { supplierId: hire.supplierId, collectOn: first?.on ?? "", itemId: first?.itemId ?? "" };
    valueOf(await acceptReturns(company.office, { projectId: hire.projectId, planId, lines: [line] }));
    valueOf(await acceptReturns(company.office, { projectId: hire.projectId, planId, lines: [line] }));
    const { tasks } = valueOf(await getReturnTasks(company.leadingHand, { projectId: hire.projectId }));
    expect(tasks.map(({ kind }) => kind).sort()).toEqual(["call", "collect", "load"]);
    expect(tasks.find(({ kind }) => kind === "call")?.on).toBe(first?.callOn);
    expect(tasks.find(({ kind }) => kind === "collect")?.on).toBe(first?.on);
    expect(tasks.every(({ lines }) => lines[0]?.quantity === first?.quantity)).toBe(true);
  });

  it("stand in a calendar under one person's secret address, and a change raises their number", async () => {
    const { token } = valueOf(await openCalendarFeed(company.leadingHand, { projectId: hire.projectId }));
    const read = async () => (await GET(new Request("http://site.invalid/"), { params: Promise.resolve({ token: `${token}.ics` }) })).text();
    const before = await read();
    // RFC 5545, 3.6.1, 3.8.4.7, 3.8.7.2 and 3.8.7.4: every event has a UID and a DTSTAMP; SEQUENCE goes up with each revision.
    expect(before.match(/BEGIN:VEVENT/g)).toHaveLength(3);
    expect(before.match(/\r\nUID:[0-9a-f-]{36}@shutterwright\r\n/g)).toHaveLength(3);
    expect(before).not.toMatch(/^X-(?!WR-|PUBLISHED-)/m);
    expect(before.match(/\r\nDTSTAMP:\d{8}T\d{6}Z\r\n/g)).toHaveLength(3);
    const call = valueOf(await readCalendar({ token })).tasks.find(({ kind }) => kind === "call");
    valueOf(await setReturnTask(company.leadingHand, { projectId: hire.projectId, taskId: call?.id ?? "", to: "done" }));
    const after = valueOf(await readCalendar({ token })).tasks.find(({ id }) => id === call?.id);
    expect(after).toMatchObject({ state: "done", sequence: (call?.sequence ?? 0) + 1 });
    expect(await read()).toContain(`UID:${call?.id}@shutterwright`);
    valueOf(await setReturnTask(company.leadingHand, { projectId: hire.projectId, taskId: call?.id ?? "", to: "withdrawn" }));
    expect(await read()).toContain("STATUS:CANCELLED");
  });

  it("are read no more once the address is closed or replaced", async () => {
    const { token: old } = valueOf(await openCalendarFeed(company.office, { projectId: hire.projectId }));
    const { token } = valueOf(await openCalendarFeed(company.office, { projectId: hire.projectId }));
    expect(refusal(await readCalendar({ token: old }))).toBe("not-found");
    valueOf(await readCalendar({ token }));
    valueOf(await revokeCalendarFeed(company.office, { projectId: hire.projectId }));
    expect(refusal(await readCalendar({ token }))).toBe("not-found");
  });
});

describe("a plan that no longer holds", () => {
  it("says so when a column slips, and holds again when it is moved back", async () => {
    const columns = (stoodOn: string) => [{ columnId: project.columnIds[0] ?? "", pour: null, stoodOn, pouredOn: inDays(12) }];
    valueOf(await savePlannedDays(company.owner, { projectId: hire.projectId, columns: columns(inDays(10)) }));
    expect((await page())?.plan?.isStale).toBe(true);
    valueOf(await savePlannedDays(company.owner, { projectId: hire.projectId, columns: [{ ...columns(inDays(3))[0], columnId: project.columnIds[0] ?? "", pour: null, stoodOn: inDays(3), pouredOn: inDays(4) }] }));
    expect((await page())?.plan?.isStale).toBe(false);
  });
});

describe("a newer plan", () => {
  // 2,000 pieces are on hire and every one goes back once. 150 more make 2,150: whatever the newer plan changes, the tasks that stand must take away 2,150, not 4,150.
  it("has the say alone once returns of it are accepted, in the tasks and in the calendar", async () => {
    const owner = await aCompany("Grebe Boxing");
    const site = await aProject(owner.owner);
    const own = await aHireToReturn(owner.owner, site, "Lock Gear", PIECES);
    const accept = async (id: string) => valueOf(await acceptReturns(owner.office, { projectId: own.projectId, planId: id, lines: await linesOf(owner.office, own) }));
    const { token } = valueOf(await openCalendarFeed(owner.leadingHand, { projectId: own.projectId }));
    const feed = async () => new Map(valueOf(await readCalendar({ token })).tasks.map((task) => [task.id, task]));
    const open = async () => valueOf(await getReturnTasks(owner.leadingHand, { projectId: own.projectId })).tasks;
    const leaving = async () => (await open()).filter(({ kind }) => kind === "collect").reduce((sum, { lines }) => sum + (lines[0]?.quantity ?? 0), 0);
    const first = await aReturnPlan(owner, own);
    await accept(first);
    const before = await feed();
    expect(await leaving()).toBe(PIECES);

    await aDelivery(owner.owner, own, "D2", inDays(-1), 150);
    const second = await aReturnPlan(owner, own);
    expect(refusal(await acceptReturns(owner.office, { projectId: own.projectId, planId: first, lines: [{ supplierId: own.supplierId, collectOn: inDays(3), itemId: own.itemId }] }))).toBe("return-plan-replaced");
    await accept(second);
    expect(await leaving()).toBe(PIECES + 150);
    expect((await open()).every(({ planId: of }) => of === second)).toBe(true);
    const after = await feed();
    expect([...before.keys()].every((id) => after.has(id))).toBe(true);
    for (const [id, was] of before) {
      const now = after.get(id);
      const isSame = now?.state === was.state && now.on === was.on && JSON.stringify(now.lines) === JSON.stringify(was.lines);
      expect(now?.sequence).toBe(isSame ? was.sequence : was.sequence + 1);
    }
    expect([...after.values()].some(({ id, sequence }) => before.has(id) && sequence === 0)).toBe(true);
    expect([...after.values()].some(({ sequence }) => sequence === 1)).toBe(true);
  }, 120_000);
});
