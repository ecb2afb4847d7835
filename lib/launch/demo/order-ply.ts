import { addDays, dayIn } from "#lib/kernel/days.ts";
import { uuidv7From } from "#lib/kernel/ids.ts";
import { randomBytes } from "node:crypto";
import type { Caller } from "#lib/server/gate/caller.ts";
import { getOrder, getOrders } from "#lib/server/gear/orders/get-orders.ts";
import { placeOrder } from "#lib/server/gear/orders/place-order.ts";
import { receiveOrder } from "#lib/server/gear/orders/receive.ts";
import { must } from "./must.ts";

const MERCHANT = "Coppice & Dray Timber";
/** Pieces of each size ordered, and what came so far; in the order the project keeps its sizes. Invented. */
const ORDERED = [60, 90, 24];
const CAME = [40, 90, 0];

const newId = (): string => uuidv7From(Date.now(), randomBytes(10));

/** One order for the level to come, of which part has come: some sheets are open, two went back. */
export async function orderPly(office: Caller, gate: Caller, site: { projectId: string; timeZone: string }): Promise<void> {
  const { projectId, timeZone } = site;
  const today = dayIn(new Date().toISOString(), timeZone);
  const { sizes } = must("read the sizes", await getOrders(office, { projectId }));
  const lines = sizes.slice(0, ORDERED.length).map(({ use, material, lengthMm, widthMm, price }, index) => ({ use, material, lengthMm, widthMm, quantity: ORDERED[index] ?? 1, priceEach: price }));
  const { orderId } = must("order ply", await placeOrder(office, {
    projectId, orderId: newId(), supplier: MERCHANT, number: "LW-PO 31", orderedOn: addDays(today, -6), wantedOn: addDays(today, -1), note: "Deliver before 9, crane from 10", lines,
  }));
  const { order, places } = must("read the order", await getOrder(office, { projectId, orderId }));
  const counted = order.lines.map((line) => {
    const taken = CAME[ORDERED.indexOf(line.quantity)] ?? 0;
    return { itemId: line.itemId, taken, short: 0, refused: taken === 40 ? 2 : 0 };
  });
  must("receive ply", await receiveOrder(gate, {
    projectId, orderId, receiptId: newId(), number: "CD 88214", receivedOn: addDays(today, -2), placeId: places.find(({ kind }) => kind === "rack")?.id ?? "",
    reason: "Two sheets delaminated at the edge", lines: counted.filter(({ taken, refused }) => taken + refused > 0),
  }));
}
