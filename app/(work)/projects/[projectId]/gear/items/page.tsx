import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getItems } from "#lib/server/gear/pages/get-gear.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { DataTable } from "#app/_ui/page/data-table.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../refused.tsx";
import { FAMILY_WORDS, PLACE_WORDS } from "../_parts/item-words.ts";
import { moneyText } from "../_parts/money.ts";
import { AddItem } from "./add-item.tsx";
import { AddPlace, RenamePlace } from "./place-forms.tsx";

export const metadata: Metadata = { title: "Items and places" };
type Props = { readonly params: Promise<{ projectId: string }> };

/** What can be counted and where it can be: the office adds items, everybody names places. */
export default async function ItemsPage({ params }: Props) {
  const { projectId } = await params;
  const answer = await getItems(await currentCaller(), { projectId });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, items, places, kinds, role } = answer.value;
  return (
    <Page title="Items and places" subtitle={`${project.name}: gear`}>
      <Section title="Items" note="of the company; panels are listed under Panels and sets, sheets and timber come in by Orders">
        <div className="flex flex-col gap-4">
          {items.length === 0 ? <EmptyState title="No item yet">Clamp kinds of the set-up become items by themselves when gear is first taken in; whatever else is counted is added below.</EmptyState> : (
            <DataTable
              caption="Items" isCaptionHidden rows={items} rowKey={({ id }) => id}
              columns={[
                { key: "name", head: "Item", isRowHead: true, cell: ({ id, name }) => <Link href={paths.gearItem(projectId, id)} className="inline-flex min-h-hand items-center sm:min-h-0">{name}</Link> },
                { key: "family", head: "What it is", cell: ({ family }) => FAMILY_WORDS[family] },
                { key: "parts", head: "One set is", cell: ({ barsEach, wedgesEach }) => (barsEach === null ? "–" : `${barsEach} bars, locked by ${wedgesEach ?? 0} wedges`) },
                { key: "loss", head: "Price when lost", isFigure: true, cell: ({ lossPrice, currency }) => (lossPrice === null || currency === null ? "–" : moneyText(lossPrice, currency)) },
              ]}
            />
          )}
          {can(role, "gear.settle") ? <AddItem projectId={projectId} currency={project.currency} kinds={kinds.filter(({ hasSet }) => !hasSet)} /> : <p className="text-sm text-ink-soft">The owner and the office add items.</p>}
        </div>
      </Section>
      <Section title="Places" note="racks, bays and trucks of this project, yards of the company">
        <div className="flex flex-col gap-4">
          {places.length === 0 ? <p>No place yet: a rack and a cleaning bay come with the first gear.</p> : (
            <ul className="border-2 border-ink bg-sheet">
              {places.map(({ id, name, kind }) => (
                <li key={id} className="flex flex-wrap items-center justify-between gap-3 border-b border-rule-soft px-4 py-2 last:border-b-0">
                  <p><strong className="font-semibold">{name}</strong> <span className="text-ink-soft">{PLACE_WORDS[kind]}</span></p>
                  {can(role, "gear.move") && (kind === "rack" || kind === "cleaning bay" || kind === "truck" || kind === "yard") ? <RenamePlace projectId={projectId} place={{ id, name, kind }} /> : null}
                </li>
              ))}
            </ul>
          )}
          {can(role, "gear.move") ? <AddPlace projectId={projectId} /> : null}
        </div>
      </Section>
    </Page>
  );
}
