import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getOrder } from "#lib/server/gear/orders/get-orders.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { DataTable } from "#app/_ui/page/data-table.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { amountText } from "#app/_ui/value/money.tsx";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../../refused.tsx";
import { materialText, STATE_WORDS } from "../_parts/order-words.ts";
import { EndOrder } from "./end-order.tsx";
import { ReceiptList } from "./receipt-list.tsx";

export const metadata: Metadata = { title: "Order" };
type Props = { readonly params: Promise<{ projectId: string; orderId: string }> };

/** One order: on paper what the merchant needs, on the screen what has come of it as well. */
export default async function OrderPageShown({ params }: Props) {
  const { projectId, orderId } = await params;
  const answer = await getOrder(await currentCaller(), { projectId, orderId });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, role, order, materials, company } = answer.value;
  const { state, lines, currency, isLate, ending } = order;
  const isOpen = state === "open" || state === "part";
  const nameOf = (itemId: string, item: string): string => { const known = materials.find((each) => each.itemId === itemId); return known ? materialText(known, project.units) : item; };
  const named = lines.map((line) => ({ ...line, item: nameOf(line.itemId, line.item) }));
  const money = (minor: number | null): string => (minor === null ? "–" : amountText(minor, currency));
  return (
    <Page
      title={`Order ${order.number}`} subtitle={`${project.name}: ply and timber`} isSheet actions={<PrintButton />}
      facts={[
        { label: "To", value: order.supplier }, { label: "From", value: company }, { label: "Deliver to", value: project.site || project.name }, { label: "Ordered", value: <DayText day={order.orderedOn} /> },
        { label: "Wanted", value: <><DayText day={order.wantedOn} />{isLate ? <span className="no-print ml-2 text-sm font-bold uppercase text-flag-deep">late</span> : null}</> },
      ]}
    >
      <p className="no-print"><strong className="font-semibold">Standing:</strong> {STATE_WORDS[state]}</p>
      {ending ? <Notice title={`${ending.kind === "cancelled" ? "Cancelled" : "Closed"} by ${ending.by}`}>{ending.reason} (<TimeText at={ending.at} timeZone={project.timeZone} />)</Notice> : null}
      {isOpen && can(role, "order.receive") ? <div className="no-print"><ButtonLink size="glove" kind="primary" href={paths.gearOrder(projectId, orderId, "receive")}>Receive what has come</ButtonLink></div> : null}
      <DataTable
        caption={`Order ${order.number}`} isCaptionHidden rows={named} rowKey={({ itemId }) => itemId}
        columns={[
          { key: "what", head: "What", isRowHead: true, cell: ({ item }) => <span className="inline-block min-w-40">{item}</span> },
          { key: "quantity", head: "Pieces", isFigure: true, cell: ({ quantity }) => quantity },
          { key: "taken", head: <span className="no-print">Taken</span>, isFigure: true, cell: ({ taken, over }) => <span className="no-print">{taken}{over > 0 ? <span className="block text-sm">{over} over</span> : null}</span> },
          { key: "open", head: <span className="no-print">To come</span>, isFigure: true, cell: ({ open }) => <strong className="no-print">{open}</strong> },
          { key: "each", head: `Each (${currency})`, isFigure: true, cell: ({ priceEach }) => money(priceEach) },
          { key: "sum", head: `Sum (${currency})`, isFigure: true, cell: ({ priceEach, quantity }) => money(priceEach === null ? null : priceEach * quantity) },
        ]}
        foot={order.withoutPrice === lines.length ? null : (
          <tr><th scope="row" colSpan={5} className="px-3 py-2 text-left">Sum before tax{order.withoutPrice > 0 ? `, ${order.withoutPrice} without a price` : ""}</th><td className="whitespace-nowrap px-3 py-2 text-right">{amountText(order.sum, currency)}</td></tr>
        )}
      />
      {order.note ? <p><strong className="font-semibold">Note:</strong> {order.note}</p> : null}
      <p className="text-sm text-ink-soft">Written down by {order.by}.</p>
      {order.receipts.length > 0 ? (
        <Section title="Received" className="no-print"><ReceiptList projectId={projectId} timeZone={project.timeZone} receipts={order.receipts} nameOf={(itemId) => named.find((line) => line.itemId === itemId)?.item ?? "item"} canReverse={can(role, "order.record")} /></Section>
      ) : null}
      {isOpen && can(role, "order.record") ? <EndOrder projectId={projectId} orderId={orderId} number={order.number} kind={order.receipts.some(({ reversal }) => reversal === null) ? "closed" : "cancelled"} /> : null}
    </Page>
  );
}
