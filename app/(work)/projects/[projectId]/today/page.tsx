import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { addDays } from "#lib/kernel/days.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getOrdersDue } from "#lib/server/gear/orders/get-orders.ts";
import { getToday } from "#lib/server/progress/get-today.ts";
import { getReserved } from "#lib/server/gear/reserved/get-reserved.ts";
import { getReturnTasks } from "#lib/server/returns/return-tasks.ts";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { instantWords } from "#app/_ui/value/time-words.ts";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../own-account.ts";
import { Refused } from "../../../refused.tsx";
import { OrdersDue } from "../gear/orders/_parts/orders-due.tsx";
import { ReturnsDue } from "../hire/return-plan/tasks/returns-due.tsx";
import { CutDownSection } from "../gear/reuse/_parts/reserved/cut-down-section.tsx";
import { FallenNotice } from "../gear/reuse/_parts/reserved/fallen-notice.tsx";
import { TodayBoard } from "./today-board.tsx";

export const metadata: Metadata = { title: "Today" };
export const dynamic = "force-dynamic";

export default async function TodayPage({ params }: { readonly params: Promise<{ projectId: string }> }) {
  const { projectId } = await params;
  const account = await ownAccount();
  if (!account.ok) return <Refused failure={account.failure} />;
  const today = await getToday(await currentCaller(), { projectId });
  if (!today.ok) return <Refused failure={today.failure} />;
  const { project, progressRule, columns, isCut, readAt } = today.value;
  const returns = await getReturnTasks(await currentCaller(), { projectId });
  const orders = await getOrdersDue(await currentCaller(), { projectId });
  const reserved = await getReserved(await currentCaller(), { projectId });
  const { id, name, role } = account.value;
  return (
    <Page title="Today" subtitle={<>{project.name} · {instantWords(readAt, project.timeZone).day}</>}>
      {returns.ok ? <ReturnsDue projectId={project.id} {...returns.value} /> : null}
      {orders.ok && orders.value.length > 0 ? <Section title="Ply and timber to receive"><OrdersDue projectId={project.id} orders={orders.value} /></Section> : null}
      {reserved.ok ? (
        <>
          <FallenNotice projectId={project.id} fallen={reserved.value.fallen} isElsewhere />
          <CutDownSection projectId={project.id} lines={reserved.value.lines.filter(({ stoodOn }) => stoodOn === null || stoodOn <= addDays(reserved.value.today, 1))} units={project.units} mayCut={can(role, "gear.move")} />
        </>
      ) : null}
      {isCut ? <Notice title="Only the first columns are shown.">More are open than fit here; the rest are on the Columns page.</Notice> : null}
      {columns.length === 0 ? (
        <EmptyState title="No column is open" actions={<ButtonLink href={paths.columns(project.id)}>See the columns</ButtonLink>}>
          Columns to cut, stand, clamp, pour and strip appear here once the column schedule is in, and leave when they are stripped and read.
        </EmptyState>
      ) : (
        <TodayBoard
          project={{ id: project.id, timeZone: project.timeZone, units: project.units, lastSeq: project.lastSeq }}
          me={{ id, name, role }} plumbing={progressRule.plumbing} columns={columns} readAt={readAt}
        />
      )}
    </Page>
  );
}
