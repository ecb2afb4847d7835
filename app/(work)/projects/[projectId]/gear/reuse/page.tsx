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
import { ReuseView } from "./_parts/reuse-view.tsx";

export const metadata: Metadata = { title: "Panels to use again" };

export default async function ReusePage({ params }: { readonly params: Promise<{ projectId: string }> }) {
  const { projectId } = await params;
  const asked = await getReuseOrder(await currentCaller(), { projectId });
  if (!asked.ok) return <Refused failure={asked.failure} />;
  const { project, order, by, source, open, planned, leftOut } = asked.value;
  return (
    <Page
      title="Panels to use again" subtitle={project.name} actions={<PrintButton />}
      facts={[
        { label: "Columns to come", value: planned < open ? `the next ${planned} of ${open}` : planned },
        { label: "Panels at hand", value: order.panels.length },
        { label: "Pours of a face, costs", value: <Link href={paths.setUpPart(projectId, "stock")}>Set-up, Stock</Link> },
      ]}
    >
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
        <Suspense fallback={<p role="status" className="border-2 border-dashed border-edge bg-sheet p-6">Working out which panel goes where; this takes a few seconds.</p>}>
          <WorkedOut projectId={projectId} />
        </Suspense>
      ) : (
        <EmptyState title="No panel is wanted">
          Columns of which nothing is cut yet, and that no form set is assigned to, ask for panels here: from those at hand, from columns stripped before, or new.
        </EmptyState>
      )}
    </Page>
  );
}

async function WorkedOut({ projectId }: { readonly projectId: string }) {
  const worked = await planReuseOf(await currentCaller(), { projectId });
  return worked.ok ? <ReuseView {...worked.value} /> : <FailureNotice failure={worked.failure} />;
}
