import type { Metadata } from "next";
import { Suspense } from "react";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getReuseOrder, planReuseOf } from "#lib/server/cutting/reuse/plan-reuse.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { isExample } from "#app/_ui/message/example-notice.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../refused.tsx";
import { FallenNotice } from "./_parts/reserved/fallen-notice.tsx";
import { AcceptedLines } from "./_parts/accepted-lines.tsx";
import { ReuseView } from "./_parts/reuse-view.tsx";

export const metadata: Metadata = { title: "Panels to use again" };

type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<{ whole?: string }> };

export default async function ReusePage({ params, searchParams }: Props) {
  const [{ projectId }, { whole: asWhole }] = [await params, await searchParams];
  const whole = asWhole === "1";
  const asked = await getReuseOrder(await currentCaller(), { projectId, whole });
  if (!asked.ok) return <Refused failure={asked.failure} />;
  const { project, order, by, source, open, planned, leftOut, accepted, fallen, names } = asked.value;
  return (
    <Page
      title="Panels to use again" subtitle={project.name} actions={<PrintButton />}
      facts={[
        { label: "Columns to come", value: planned < open ? `the next ${planned} of ${open}` : planned },
        { label: "Panels not spoken for", value: order.panels.filter(({ id }) => names[id]?.isPanel).length },
        { label: "Pours of a face, costs", value: <Link href={paths.setUpPart(projectId, "stock")}>Set-up, Stock</Link> },
      ]}
    >
      <FallenNotice projectId={projectId} fallen={fallen} />
      {whole ? null : <AcceptedLines task={asked.value} />}
      {isExample(source) ? (
        <Notice title="Example prices and pours">
          The price of ply, what cutting down costs and how many pours a face holds are made up to start from: put in your own under <Link href={paths.setUpPart(projectId, "stock")}>Set-up, Stock</Link>.
        </Notice>
      ) : null}
      {by === "level" && order.demands.length > 0 ? (
        <Notice title="Level by level">
          Not every column to come has its days yet, so all columns of a level are taken to stand at once. Give them their days under <Link href={paths.pours(projectId)}>Pours</Link> and panels go from column to column.
        </Notice>
      ) : null}
      {leftOut > 0 ? <Notice title={leftOut === 1 ? "1 column is not in this plan" : `${leftOut} columns are not in this plan`}>They have no form set: round columns, or sizes the rules refuse. Each column&rsquo;s own page says why.</Notice> : null}
      {order.demands.length > 0 ? (
        <Suspense key={String(whole)} fallback={<p role="status" className="border-2 border-dashed border-edge bg-sheet p-6">Working out which panel goes where; this takes a few seconds.</p>}>
          <WorkedOut projectId={projectId} whole={whole} />
        </Suspense>
      ) : (
        <EmptyState title={accepted.length > 0 ? "Every coming panel is spoken for" : "No panel is wanted"}>
          {accepted.length > 0 ? "What falls out, or comes into the schedule, is planned here again. " : ""}Columns of which nothing is cut yet, and that no form set is assigned to, ask for panels here: from those at hand, from columns stripped before, or new.
        </EmptyState>
      )}
      {accepted.length > 0 ? (
        <p className="no-print">
          {whole ? <Link href={paths.reuse(projectId)}>Back to what is spoken for</Link> : <><Link href={paths.reuse(projectId, { whole: 1 })}>Plan everything anew</Link>, what is spoken for and not made up into a set with it.</>}
        </p>
      ) : null}
    </Page>
  );
}

async function WorkedOut({ projectId, whole }: { readonly projectId: string; readonly whole: boolean }) {
  const worked = await planReuseOf(await currentCaller(), { projectId, whole });
  return worked.ok ? <ReuseView {...worked.value} /> : <FailureNotice failure={worked.failure} />;
}
