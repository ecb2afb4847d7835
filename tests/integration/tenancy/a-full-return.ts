import { openCalendarFeed } from "#lib/server/returns/calendar-feed.ts";
import { acceptReturns } from "#lib/server/returns/return-tasks.ts";
import type { Company } from "#tests/support/builders/a-company.ts";
import type { Project } from "#tests/support/builders/a-project.ts";
import { aHireToReturn, aReturnPlan, linesOf } from "#tests/support/builders/a-return-plan.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

/** At least one row in every table of returns. */
export async function aFullReturn(company: Company, project: Project): Promise<void> {
  const hire = await aHireToReturn(company.owner, project, "Ebb Gear", 400);
  const planId = await aReturnPlan(company, hire);
  const lines = await linesOf(company.owner, hire);
  valueOf(await acceptReturns(company.owner, { projectId: hire.projectId, planId, lines }));
  valueOf(await openCalendarFeed(company.owner, { projectId: hire.projectId }));
}
