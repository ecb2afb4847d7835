import type { Metadata } from "next";
import { Suspense } from "react";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getCuttingOrder, planCutting } from "#lib/server/cutting/plan-cutting.ts";
import { getReserved } from "#lib/server/gear/reserved/get-reserved.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { isExample } from "#app/_ui/message/example-notice.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../refused.tsx";
import { CutDownSection } from "../reuse/_parts/reserved/cut-down-section.tsx";
import { LeftOutNotice } from "./_parts/choice/left-out-notice.tsx";
import { LevelLinks } from "./_parts/choice/level-links.tsx";
import { MadeNotice } from "./_cut/made-notice.tsx";
import { PlanView } from "./_parts/plan-view.tsx";
import { readChoice, type Choice } from "./_parts/choice/read-choice.ts";
import { SetsForm } from "./_parts/choice/sets-form.tsx";

export const metadata: Metadata = { title: "Cutting plan" };

type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>> };

export default async function CuttingPage({ params, searchParams }: Props) {
  const query = await searchParams;
  const choice = readChoice((await params).projectId, query);
  const asked = await getCuttingOrder(await currentCaller(), choice);
  if (!asked.ok) return <Refused failure={asked.failure} />;
  const { project, levels, level, groups, leftOut, cuttingRule } = asked.value;
  const reserved = await getReserved(await currentCaller(), { projectId: project.id });
  const sets = groups.reduce((sum, group) => sum + group.sets, 0);
  return (
    <Page
      title="Cutting plan" subtitle={level ? `${project.name}: ${level.name}` : project.name} actions={<PrintButton />}
      facts={[
        { label: "Form sets", value: sets },
        { label: "For columns", value: groups.reduce((sum, group) => sum + group.columns, 0) },
        { label: "Before cutting new", value: <Link href={paths.reuse(project.id)}>Panels to use again</Link> },
        { label: "Stock", value: <Link href={paths.setUpPart(project.id, "stock")}>Sheets, timbers and the saw</Link> },
      ]}
    >
      <MadeNotice projectId={project.id} query={query} />
      {isExample(cuttingRule.source) ? (
        <Notice title="Example prices and saw">
          They are made up to start from. Put in your own sheets, lengths and prices under <Link href={paths.setUpPart(project.id, "stock")}>Set-up, Stock</Link> before you order by this plan.
        </Notice>
      ) : null}
      {level ? (
        <>
          <LevelLinks levels={levels} levelId={level.id} hrefOf={(levelId) => paths.cutting(project.id, { level: levelId })} />
          <LeftOutNotice leftOut={leftOut} />
          {reserved.ok ? <CutDownSection projectId={project.id} lines={reserved.value.lines.filter(({ levelId }) => levelId === level.id)} units={project.units} mayCut={can(reserved.value.role, "gear.move")} /> : null}
          {groups.length > 0 ? <Section title="Form sets to cut" note="A set is stripped and stood again: cut as many as are in use at once" className="no-print"><SetsForm projectId={project.id} levelId={level.id} groups={groups} units={project.units} /></Section> : null}
          {sets > 0 ? (
            <Suspense key={JSON.stringify(choice)} fallback={<p role="status" className="border-2 border-dashed border-edge bg-sheet p-6">Working out the cuts; this takes a few seconds.</p>}>
              <WorkedOut choice={choice} />
            </Suspense>
          ) : <EmptyState title="Nothing to cut">{groups.length === 0 ? "Every column of this level that takes a form set has its panels, or gets them from the accepted reuse plan." : "Say above how many form sets of each size to cut; the plan of their sheets and timbers stands here then."}</EmptyState>}
        </>
      ) : (
        <EmptyState title="No columns yet" actions={<Link href={paths.setUpPart(project.id, "schedule")}>Load the column schedule</Link>}>
          Once there are columns, the panels and timbers of their form sets are laid out here on sheets and stock lengths.
        </EmptyState>
      )}
    </Page>
  );
}

async function WorkedOut({ choice }: { readonly choice: Choice }) {
  const plan = await planCutting(await currentCaller(), choice);
  return plan.ok ? <PlanView plan={plan.value} /> : <FailureNotice failure={plan.failure} />;
}
