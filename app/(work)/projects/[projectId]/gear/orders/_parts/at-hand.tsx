import type { OrdersPage } from "#lib/server/gear/orders/get-orders.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { DataTable } from "#app/_ui/page/data-table.tsx";
import { paths } from "#app/paths.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { materialText } from "./order-words.ts";

/** What lies where, and what is on order, by size. */
export function AtHand({ projectId, materials, units }: { readonly projectId: string; readonly materials: OrdersPage["materials"]; readonly units: Units }) {
  return (
    <DataTable
      caption="Ply and timber by size" isCaptionHidden rows={materials} rowKey={({ itemId }) => itemId}
      columns={[
        { key: "what", head: "Size", isRowHead: true, cell: (material) => <Link href={paths.gearItem(projectId, material.itemId)} className="inline-flex min-h-hand min-w-40 items-center sm:min-h-0">{materialText(material, units)}</Link> },
        { key: "hand", head: "At hand", isFigure: true, cell: ({ atHand }) => <strong>{atHand}</strong> },
        { key: "where", head: "Where", cell: ({ at }) => at.map(({ place, quantity }) => (at.length > 1 ? `${place} ${quantity}` : place)).join(", ") || "–" },
        { key: "coming", head: "On order", isFigure: true, cell: ({ coming }) => coming.reduce((sum, { count }) => sum + count, 0) || "–" },
      ]}
    />
  );
}
