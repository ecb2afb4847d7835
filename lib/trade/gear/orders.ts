/** Pieces of one item: what was ordered, and what has come of it by the receipts that stand. */
export type OrderedLine = { readonly itemId: string; readonly quantity: number; readonly taken: number };
export type OrderEnding = "cancelled" | "closed";
/** Nothing taken yet, some of it, all of it; cancelled before anything came, or closed with the rest not to come. */
export const ORDER_STATES = ["open", "part", "complete", "cancelled", "closed"] as const;
export type OrderState = (typeof ORDER_STATES)[number];

/** Where an order stands: worked out from its receipts, never kept. */
export function orderState(lines: readonly OrderedLine[], ending: OrderEnding | null): OrderState {
  if (ending === "cancelled") return "cancelled";
  if (lines.every(({ quantity, taken }) => taken >= quantity)) return "complete";
  if (ending !== null) return ending;
  return lines.some(({ taken }) => taken > 0) ? "part" : "open";
}

/** Pieces still to come; none of an order that has ended. What came over on one line does not pay for another. */
export const stillToCome = (line: OrderedLine, state: OrderState): number =>
  state === "open" || state === "part" ? Math.max(line.quantity - line.taken, 0) : 0;

/** Wanted before today and not all there. Days as YYYY-MM-DD. */
export const isLate = (wantedOn: string, state: OrderState, today: string): boolean => wantedOn < today && (state === "open" || state === "part");

export type ReceivedLine = {
  readonly itemId: string;
  /** Taken into the yard; on the docket and not on the truck; damaged and sent back. Whole pieces. */
  readonly taken: number; readonly short: number; readonly refused: number;
};
type Receipt = { readonly number: string; readonly on: string; readonly reason: string | null; readonly lines: readonly ReceivedLine[] };
type Order = {
  readonly number: string; readonly orderedOn: string; readonly ending: OrderEnding | null; readonly lines: readonly OrderedLine[];
  /** Dockets that stand against it. */
  readonly dockets: readonly string[];
};
export type ReceiptFault = { readonly code: string; readonly values: Readonly<Record<string, string | number>> };

/** What stands against a receipt, or null. `nameOf` is only asked for the message. */
export function judgeReceipt(order: Order, receipt: Receipt, today: string, nameOf: (itemId: string) => string): ReceiptFault | null {
  if (order.ending !== null) return { code: "order-has-ended", values: { number: order.number, how: order.ending } };
  if (receipt.on < order.orderedOn) return { code: "receipt-before-order", values: { number: order.number, on: receipt.on, ordered: order.orderedOn } };
  if (receipt.on > today) return { code: "receipt-to-come", values: { on: receipt.on, today } };
  if (order.dockets.some((number) => number.toLowerCase() === receipt.number.toLowerCase())) return { code: "receipt-known", values: { docket: receipt.number, number: order.number } };
  for (const { itemId, taken, refused } of receipt.lines) {
    const line = order.lines.find((each) => each.itemId === itemId);
    if (!line) return { code: "receipt-not-ordered", values: { item: nameOf(itemId), number: order.number } };
    if (receipt.reason !== null) continue;
    const over = line.taken + taken - line.quantity;
    if (taken > 0 && over > 0) return { code: "receipt-over", values: { item: nameOf(itemId), ordered: line.quantity, before: line.taken, taken, over } };
    if (refused > 0) return { code: "receipt-refused-why", values: { item: nameOf(itemId), refused } };
  }
  return null;
}
