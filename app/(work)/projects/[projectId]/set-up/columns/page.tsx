import type { Metadata } from "next";
import { readSheetRows } from "#lib/contracts/columns-sheet.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getColumnsSheet } from "#lib/server/columns/columns-sheet.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../refused.tsx";
import { SetUpPage, type SetUpParams } from "../_parts/set-up-page.tsx";
import { AddColumnsForm } from "./add-columns-form.tsx";

export const metadata: Metadata = { title: "Add columns" };

export default async function AddColumnsPage({ params }: SetUpParams) {
  const { projectId } = await params;
  const sheet = await getColumnsSheet(await currentCaller(), { projectId });
  if (!sheet.ok) return <Refused failure={sheet.failure} />;
  const taken = readSheetRows(sheet.value).map(({ gridRef, fromLevelId }) => ({ gridRef, fromLevelId }));
  return (
    <SetUpPage params={params} title="Add columns" permission="column.change">
      {({ project, levels, marks, gridLines }, canEdit) => {
        if (levels.length < 2) return <Missing what="two levels" href={paths.setUpPart(projectId, "levels")} label="Levels" />;
        if (marks.length === 0) return <Missing what="a mark" href={paths.setUpPart(projectId, "marks")} label="Marks" />;
        if (!canEdit) return null;
        return <AddColumnsForm projectId={project.id} units={project.units} levels={levels} marks={marks} gridLines={gridLines} taken={taken} />;
      }}
    </SetUpPage>
  );
}

function Missing({ what, href, label }: { readonly what: string; readonly href: string; readonly label: string }) {
  return (
    <EmptyState title={`Columns need ${what} first`} actions={<ButtonLink href={href} kind="primary">{label}</ButtonLink>}>
      Fill that in, then come back; or import a column schedule, which brings levels, marks and columns together.
    </EmptyState>
  );
}
