import type { Metadata } from "next";
import { Suspense } from "react";
import { can } from "#lib/access/permissions.ts";
import { getColumnsSheet } from "#lib/server/columns/columns-sheet.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../own-account.ts";
import { Refused } from "../../../refused.tsx";
import { ColumnsBoard } from "./_views/columns-board.tsx";

export const metadata: Metadata = { title: "Columns" };
export const dynamic = "force-dynamic";

export default async function ColumnsPage({ params }: { readonly params: Promise<{ projectId: string }> }) {
  const { projectId } = await params;
  const account = await ownAccount();
  if (!account.ok) return <Refused failure={account.failure} />;
  const sheet = await getColumnsSheet(await currentCaller(), { projectId });
  if (!sheet.ok) return <Refused failure={sheet.failure} />;
  const { id, name, role } = account.value;
  return (
    <Page title="Columns">
      {sheet.value.rowsJson === "[]" ? <NoColumns projectId={projectId} maySetUp={can(role, "schedule.import")} /> : (
        <Suspense><ColumnsBoard sheet={sheet.value} me={{ id, name, role }} /></Suspense>
      )}
    </Page>
  );
}

function NoColumns({ projectId, maySetUp }: { readonly projectId: string; readonly maySetUp: boolean }) {
  if (!maySetUp) return <EmptyState title="No column yet">The owner or the office brings in the column schedule; the columns appear here at once.</EmptyState>;
  const actions = (
    <>
      <ButtonLink kind="primary" href={paths.setUpPart(projectId, "schedule")}>Import a schedule</ButtonLink>
      <ButtonLink href={paths.setUpPart(projectId, "columns")}>Add columns by form</ButtonLink>
    </>
  );
  return <EmptyState title="No column yet" actions={actions}>Bring in the column schedule as CSV or XLSX, or set up levels, grid and marks and add the columns by form.</EmptyState>;
}
