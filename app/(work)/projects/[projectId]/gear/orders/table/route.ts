import { currentCaller } from "#lib/server/gate/session.ts";
import { getOrders } from "#lib/server/gear/orders/get-orders.ts";
import { amountFigure } from "#lib/kernel/money.ts";
import { csvOf } from "#app/_ui/value/sheet-table.ts";
import { answerFailure } from "#app/api/answer-failure.ts";
import { STATE_WORDS } from "../_parts/order-words.ts";

type Context = { readonly params: Promise<{ projectId: string }> };

/** One row a line of an order. */
export async function GET(_: Request, { params }: Context): Promise<Response> {
  const answer = await getOrders(await currentCaller(), { projectId: (await params).projectId });
  if (!answer.ok) return answerFailure(answer.failure);
  const { orders, project: { currency } } = answer.value;
  const heads = ["Order", "Merchant", "Ordered on", "Wanted on", "Standing", "Late", "What", "Ordered", "Taken", "To come", `Each (${currency})`, `Sum (${currency})`, "Dockets", "Ended because", "Note", "Entered by"];
  const money = (minor: number | null): number | null => (minor === null ? null : Number(amountFigure(minor, currency)));
  const rows = orders.flatMap((order) => order.lines.map(({ itemId, item, quantity, taken, open, priceEach }) => [
    order.number, order.supplier, order.orderedOn, order.wantedOn, STATE_WORDS[order.state], order.isLate ? "late" : null, item, quantity, taken, open, money(priceEach),
    money(priceEach === null ? null : priceEach * quantity), order.receipts.filter(({ reversal, lines }) => reversal === null && lines.some((line) => line.itemId === itemId)).map(({ number }) => number).join("; "),
    order.ending?.reason ?? null, order.note, order.by,
  ]));
  return new Response(csvOf({ name: "Orders", heads, rows }), {
    headers: { "content-type": "text/csv; charset=utf-8", "content-disposition": 'attachment; filename="ply-and-timber-orders.csv"', "cache-control": "no-store" },
  });
}
