import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { materialKey } from "#lib/contracts/planning/orders.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getOrders, type OrdersPage } from "#lib/server/gear/orders/get-orders.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../refused.tsx";
import { AtHand } from "./_parts/at-hand.tsx";
import { materialText } from "./_parts/order-words.ts";
import { OrdersTable } from "./_parts/orders-table.tsx";
import { StockButtons } from "./_parts/stock-buttons.tsx";

export const metadata: Metadata = { title: "Ply and timber" };
type Props = { readonly params: Promise<{ projectId: string }> };

/** What was ordered of sheets and timber, what has come of it, and what lies at hand. */
export default async function OrdersPageShown({ params }: Props) {
  const { projectId } = await params;
  const answer = await getOrders(await currentCaller(), { projectId });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, role, orders, sizes, places } = answer.value;
  const bought = new Set([...sizes.map(materialKey), ...orders.flatMap(({ lines }) => lines.map(({ itemId }) => itemId))]);
  const isBought = (material: OrdersPage["materials"][number]): boolean => bought.has(materialKey(material)) || bought.has(material.itemId);
  // Offcuts come and go in any size: they are listed while they lie there.
  const materials = answer.value.materials.filter((material) => isBought(material) || material.atHand > 0);
  const toCome = orders.filter(({ state }) => state === "open" || state === "part");
  const ended = orders.filter((order) => !toCome.includes(order)).reverse();
  const late = toCome.filter(({ isLate }) => isLate).length;
  const known = [...sizes, ...materials.filter(isBought)].map(({ use, material, lengthMm, widthMm }) => ({ use, material, lengthMm, widthMm }));
  const choices = [...new Map(known.map((each) => [materialKey(each), each]))].map(([id, material]) => ({ id, name: materialText(material, project.units), material }));
  const lying = materials.filter(({ atHand }) => atHand > 0).map((material) => ({ id: material.itemId, name: materialText(material, project.units), at: Object.fromEntries(material.at.map(({ placeId, quantity }) => [placeId, quantity])) }));
  const where = [...new Map([...places.map(({ id, name }) => [id, name] as const), ...materials.flatMap(({ at }) => at.map(({ placeId, place }) => [placeId, place] as const))])].map(([value, label]) => ({ value, label }));
  return (
    <Page
      title="Ply and timber" subtitle={`${project.name}: orders`} facts={[{ label: "To come", value: toCome.length }, { label: "Late", value: late }]}
      actions={<>{orders.length > 0 ? <ButtonLink download href={paths.orderPart(projectId, "table")}>Table CSV</ButtonLink> : null}<PrintButton /></>}
    >
      <nav aria-label="Buy" className="no-print flex flex-wrap gap-3">
        <ButtonLink size="glove" kind="primary" href={paths.orderPart(projectId, "buy")}>What to buy</ButtonLink>
        {can(role, "order.record") ? <ButtonLink size="glove" href={paths.orderPart(projectId, "new")}>Write an order</ButtonLink> : null}
      </nav>
      {toCome.length > 0
        ? <Section title="To come"><OrdersTable caption="Orders to come" projectId={projectId} orders={toCome} isOpen /></Section>
        : <EmptyState title={orders.length === 0 ? "Nothing is ordered yet" : "Nothing is to come"}>What to buy works out sheets and timber from the cutting plan and the days the columns are planned to stand. An order written from it is received here, docket by docket.</EmptyState>}
      <Section title="At hand" note="sheets and lengths not yet cut, and what is on order">
        <div className="flex flex-col gap-3">
          {materials.length > 0 ? <AtHand projectId={projectId} materials={materials} units={project.units} /> : <p>No sheet or length is counted yet.</p>}
          {can(role, "gear.move") ? <StockButtons projectId={projectId} sizes={choices} lying={lying} places={where} /> : null}
        </div>
      </Section>
      {ended.length > 0 ? <Section title="Received, closed and cancelled" note="the latest first"><OrdersTable caption="Orders that have ended" projectId={projectId} orders={ended} isOpen={false} /></Section> : null}
    </Page>
  );
}
