import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getGearItem } from "#lib/server/gear/pages/get-gear.ts";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../../refused.tsx";
import { ItemForm } from "../../_parts/forms/item-form.tsx";
import { MovementList } from "../../_parts/movement-list.tsx";
import { StandingsTable } from "../../_parts/standings-table.tsx";

export const metadata: Metadata = { title: "Gear item" };
type Props = { readonly params: Promise<{ projectId: string; itemId: string }> };

/** One thing that is counted: where it is, how it got there, and what one costs when it is lost. */
export default async function GearItemPage({ params }: Props) {
  const { projectId, itemId } = await params;
  const answer = await getGearItem(await currentCaller(), { projectId, itemId });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, item, kept, standings, movements, role } = answer.value;
  if (item.family === "panel") redirect(paths.gearPanel(projectId, itemId));
  return (
    <Page title={item.name} subtitle={`${project.name}: gear`}>
      <Section title="Where it is"><StandingsTable projectId={projectId} standings={standings} caption="Pieces by place" /></Section>
      {kept && can(role, "gear.settle") ? <Section title="About one piece"><ItemForm projectId={projectId} item={kept} currency={kept.currency ?? project.currency} /></Section> : null}
      <Section title="Movements">
        {movements.length === 0 ? <p>It has not moved yet.</p> : <MovementList projectId={projectId} timeZone={project.timeZone} movements={movements} />}
      </Section>
    </Page>
  );
}
