import type { Metadata } from "next";
import { Suspense } from "react";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getBuyingTask, planBuying } from "#lib/server/gear/orders/plan-buying.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../../refused.tsx";
import { LeftOutNotice } from "../../cutting/_parts/choice/left-out-notice.tsx";
import { LevelLinks } from "../../cutting/_parts/choice/level-links.tsx";
import { readChoice } from "../../cutting/_parts/choice/read-choice.ts";
import { SetsForm } from "../../cutting/_parts/choice/sets-form.tsx";
import { percentText } from "../_parts/order-words.ts";
import { BuyingRuleForm } from "./buying-rule-form.tsx";
import { ToBuyShown } from "./to-buy-shown.tsx";

export const metadata: Metadata = { title: "What to buy" };
type Query = Readonly<Record<string, string | string[] | undefined>>;
type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<Query> };

/** Sheets and timber by the day they are needed: from the cutting plan of a level, or of the columns chosen, and its planned days. */
export default async function BuyPage({ params, searchParams }: Props) {
  const [{ projectId }, query] = [await params, await searchParams];
  const columnIds = typeof query["columns"] === "string" ? query["columns"].split(",").filter((id) => id !== "") : undefined;
  const choice = { ...readChoice(projectId, query), ...(columnIds ? { columnIds } : {}) };
  const asked = await getBuyingTask(await currentCaller(), choice);
  if (!asked.ok) return <Refused failure={asked.failure} />;
  const { project, levels, level, columns, groups, leftOut, buyingRule, role } = asked.value;
  const undated = groups.reduce((sum, { days }) => sum + days.undated, 0);
  const sets = groups.reduce((sum, group) => sum + group.sets, 0);
  const where = columns ? `Columns ${columns.map(({ gridRef }) => gridRef).join(", ")}` : level?.name;
  return (
    <Page
      title="What to buy" subtitle={where ? `${project.name}: ${where}` : project.name} actions={<PrintButton />}
      facts={[
        { label: "Form sets to make", value: sets }, { label: "Made before they stand", value: `${buyingRule.makingDays} working days` },
        { label: "From order to delivery", value: `${buyingRule.leadDays} working days` }, { label: "Over the plan", value: percentText(buyingRule.waste) },
        { label: "Before buying new", value: <Link href={paths.reuse(project.id)}>Panels to use again</Link> },
      ]}
    >
      {levels.length > 0 && !columns ? <LevelLinks levels={levels} levelId={level?.id ?? ""} hrefOf={(levelId) => paths.orderPart(project.id, "buy", { level: levelId })} /> : null}
      <LeftOutNotice leftOut={leftOut} />
      {groups.length === 0 ? (
        <EmptyState title={levels.length === 0 ? "Every column is cut, or there is none yet" : "Nothing is to be cut here"}>Columns whose panels are not cut yet are counted here, with the days they are planned to stand.</EmptyState>
      ) : (
        <>
          {level ? (
            <Section title="Form sets to make" note="as many as the planned days need at once: a set stripped and clean by then is stood again" className="no-print">
              <div className="flex flex-col gap-3">
                {undated > 0 ? <p>{undated === 1 ? "One column has" : `${undated} columns have`} no planned day and count as a set each, with no date. <Link href={paths.pours(project.id, { level: level.id })}>Plan the days</Link></p> : null}
                <SetsForm projectId={project.id} levelId={level.id} groups={groups} units={project.units} action={paths.orderPart(project.id, "buy")} label="Work it out" />
              </div>
            </Section>
          ) : null}
          {sets > 0 ? (
            <Suspense key={JSON.stringify(choice)} fallback={<p role="status" className="border-2 border-dashed border-edge bg-sheet p-6">Working out the cuts; this takes a few seconds.</p>}>
              <WorkedOut choice={choice} />
            </Suspense>
          ) : <EmptyState title="Nothing to buy">Say above how many form sets of each size are to be made.</EmptyState>}
        </>
      )}
      <Section title="How the company buys" note="for all its projects" className="no-print"><BuyingRuleForm projectId={project.id} rule={buyingRule} canEdit={can(role, "order.record")} /></Section>
    </Page>
  );
}

async function WorkedOut({ choice }: { readonly choice: Parameters<typeof planBuying>[1] }) {
  const plan = await planBuying(await currentCaller(), choice);
  return plan.ok ? <ToBuyShown plan={plan.value} /> : <FailureNotice failure={plan.failure} />;
}
