import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getCounts } from "#lib/server/gear/counts/stocktake.ts";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { Refused } from "../../../../refused.tsx";
import { CountForm } from "./count-form.tsx";
import { LockedCount } from "./locked-count.tsx";

export const metadata: Metadata = { title: "Count" };
type Props = { readonly params: Promise<{ projectId: string }> };

/** Stocktake: counted by place on the phone, locked with name and time, and what differs from the ledger settled. */
export default async function CountPage({ params }: Props) {
  const { projectId } = await params;
  const answer = await getCounts(await currentCaller(), { projectId });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, counts, items, places, standings, panels, role } = answer.value;
  const atColumns = [...new Map(standings.filter(({ kind }) => kind === "column").map(({ placeId, place }) => [placeId, { value: placeId, label: `Column ${place}` }])).values()];
  const choices = [...places.filter(({ kind }) => ["rack", "cleaning bay", "truck", "yard"].includes(kind)).map(({ id, name }) => ({ value: id, label: name })), ...atColumns];
  return (
    <Page title="Count" subtitle={`${project.name}: gear`} actions={<PrintButton />}>
      {items.length === 0 || choices.length === 0
        ? <EmptyState title="Nothing to count yet">Once gear is in the ledger it is counted here, place by place.</EmptyState>
        : can(role, "gear.count") ? <CountForm projectId={projectId} places={choices} items={items.map(({ id, name }) => ({ id, name }))} panels={panels} /> : null}
      {counts.length > 0 ? (
        <Section title="Locked counts">
          <div className="flex flex-col gap-4">
            {counts.map((count) => <LockedCount key={count.id} projectId={projectId} count={count} timeZone={project.timeZone} canSettle={can(role, "gear.settle")} canCount={can(role, "gear.count")} />)}
          </div>
        </Section>
      ) : null}
    </Page>
  );
}
