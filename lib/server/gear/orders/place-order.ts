import "server-only";
import { buyingRuleInput, endOrderInput, materialKey, placeOrderInput } from "#lib/contracts/planning/orders.ts";
import { dayIn } from "#lib/kernel/days.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { orderState } from "#lib/trade/gear/orders.ts";
import { recordChange, takeNumbers, writeChange } from "../../gate/change-line.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { clashOf } from "../../platform/db.ts";
import { projectHead } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { projectPlaces } from "../ledger/place-store.ts";
import { writeBuyingRule } from "./material-store.ts";
import { itemsOf } from "./materials.ts";
import { orderedLines } from "./order-book.ts";
import { addEnding, addOrder, listOrders } from "./order-store.ts";

/** Writes an order down as it was given to the merchant. It is not edited: a mistaken one is cancelled and written anew. */
export const placeOrder = projectUseCase("gear.placeOrder", "order.record", placeOrderInput, async (scope, { orderId, lines, projectId: _, ...order }) => {
  // The project's row lock keeps two from using one number.
  const seq = await takeNumbers(scope, 1);
  const project = projectHead(await readProject(scope));
  const today = dayIn(scope.now, project.timeZone);
  if (order.orderedOn > today) return brokenRule("order-to-come", { on: order.orderedOn, today });
  const twin = (await listOrders(scope)).find((each) =>
    each.ending?.kind !== "cancelled" && each.number.toLowerCase() === order.number.toLowerCase() && each.supplier.toLowerCase() === order.supplier.toLowerCase());
  if (twin) return brokenRule("order-known", { number: twin.number, supplier: twin.supplier });
  await projectPlaces(scope);
  const items = await itemsOf(scope, lines, project.units);
  try {
    await addOrder(scope, { ...order, id: orderId, currency: project.currency }, lines.map(({ quantity, priceEach, ...material }) => ({ itemId: items.get(materialKey(material))?.itemId ?? "", quantity, priceEach })));
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("order-recorded-already", { number: order.number });
    throw error;
  }
  await writeChange(scope, seq, { kind: "set-up", detail: { order: order.number, supplier: order.supplier, lines: lines.length } });
  return ok({ orderId });
});

/** Cancelled while nothing has come, or closed when the rest will not come. */
export const endOrder = projectUseCase("gear.endOrder", "order.record", endOrderInput, async (scope, { orderId, kind, reason }) => {
  const seq = await takeNumbers(scope, 1);
  const [order] = await listOrders(scope, orderId);
  if (!order) return notFound("order");
  const state = orderState(orderedLines(order), order.ending?.kind ?? null);
  if (state !== "open" && state !== "part") return brokenRule("order-has-ended", { number: order.number, how: state });
  const standing = order.receipts.filter(({ reversal }) => reversal === null);
  if (kind === "cancelled" && standing.length > 0) return brokenRule("order-received", { number: order.number, docket: standing.map(({ number }) => number).join(", ") });
  if (kind === "closed" && standing.length === 0) return brokenRule("order-nothing-came", { number: order.number });
  await addEnding(scope, orderId, kind, reason);
  await writeChange(scope, seq, { kind: "set-up", detail: { order: order.number, [kind]: reason } });
  return ok({ orderId });
});

/** How long the company waits for its merchant, how long it makes, and what it buys over. */
export const saveBuyingRule = projectUseCase("gear.saveBuyingRule", "order.record", buyingRuleInput, async (scope, { leadDays, makingDays, waste }) => {
  await writeBuyingRule(scope, { leadDays, makingDays, waste });
  await recordChange(scope, { kind: "set-up", detail: { changed: "buying", leadDays, makingDays, waste } });
  return ok(null);
});
