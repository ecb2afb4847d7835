import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { addDays, instantOf, isDay, toDay } from "#lib/kernel/days.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getGear, type GearPage } from "#lib/server/gear/pages/get-gear.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../refused.tsx";
import { AsOf } from "./_parts/as-of.tsx";
import { GearButtons } from "./_parts/forms/gear-buttons.tsx";
import { ShortfallList } from "./_parts/forms/shortfall-list.tsx";
import { StandingsTable } from "./_parts/standings-table.tsx";

export const metadata: Metadata = { title: "Gear" };
type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<{ on?: string }> };

/** What lies at each place, by item: what a crew can take from there. */
function lying({ standings }: GearPage) {
  const items = new Map<string, { id: string; name: string; at: Record<string, number> }>();
  for (const { itemId, item, placeId, quantity } of standings) {
    const known = items.get(itemId) ?? { id: itemId, name: item, at: {} };
    known.at[placeId] = quantity;
    items.set(itemId, known);
  }
  return [...items.values()];
}

export default async function GearPageShown({ params, searchParams }: Props) {
  const [{ projectId }, { on }] = [await params, await searchParams];
  const caller = await currentCaller();
  const first = await getGear(caller, { projectId });
  if (!first.ok) return <Refused failure={first.failure} />;
  const { project } = first.value;
  // As of a day: everything that had happened by its end on site.
  const day = on !== undefined && isDay(on) ? on : null;
  const then = day === null ? first : await getGear(caller, { projectId, at: new Date(Date.parse(instantOf(addDays(toDay(day), 1), "00:00", project.timeZone)) - 1).toISOString() });
  if (!then.ok) return <Refused failure={then.failure} />;
  const { standings, shortfalls, items, places, readAt, role } = first.value;
  const choices = places.map(({ id, name, kind }) => ({ value: id, label: name, kind }));
  return (
    <Page title="Gear" subtitle={project.name} actions={<><ButtonLink href={paths.gearItems(projectId)}>Items and places</ButtonLink><PrintButton /></>} facts={[{ label: "As of", value: day === null ? <TimeText at={readAt} timeZone={project.timeZone} /> : <DayText day={day} /> }]}>
      {shortfalls.length > 0 ? <ShortfallList projectId={projectId} shortfalls={shortfalls} places={choices} canSettle={can(role, "gear.settle")} /> : null}
      {can(role, "gear.move") ? <GearButtons projectId={projectId} items={items.map(({ id, name }) => ({ id, name }))} lying={lying(first.value)} places={choices} /> : null}
      {standings.length === 0 ? (
        <EmptyState title="No gear is counted here yet">
          Take in what the company owns, or receive a delivery. From then on the ticks on the columns move the gear: clamped takes clamps and wedges to the column, stripped brings everything to the cleaning bay.
        </EmptyState>
      ) : (
        <Section title="What is where" actions={<AsOf projectId={projectId} day={day} />}>
          {then.value.standings.length === 0
            ? <p>Nothing was counted by then.</p>
            : <StandingsTable projectId={projectId} standings={then.value.standings} caption="Pieces by item and place" />}
        </Section>
      )}
    </Page>
  );
}
