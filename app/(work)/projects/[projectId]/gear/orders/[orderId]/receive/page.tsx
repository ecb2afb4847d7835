import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getOrder } from "#lib/server/gear/orders/get-orders.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../../../refused.tsx";
import { materialText, STATE_WORDS } from "../../_parts/order-words.ts";
import { ReceiveForm } from "./receive-form.tsx";

export const metadata: Metadata = { title: "Receive" };
type Props = { readonly params: Promise<{ projectId: string; orderId: string }> };

/** Counted at the truck, with a gloved thumb. */
export default async function ReceivePage({ params }: Props) {
  const { projectId, orderId } = await params;
  const answer = await getOrder(await currentCaller(), { projectId, orderId });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, role, today, order, materials, places } = answer.value;
  if (!can(role, "order.receive")) return <Refused failure={{ kind: "not-allowed", permission: "order.receive" }} />;
  const nameOf = (itemId: string, item: string): string => { const known = materials.find((each) => each.itemId === itemId); return known ? materialText(known, project.units) : item; };
  return (
    <Page title={`Receive ${order.number}`} subtitle={`${project.name}: ${order.supplier}`}>
      {order.ending || order.state === "complete" ? (
        <EmptyState title={`Order ${order.number}: ${STATE_WORDS[order.state]}`} actions={<ButtonLink size="glove" href={paths.gearOrder(projectId, orderId)}>See the order</ButtonLink>}>Nothing more is expected of it.</EmptyState>
      ) : (
        <ReceiveForm
          projectId={projectId} orderId={orderId} today={today} places={places.map(({ id, name }) => ({ value: id, label: name }))}
          lines={[...order.lines].sort((a, b) => Number(b.open > 0) - Number(a.open > 0)).map(({ itemId, item, open, quantity }) => ({ itemId, name: nameOf(itemId, item), open, quantity }))}
        />
      )}
    </Page>
  );
}
