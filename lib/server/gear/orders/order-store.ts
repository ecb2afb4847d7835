import "server-only";
import type { Day } from "#lib/kernel/days.ts";
import type { OrderEnding } from "#lib/trade/gear/orders.ts";
import type { ProjectScope } from "../../gate/scope.ts";

const within = (scope: ProjectScope) => ({ companyId: scope.companyId, projectId: scope.projectId });
const atMidnight = (day: string): Date => new Date(`${day}T00:00:00Z`);

type OrderLine = { readonly itemId: string; readonly item: string; readonly quantity: number; readonly priceEach: number | null };
type ReceiptLine = { readonly itemId: string; readonly taken: number; readonly short: number; readonly refused: number };
export type Receipt = {
  readonly id: string; readonly number: string; readonly on: Day; readonly reason: string | null; readonly movementId: string | null; readonly by: string; readonly place: string | null;
  readonly reversal: { readonly reason: string; readonly by: string; readonly at: string } | null; readonly lines: readonly ReceiptLine[];
};
export type OrderRow = {
  readonly id: string; readonly supplier: string; readonly number: string; readonly orderedOn: Day; readonly wantedOn: Day; readonly currency: string;
  readonly note: string | null; readonly by: string; readonly lines: readonly OrderLine[]; readonly receipts: readonly Receipt[];
  readonly ending: { readonly kind: OrderEnding; readonly reason: string; readonly by: string; readonly at: string } | null;
};

/** Orders of the project with everything that came against them, the one wanted first first; or one of them. */
export const listOrders = (scope: ProjectScope, orderId: string | null = null) =>
  scope.tx.$queryRaw<OrderRow[]>`
    select o.id::text, o.supplier, o.number, o.ordered_on::text "orderedOn", o.wanted_on::text "wantedOn", o.currency, o.note, p.name by,
      (select json_agg(json_build_object('itemId', l.item_id, 'item', i.name, 'quantity', l.quantity, 'priceEach', l.price_each) order by i.family, i.name)
        from material_order_line l join gear_item i on i.company_id = l.company_id and i.id = l.item_id
        where l.company_id = o.company_id and l.project_id = o.project_id and l.order_id = o.id) lines,
      coalesce((select json_agg(json_build_object('id', r.id, 'number', r.number, 'on', r.received_on, 'reason', r.reason, 'movementId', r.movement_id, 'by', w.name,
          'place', (select s.name from gear_line g join gear_place s on s.company_id = g.company_id and s.id = g.place_id
            where g.company_id = r.company_id and g.movement_id = r.movement_id and g.quantity > 0 limit 1),
          'reversal', (select json_build_object('reason', b.reason, 'by', v.name, 'at', to_char(b.arrived_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'))
            from material_receipt b join person v on v.company_id = b.company_id and v.id = b.by_person_id
            where b.company_id = r.company_id and b.project_id = r.project_id and b.reverses_id = r.id),
          'lines', (select json_agg(json_build_object('itemId', l.item_id, 'taken', l.taken, 'short', l.short, 'refused', l.refused))
            from material_receipt_line l where l.company_id = r.company_id and l.project_id = r.project_id and l.receipt_id = r.id)) order by r.received_on, r.id)
        from material_receipt r join person w on w.company_id = r.company_id and w.id = r.by_person_id
        where r.company_id = o.company_id and r.project_id = o.project_id and r.order_id = o.id and r.reverses_id is null), '[]') receipts,
      (select json_build_object('kind', e.kind, 'reason', e.reason, 'by', w.name, 'at', to_char(e.ended_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'))
        from material_order_end e join person w on w.company_id = e.company_id and w.id = e.by_person_id
        where e.company_id = o.company_id and e.project_id = o.project_id and e.order_id = o.id) ending
    from material_order o join person p on p.company_id = o.company_id and p.id = o.by_person_id
    where o.company_id = ${scope.companyId}::uuid and o.project_id = ${scope.projectId}::uuid and (${orderId}::uuid is null or o.id = ${orderId}::uuid)
    order by o.wanted_on, o.recorded_at, o.id`;

type NewOrder = { readonly id: string; readonly supplier: string; readonly number: string; readonly orderedOn: string; readonly wantedOn: string; readonly currency: string; readonly note: string | null };
export async function addOrder(scope: ProjectScope, { orderedOn, wantedOn, ...order }: NewOrder, lines: readonly { itemId: string; quantity: number; priceEach: number | null }[]): Promise<void> {
  await scope.tx.materialOrder.create({
    data: { ...order, ...within(scope), orderedOn: atMidnight(orderedOn), wantedOn: atMidnight(wantedOn), recordedAt: scope.now, byPersonId: scope.member.id }, select: { id: true },
  });
  await scope.tx.materialOrderLine.createMany({ data: lines.map((line) => ({ ...line, ...within(scope), orderId: order.id })) });
}

type NewReceipt = {
  readonly id: string; readonly orderId: string; readonly number: string | null; readonly on: string; readonly happenedAt: string; readonly reason: string | null;
  readonly reversesId: string | null; readonly movementId: string | null;
};
export async function addReceipt(scope: ProjectScope, { on, ...receipt }: NewReceipt, lines: readonly ReceiptLine[]): Promise<void> {
  await scope.tx.materialReceipt.create({ data: { ...receipt, ...within(scope), receivedOn: atMidnight(on), arrivedAt: scope.now, byPersonId: scope.member.id }, select: { id: true } });
  if (lines.length > 0) await scope.tx.materialReceiptLine.createMany({ data: lines.map((line) => ({ ...line, ...within(scope), receiptId: receipt.id, orderId: receipt.orderId })) });
}

export const addEnding = (scope: ProjectScope, orderId: string, kind: OrderEnding, reason: string) =>
  scope.tx.materialOrderEnd.create({ data: { ...within(scope), orderId, kind, reason, endedAt: scope.now, byPersonId: scope.member.id }, select: { orderId: true } });

export const findReceipt = (scope: ProjectScope, receiptId: string) =>
  scope.tx.materialReceipt.findFirst({ where: { ...within(scope), id: receiptId, reversesId: null }, include: { order: { select: { number: true } }, reversal: { select: { id: true } } } });

/** The docket under which a movement was received, and its order; null for any other movement. */
export const findReceiptOf = (scope: ProjectScope, movementId: string) =>
  scope.tx.materialReceipt.findFirst({ where: { companyId: scope.companyId, movementId, reversesId: null }, select: { number: true, order: { select: { number: true } } } });
