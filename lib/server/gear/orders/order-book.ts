import "server-only";
import type { Day } from "#lib/kernel/days.ts";
import { isLate, orderState, stillToCome, type OrderedLine } from "#lib/trade/gear/orders.ts";
import type { OrderRow, Receipt } from "./order-store.ts";

const standing = (receipts: readonly Receipt[]): Receipt[] => receipts.filter(({ reversal }) => reversal === null);

/** What was ordered and what the receipts that stand have brought of it. */
export const orderedLines = ({ lines, receipts }: OrderRow): OrderedLine[] =>
  lines.map(({ itemId, quantity }) => ({ itemId, quantity, taken: standing(receipts).flatMap((receipt) => receipt.lines).reduce((sum, line) => sum + (line.itemId === itemId ? line.taken : 0), 0) }));

/** Dockets that stand against an order. */
export const docketNumbers = ({ receipts }: OrderRow): string[] => standing(receipts).map(({ number }) => number);

/** An order with where it stands. */
export function withState(order: OrderRow, today: Day) {
  const ordered = orderedLines(order);
  const state = orderState(ordered, order.ending?.kind ?? null);
  const lines = order.lines.map((line, index) => {
    const known = ordered[index] ?? { itemId: line.itemId, quantity: line.quantity, taken: 0 };
    return { ...line, taken: known.taken, open: stillToCome(known, state), over: Math.max(known.taken - line.quantity, 0) };
  });
  // A price may be agreed for some lines only: the sum is of those, and says so.
  const sum = order.lines.reduce((all, { quantity, priceEach }) => all + quantity * (priceEach ?? 0), 0);
  return { ...order, lines, state, isLate: isLate(order.wantedOn, state, today), sum, withoutPrice: order.lines.filter(({ priceEach }) => priceEach === null).length };
}
export type OrderShown = ReturnType<typeof withState>;
