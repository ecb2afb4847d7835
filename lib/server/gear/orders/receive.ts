import "server-only";
import { receiveOrderInput, reverseReceiptInput } from "#lib/contracts/planning/orders.ts";
import { dayIn, instantOf, toDay } from "#lib/kernel/days.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { judgeReceipt } from "#lib/trade/gear/orders.ts";
import { transfer } from "#lib/trade/gear/ledger.ts";
import { takeNumbers, writeChange } from "../../gate/change-line.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { clashOf } from "../../platform/db.ts";
import { newId } from "../../platform/new-id.ts";
import { readProject } from "../../projects/store.ts";
import { projectPlaces } from "../ledger/place-store.ts";
import { postMovements, reverseMovement } from "../ledger/post-movements.ts";
import { docketNumbers, orderedLines } from "./order-book.ts";
import { addReceipt, findReceipt, listOrders } from "./order-store.ts";

const KEPT_AT = ["yard", "rack", "truck"];

/**
 * What came on one docket. What is taken goes into the ledger from what the company bought; what is short or went back
 * damaged stays to come. More than was ordered is taken only with a reason.
 */
export const receiveOrder = projectUseCase("gear.receiveOrder", "order.receive", receiveOrderInput, async (scope, { orderId, receiptId, number, receivedOn, placeId, reason, lines }) => {
  // The project's row lock: of two who count at once the second hears what the first took.
  const seq = await takeNumbers(scope, 1);
  const [order] = await listOrders(scope, orderId);
  if (!order) return notFound("order");
  if (order.receipts.some(({ id }) => id === receiptId)) return brokenRule("receipt-recorded-already", { docket: number });
  const { timeZone } = await readProject(scope);
  const today = dayIn(scope.now, timeZone);
  const fault = judgeReceipt(
    { number: order.number, orderedOn: order.orderedOn, ending: order.ending?.kind ?? null, lines: orderedLines(order), dockets: docketNumbers(order) },
    { number, on: receivedOn, reason, lines }, today, (itemId) => order.lines.find((line) => line.itemId === itemId)?.item ?? "This size",
  );
  if (fault) return brokenRule(fault.code, fault.values);
  const places = await projectPlaces(scope);
  const source = places.find(({ kind }) => kind === "bought");
  if (!source || !places.some(({ id, kind }) => id === placeId && KEPT_AT.includes(kind))) return notFound("place");
  const taken = lines.filter((line) => line.taken > 0);
  // Of an earlier day only the day is known.
  const happenedAt = receivedOn === today ? scope.now : instantOf(toDay(receivedOn), "12:00", timeZone);
  const posted = taken.length === 0 ? ok([] as readonly string[]) : await postMovements(scope, [{
    kind: "delivered", projectId: scope.projectId, happenedAt, reason: `${order.supplier}, docket ${number}`, lines: taken.flatMap((line) => transfer(line.itemId, source.id, placeId, line.taken)),
  }]);
  if (!posted.ok) return posted;
  try {
    await addReceipt(scope, { id: receiptId, orderId, number, on: receivedOn, happenedAt, reason, reversesId: null, movementId: posted.value[0] ?? null }, lines);
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("receipt-recorded-already", { docket: number });
    throw error;
  }
  await writeChange(scope, seq, { kind: "set-up", detail: { received: number, order: order.number, pieces: taken.reduce((sum, line) => sum + line.taken, 0) } });
  return ok({ receiptId });
});

/** Takes a receipt back, once, with a reason: the pieces leave the yard again, as if they had not come. */
export const reverseReceipt = projectUseCase("gear.reverseReceipt", "order.record", reverseReceiptInput, async (scope, { receiptId, reason }) => {
  const seq = await takeNumbers(scope, 1);
  const receipt = await findReceipt(scope, receiptId);
  if (!receipt) return notFound("receipt");
  if (receipt.reversal.length > 0) return brokenRule("receipt-reversed-already", { docket: receipt.number ?? "" });
  const mirrored = receipt.movementId === null ? null : await reverseMovement(scope, receipt.movementId, reason);
  if (mirrored && !mirrored.ok) return mirrored;
  await addReceipt(scope, {
    id: newId(), orderId: receipt.orderId, number: null, on: receipt.receivedOn.toISOString().slice(0, 10), happenedAt: scope.now, reason, reversesId: receipt.id,
    movementId: mirrored?.value[0] ?? null,
  }, []);
  await writeChange(scope, seq, { kind: "set-up", detail: { reversed: receipt.number, order: receipt.order.number } });
  return ok(null);
});
