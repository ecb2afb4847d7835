import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getPanels } from "#lib/server/gear/pages/get-panels.ts";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { Refused } from "../../../../refused.tsx";
import { PanelButtons } from "../_parts/forms/panel-buttons.tsx";
import { PanelsTable } from "../_parts/panels-table.tsx";
import { SetList } from "../_parts/set-list.tsx";

export const metadata: Metadata = { title: "Panels and sets" };
type Props = { readonly params: Promise<{ projectId: string }> };

export default async function PanelsPage({ params }: Props) {
  const { projectId } = await params;
  const answer = await getPanels(await currentCaller(), { projectId });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, panels, sets, places, role } = answer.value;
  const alive = panels.filter(({ life }) => life.ended === null);
  const mayMove = can(role, "gear.move");
  const racks = places.filter(({ kind }) => kind === "rack" || kind === "cleaning bay" || kind === "yard").map(({ id, name }) => ({ value: id, label: name }));
  return (
    <Page
      title="Panels and sets" subtitle={`${project.name}: gear`} actions={<PrintButton />}
      facts={[{ label: "Panels in use", value: alive.length }, { label: "Sets", value: sets.length }, { label: "Scrapped or cut down", value: panels.length - alive.length }]}
    >
      {mayMove ? <PanelButtons projectId={projectId} racks={racks} free={alive.filter(({ setId }) => setId === null).map(({ itemId, name, widthMm, heightMm }) => ({ itemId, name, widthMm, heightMm }))} units={project.units} currency={project.currency} /> : null}
      <Section title="Sets" note="A made set on a column counts as cut">
        {sets.length === 0
          ? <EmptyState title="No set yet">Four panels that close one column make a set. Assign it to the next column and that column is cut without cutting.</EmptyState>
          : <SetList projectId={projectId} sets={sets} mayMove={mayMove} />}
      </Section>
      <Section title="Panels">
        {panels.length === 0
          ? <EmptyState title="No panel yet">Each panel is one of its kind, with its sheet, its uses and its repairs. Make the first ones above.</EmptyState>
          : <PanelsTable projectId={projectId} panels={panels} units={project.units} />}
      </Section>
    </Page>
  );
}
