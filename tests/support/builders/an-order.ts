import type { Caller } from "#lib/server/gate/caller.ts";
import { dayIn, addDays, type Day } from "#lib/kernel/days.ts";
import { getOrder, getOrders } from "#lib/server/gear/orders/get-orders.ts";
import { placeOrder } from "#lib/server/gear/orders/place-order.ts";
import { receiveOrder } from "#lib/server/gear/orders/receive.ts";
import { anId } from "./a-site-event.ts";
import { PROJECT } from "./a-project.ts";
import { valueOf } from "./value-of.ts";

/** The site day of the projects that tests make, some days from today. */
export const siteDay = (days = 0): Day => addDays(dayIn(new Date().toISOString(), PROJECT.timeZone), days);

export const PLY = { use: "sheet" as const, material: "Film-faced ply 18 mm", lengthMm: 2400, widthMm: 1200 };
export const PINE = { use: "backing" as const, material: "Timber 95 × 47 mm", lengthMm: 4800, widthMm: null };

type Wishes = { readonly number?: string; readonly supplier?: string; readonly orderedOn?: string; readonly wantedOn?: string; readonly ply?: number; readonly pine?: number };

export const orderOf = (projectId: string, wishes: Wishes = {}) => ({
  projectId, orderId: anId(), supplier: wishes.supplier ?? "Coppice Timber", number: wishes.number ?? `PO-${anId().slice(-6)}`,
  orderedOn: wishes.orderedOn ?? siteDay(-3), wantedOn: wishes.wantedOn ?? siteDay(4), note: null,
  lines: [{ ...PLY, quantity: wishes.ply ?? 40, priceEach: 7800 }, { ...PINE, quantity: wishes.pine ?? 60, priceEach: null }],
});

/** Sheets and timber ordered: the ids a receipt asks for. */
export async function anOrder(by: Caller, projectId: string, wishes: Wishes = {}) {
  const { orderId } = valueOf(await placeOrder(by, orderOf(projectId, wishes)));
  const { order } = valueOf(await getOrder(by, { projectId, orderId }));
  const { places } = valueOf(await getOrders(by, { projectId }));
  const itemOf = (start: string): string => order.lines.find(({ item }) => item.startsWith(start))?.itemId ?? "";
  return { orderId, number: order.number, ply: itemOf("Film"), pine: itemOf("Timber"), yard: places[0]?.id ?? "" };
}
export type AnOrder = Awaited<ReturnType<typeof anOrder>>;

type Counted = { readonly taken: number; readonly short?: number; readonly refused?: number };
export const receiptOf = (projectId: string, order: AnOrder, ply: Counted | number, more: { number?: string; on?: string; reason?: string } = {}) => ({
  projectId, orderId: order.orderId, receiptId: anId(), number: more.number ?? `D-${anId().slice(-6)}`, receivedOn: more.on ?? siteDay(), placeId: order.yard, reason: more.reason ?? null,
  lines: [{ itemId: order.ply, ...(typeof ply === "number" ? { taken: ply } : ply) }],
});

export async function aReceipt(by: Caller, projectId: string, order: AnOrder, ply: number): Promise<string> {
  return valueOf(await receiveOrder(by, receiptOf(projectId, order, ply))).receiptId;
}
