import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getReturnPlan } from "#lib/server/returns/get-return-plan.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../../own-account.ts";
import { Refused } from "../../../../refused.tsx";
import { CalendarAddress } from "./calendar-address.tsx";
import { ColumnsCounted } from "./columns-counted.tsx";
import { PlanSettings } from "./plan-settings.tsx";
import { PlanShown } from "./plan-shown.tsx";
import { planFacts } from "./plan-facts.tsx";
import { ReturnTasks } from "./tasks/return-tasks.tsx";
import { WhileWaiting } from "./while-waiting.tsx";

export const metadata: Metadata = { title: "Return plan" };
export const dynamic = "force-dynamic";

export default async function ReturnPlanPage({ params }: { readonly params: Promise<{ projectId: string }> }) {
  const { projectId } = await params;
  const [answer, account] = await Promise.all([getReturnPlan(await currentCaller(), { projectId }), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, today, settings, yards, hasSuppliers, columns, items, failure, plan, tasks, feedSince } = answer.value;
  const mayPlan = account.ok && can(account.value.role, "hire.record");
  const standingTasks = tasks.filter(({ state }) => state !== "withdrawn");
  return (
    <Page title="Return plan" subtitle={project.name} actions={plan?.result ? <PrintButton /> : null} facts={plan?.result ? planFacts(plan.result, project.currency) : []}>
      {plan?.status === "waiting" ? <WhileWaiting /> : null}
      {plan?.status === "failed" ? <Notice kind="problem" title="No plan came of it.">Check the planned days of the columns under Pours and what is on hire, then make a new one.</Notice> : null}
      {plan?.isStale && plan.status === "ready" ? (
        <Notice kind="problem" title="This plan no longer holds.">
          A tick, a changed day or a docket has changed what is needed or what is on hire since. Make a new one below. Tasks already accepted stay until returns of the new one are accepted: what it proposes
          unchanged stays then, what has been called stays too, the rest is withdrawn.
        </Notice>
      ) : null}
      {yards.length > 0 ? <ColumnsCounted projectId={project.id} {...columns} /> : null}
      {standingTasks.length > 0 ? <Section title="Accepted returns"><ReturnTasks projectId={project.id} tasks={standingTasks} today={today} canWithdraw={mayPlan} /></Section> : null}
      {plan?.result ? <PlanShown projectId={project.id} plan={plan} tasks={tasks} today={today} currency={project.currency} mayPlan={mayPlan} timeZone={project.timeZone} /> : null}
      {yards.length === 0 ? (
        <EmptyState title={hasSuppliers ? "Nothing is on hire here" : "No supplier yet"} actions={hasSuppliers ? <ButtonLink href={paths.hirePart(project.id, "dockets/new")}>Enter a delivery</ButtonLink> : <ButtonLink href={paths.hirePart(project.id, "terms")}>Terms and suppliers</ButtonLink>}>
          Once terms and a delivery are entered, the cheapest days for sending gear back are worked out here from the planned days of the columns, for all suppliers together.
        </EmptyState>
      ) : null}
      {failure ? <FailureNotice failure={failure} /> : null}
      {mayPlan && yards.length > 0 ? (
        <Section title={plan ? "Make a new plan" : "Make a plan"} note="What it goes by beside the suppliers' terms and the planned days" className="no-print">
          <PlanSettings key={plan?.id ?? ""} projectId={project.id} currency={project.currency} settings={settings} yards={yards} items={items} label={plan ? "Plan again" : "Plan the returns"} />
        </Section>
      ) : null}
      {plan === null && yards.length > 0 && !mayPlan ? <EmptyState title="No plan yet">The owner or the office makes one; its tasks then stand here and on Today.</EmptyState> : null}
      <Section title="In your calendar" className="no-print"><CalendarAddress projectId={project.id} isOpen={feedSince !== null} /></Section>
    </Page>
  );
}
