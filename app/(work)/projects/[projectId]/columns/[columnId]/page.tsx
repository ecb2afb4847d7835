import type { Metadata } from "next";
import { cache } from "react";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getColumnGear } from "#lib/server/gear/pages/get-gear.ts";
import { getColumn } from "#lib/server/columns/get-column.ts";
import { getReserved } from "#lib/server/gear/reserved/get-reserved.ts";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { instantWords } from "#app/_ui/value/time-words.ts";
import { ownAccount } from "../../../../own-account.ts";
import { Refused } from "../../../../refused.tsx";
import { ChangeColumn } from "./_parts/change/change-column.tsx";
import { RemoveColumn } from "./_parts/change/remove-column.tsx";
import { storedColumn } from "./_parts/change/stored-column.ts";
import { ColumnPanels } from "./_parts/column-panels.tsx";
import { ColumnNow } from "./_parts/column-now.tsx";
import { FormSheet } from "./_parts/form/form-sheet.tsx";
import { GearHere } from "./_parts/gear-here.tsx";
import { History } from "./_parts/history/history.tsx";
import { StackList } from "./_parts/stack-list.tsx";
import { titleFacts } from "./_parts/title-facts.tsx";
import { ToDecide } from "./_parts/to-decide.tsx";

export const dynamic = "force-dynamic";

type Props = { readonly params: Promise<{ projectId: string; columnId: string }> };

const readColumn = cache(async (projectId: string, columnId: string) => getColumn(await currentCaller(), { projectId, columnId }));

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { projectId, columnId } = await params;
  const answer = await readColumn(projectId, columnId);
  return { title: answer.ok ? `${answer.value.column.gridRef}, ${answer.value.column.fromLevel.name}` : "Column" };
}

export default async function ColumnPage({ params }: Props) {
  const { projectId, columnId } = await params;
  const caller = await currentCaller();
  const [answer, account, gear, reserved] = await Promise.all([readColumn(projectId, columnId), ownAccount(), getColumnGear(caller, { projectId, columnId }), getReserved(caller, { projectId, columnId })]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  if (!account.ok) return <Refused failure={account.failure} />;
  const { project, column, state, next, progressRule, queried, readAt } = answer.value;
  const me = { id: account.value.id, name: account.value.name, role: account.value.role };
  const { day, time, zone } = instantWords(readAt, project.timeZone);
  const stored = storedColumn(answer.value);
  const about = { project: { id: project.id, timeZone: project.timeZone, units: project.units }, me, columnId: column.id, about: stored.name };
  const actions = (
    <>
      <PrintButton />
      {can(me.role, "column.change") ? <ChangeColumn key={column.id} stored={stored} /> : null}
      {can(me.role, "column.change") ? <RemoveColumn stored={stored} /> : null}
    </>
  );
  return (
    <Page
      title={`Column ${column.gridRef}`} isSheet actions={actions} facts={titleFacts(answer.value)}
      subtitle={<>{project.name} · {column.fromLevel.name}<span className="hidden print:inline"> · as of {day}, {time} {zone}</span></>}
    >
      <ToDecide {...about} held={state.held === null ? null : { at: state.held.at, reason: state.held.reason }} queried={queried} />
      <ColumnNow key={column.id} page={{ project, column, state: { done: state.done, flagged: state.flagged, pouredAt: state.pouredAt, asksForReading: state.asksForReading }, next, progressRule, readAt }} me={me} />
      {reserved.ok ? <ColumnPanels reserved={reserved.value} /> : null}
      <FormSheet page={answer.value} canSetUp={can(me.role, "project.set-up")} />
      {gear.ok ? <GearHere projectId={project.id} columnId={column.id} gear={gear.value} /> : null}
      <StackList page={answer.value} />
      <History page={answer.value} me={me} />
    </Page>
  );
}
