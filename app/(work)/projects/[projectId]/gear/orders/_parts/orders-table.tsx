import type { OrdersPage } from "#lib/server/gear/orders/get-orders.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { amountText } from "#app/_ui/value/money.tsx";
import { paths } from "#app/paths.ts";
import { STATE_WORDS } from "./order-words.ts";

type Order = OrdersPage["orders"][number];
export type OrdersTableProps = { readonly caption: string; readonly projectId: string; readonly orders: readonly Order[]; readonly isOpen: boolean };

/** Orders with what is still to come of them, or, once they have ended, how. */
export function OrdersTable({ caption, projectId, orders, isOpen }: OrdersTableProps) {
  const columns: DataColumn<Order>[] = [
    { key: "number", head: "Order", isRowHead: true, cell: ({ id, number }) => <Link href={paths.gearOrder(projectId, id)} className="inline-flex min-h-hand items-center whitespace-nowrap sm:min-h-0">{number}</Link> },
    { key: "supplier", head: "Merchant", cell: ({ supplier }) => supplier },
    { key: "wanted", head: "Wanted", cell: ({ wantedOn, isLate }) => <><DayText day={wantedOn} />{isLate ? <span className="block text-sm font-bold uppercase text-flag-deep">late</span> : null}</> },
    {
      key: "what", head: isOpen ? "Still to come" : "Ordered",
      cell: ({ lines }) => <ul>{lines.filter(({ open }) => !isOpen || open > 0).map(({ itemId, item, open, quantity }) => <li key={itemId}>{isOpen ? `${open} of ${quantity}` : quantity} × {item}</li>)}</ul>,
    },
    { key: "state", head: "Standing", cell: ({ state }) => STATE_WORDS[state] },
    { key: "sum", head: "Sum", isFigure: true, cell: ({ sum, currency, withoutPrice, lines }) => (withoutPrice === lines.length ? "–" : `${amountText(sum, currency)} ${currency}`) },
  ];
  return <DataTable caption={caption} isCaptionHidden columns={columns} rows={orders} rowKey={({ id }) => id} />;
}
