import type { Metadata } from "next";
import { cache } from "react";
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
import { ownAccount } from "../../../../own-account.ts";
import { Refused } from "../../../../refused.tsx";
import { MovementList } from "../_parts/movement-list.tsx";
import { ColumnChooser } from "./column-chooser.tsx";
import { WaitingPanels } from "./waiting-panels.tsx";
import { GatherSheet } from "./gather-sheet.tsx";
import { TakeBackKept } from "./take-back-kept.tsx";

type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<{ columns?: string; on?: string }> };

/** Once for a request, though title and page both ask. */
const readList = cache(async (projectId: string, columns: string | undefined, on: string | undefined) => {
  const columnIds = columns?.split(",").filter((id) => id !== "");
  return gather(await currentCaller(), { projectId, ...(columnIds ? { columnIds } : {}), ...(on !== undefined && isDay(on) ? { on } : {}) });
});

const NAMED = 4;

/** Names the columns: without reception a list is chosen among those kept by its title. */
export async function generateMetadata({ params, searchParams }: Props): Promise<Metadata> {
  const [{ projectId }, { columns, on }] = [await params, await searchParams];
  const answer = await readList(projectId, columns, on);
  const names = answer.ok ? answer.value.chosen.map(({ gridRef }) => gridRef) : [];
  if (names.length === 0) return { title: "Gather" };
  return { title: `Gather for ${names.slice(0, NAMED).join(", ")}${names.length > NAMED ? ` and ${names.length - NAMED} more` : ""}` };
}

/** One sheet for one crew: what to take from where, what to cut, what is short, for the columns it will stand. */
export default async function GatherPage({ params, searchParams }: Props) {
  const [{ projectId }, { columns, on }] = [await params, await searchParams];
  const [answer, account] = await Promise.all([readList(projectId, columns, on), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  if (!account.ok) return <Refused failure={account.failure} />;
  const { project, open, chosen, list, waiting, names, readAt, trucks, kinds, gathered, role } = answer.value;
  const site = { id: projectId, timeZone: project.timeZone, units: project.units };
  const me = { id: account.value.id, name: account.value.name, role };
  return (
    <Page
      title="Gather" subtitle={project.name} actions={<PrintButton />} isSheet
      facts={chosen.length > 0 ? [{ label: "Columns", value: chosen.map(({ gridRef }) => gridRef).join(", ") }, { label: "Level", value: [...new Set(chosen.map(({ level }) => level))].join(", ") }, { label: "As the ledger stood", value: <TimeText at={readAt} timeZone={project.timeZone} /> }] : []}
    >
      <ColumnChooser
        projectId={projectId} chosen={chosen.map(({ id }) => id)} on={answer.value.on}
        columns={open.map(({ id, gridRef, level, mark, stoodOn }) => ({ id, gridRef, level, mark, stoodOn }))}
      />
      {chosen.length === 0
        ? <EmptyState title={open.length === 0 ? "No column waits to be stood" : "Choose the columns"}>The list then says which panels and clamps to take from where, what to cut, and what is short.</EmptyState>
        : (
          <>
            <WaitingPanels projectId={projectId} waiting={waiting} units={project.units} role={role} />
            <GatherSheet
              project={site} me={me} readAt={readAt} listKey={`${projectId} ${chosen.map(({ id }) => id).join(",")}`} list={list} items={names.items} mayPost={can(role, "gear.move")}
              places={Object.fromEntries([...Object.entries(names.places), ...trucks.map(({ id, name }) => [id, name] as const)].map(([id, name]) => [id, { name, kind: kinds[id] ?? "column" }]))} trucks={trucks}
              columns={Object.fromEntries(chosen.map(({ id, gridRef }) => [id, gridRef]))}
            />
          </>
        )}
      {chosen.length > 0 && trucks.length === 0 ? <p className="no-print text-sm text-ink-soft">No truck is named for this project; <Link href={paths.gearItems(projectId)}>name one</Link> to tick what is loaded.</p> : null}
      {gathered.length > 0 ? (
        <Section title="Gathered lately" note="in the last two days; taken back, it lies where it was" className="no-print">
          <MovementList
            projectId={projectId} timeZone={project.timeZone} movements={gathered}
            takeBack={({ id, lines }) => <TakeBackKept project={site} me={me} movementId={id} about={`Gathered: ${[...new Set(lines.map(({ item }) => item))].join(", ")}`} />}
          />
        </Section>
      ) : null}
    </Page>
  );
}
