import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { isDay } from "#lib/kernel/days.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { gather } from "#lib/server/gear/pages/gather.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../refused.tsx";
import { MovementList } from "../_parts/movement-list.tsx";
import { ColumnChooser } from "./column-chooser.tsx";
import { WaitingPanels } from "./waiting-panels.tsx";
import { GatherSheet } from "./gather-sheet.tsx";

export const metadata: Metadata = { title: "Gather" };
type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<{ columns?: string; on?: string }> };

/** One sheet for one crew: what to take from where, what to cut, what is short, for the columns it will stand. */
export default async function GatherPage({ params, searchParams }: Props) {
  const [{ projectId }, { columns, on }] = [await params, await searchParams];
  const columnIds = columns?.split(",").filter((id) => id !== "");
  const day = on !== undefined && isDay(on) ? on : undefined;
  const answer = await gather(await currentCaller(), { projectId, ...(columnIds ? { columnIds } : {}), ...(day ? { on: day } : {}) });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, open, chosen, list, waiting, names, readAt, trucks, kinds, gathered, role } = answer.value;
  return (
    <Page
      title="Gather" subtitle={project.name} actions={<PrintButton />} isSheet
      facts={chosen.length > 0 ? [{ label: "Columns", value: chosen.map(({ gridRef }) => gridRef).join(", ") }, { label: "Level", value: [...new Set(chosen.map(({ level }) => level))].join(", ") }, { label: "As the ledger stood", value: <TimeText at={readAt} timeZone={project.timeZone} /> }] : []}
    >
      <ColumnChooser
        projectId={projectId} chosen={chosen.map(({ id }) => id)} on={day ?? null}
        columns={open.map(({ id, gridRef, level, mark, stoodOn }) => ({ id, gridRef, level, mark, stoodOn }))}
      />
      {chosen.length === 0
        ? <EmptyState title={open.length === 0 ? "No column waits to be stood" : "Choose the columns"}>The list then says which panels and clamps to take from where, what to cut, and what is short.</EmptyState>
        : (
          <>
            <WaitingPanels projectId={projectId} waiting={waiting} units={project.units} role={role} />
            <GatherSheet
              projectId={projectId} listKey={`${projectId} ${chosen.map(({ id }) => id).join(",")}`} list={list} items={names.items} units={project.units} mayPost={can(role, "gear.move")}
              places={Object.fromEntries(Object.entries(names.places).map(([id, name]) => [id, { name, kind: kinds[id] ?? "column" }]))} trucks={trucks}
              columns={Object.fromEntries(chosen.map(({ id, gridRef }) => [id, gridRef]))}
            />
          </>
        )}
      {chosen.length > 0 && trucks.length === 0 ? <p className="no-print text-sm text-ink-soft">No truck is named for this project; <Link href={paths.gearItems(projectId)}>name one</Link> to tick what is loaded.</p> : null}
      {gathered.length > 0 ? (
        <Section title="Gathered lately" note="in the last two days; taken back, it lies where it was" className="no-print"><MovementList projectId={projectId} timeZone={project.timeZone} movements={gathered} /></Section>
      ) : null}
    </Page>
  );
}
