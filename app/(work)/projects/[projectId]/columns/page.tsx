import type { Metadata } from "next";
import { Suspense } from "react";
import { can } from "#lib/access/permissions.ts";
import { getColumnsSheet } from "#lib/server/columns/columns-sheet.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
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
  const [account, sheet] = await Promise.all([ownAccount(), getColumnsSheet(await currentCaller(), { projectId })]);
  if (!account.ok) return <Refused failure={account.failure} />;
  if (!sheet.ok) return <Refused failure={sheet.failure} />;
  const { id, name, role } = account.value;
  const { rowsJson, levels } = sheet.value;
  if (rowsJson === "[]") {
    return <Page title="Columns"><NoColumns projectId={projectId} hasLevels={levels.length > 1} maySetUp={can(role, "schedule.import")} /></Page>;
  }
  return (
    <Page title="Columns" actions={<PrintButton />}>
      <Suspense><ColumnsBoard sheet={sheet.value} me={{ id, name, role }} /></Suspense>
    </Page>
  );
}

type NoColumnsProps = { readonly projectId: string; readonly hasLevels: boolean; readonly maySetUp: boolean };

function NoColumns({ projectId, hasLevels, maySetUp }: NoColumnsProps) {
  if (!maySetUp) return <EmptyState title="No column yet">The owner or the office brings in the column schedule; the columns appear here at once.</EmptyState>;
  const actions = (
    <>
      <ButtonLink kind="primary" href={paths.setUpPart(projectId, "schedule")}>Import a schedule</ButtonLink>
      {hasLevels
        ? <ButtonLink href={paths.setUpPart(projectId, "columns")}>Add columns by form</ButtonLink>
        : <ButtonLink href={paths.setUpPart(projectId, "levels")}>Set up levels</ButtonLink>}
    </>
  );
  return <EmptyState title="No column yet" actions={actions}>Bring in the column schedule as CSV or XLSX, or {hasLevels ? "add the columns by form." : "set up levels, grid and marks, then add the columns by form."}</EmptyState>;
}
