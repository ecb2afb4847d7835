import type { Role } from "#lib/access/roles.ts";
import { openCalendarFeed } from "#lib/server/returns/calendar-feed.ts";
import { getColumnGear } from "#lib/server/returns/column-gear.ts";
import { acceptReturns, getReturnTasks } from "#lib/server/returns/return-tasks.ts";
import { aHireToReturn, aReturnPlan, linesOf, settingsFor } from "#tests/support/builders/a-return-plan.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import type { Row, Site } from "./permission-table.ts";

const all: readonly Role[] = ["owner", "leading hand", "office"];
const desk: readonly Role[] = ["owner", "office"];
type OfProject = (may: Row["may"], example?: (site: Site) => object) => Row;

async function planned({ company, project, word }: Site) {
  const hire = await aHireToReturn(company.owner, project, `Returns ${word}`, 400);
  const planId = await aReturnPlan(company, hire);
  const lines = await linesOf(company.owner, hire);
  return { hire, planId, lines };
}

async function taskId(site: Site): Promise<string> {
  const { planId, lines, hire: { projectId } } = await planned(site);
  valueOf(await acceptReturns(site.company.owner, { projectId, planId, lines }));
  return valueOf(await getReturnTasks(site.company.owner, { projectId })).tasks.find((task) => task.planId === planId)?.id ?? "";
}

export const returnPermissions = (ofProject: OfProject): Readonly<Record<string, Row>> => ({
  "returns.getReturnPlan": ofProject(all),
  "returns.orderReturnPlan": ofProject(desk, async ({ company, project, word }) => ({ settings: settingsFor(await aHireToReturn(company.owner, project, `Returns ${word}`, 400)) })),
  "returns.acceptReturns": ofProject(desk, async (site) => {
    const { planId, lines } = await planned(site);
    return { planId, lines };
  }),
  "returns.getReturnTasks": ofProject(all),
  "returns.setReturnTask": ofProject(all, async (site) => ({ taskId: await taskId(site), to: "done" })),
  "returns.getColumnGear": ofProject(all),
  "returns.changeColumnGear": ofProject(desk, async ({ company, project: { projectId } }) => ({ version: valueOf(await getColumnGear(company.owner, { projectId })).project.version, columnGear: { rows: [] } })),
  "returns.openCalendarFeed": ofProject(all),
  "returns.revokeCalendarFeed": ofProject(all),
  "returns.readCalendar": { may: "anyone", stranger: "own", example: async ({ company, project: { projectId } }) => ({ token: valueOf(await openCalendarFeed(company.owner, { projectId })).token }) },
});
