"use server";

import { revalidatePath } from "next/cache";
import type { Result } from "#lib/kernel/result.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { endOrder, placeOrder, saveBuyingRule } from "#lib/server/gear/orders/place-order.ts";
import { receiveOrder, reverseReceipt } from "#lib/server/gear/orders/receive.ts";
import { cutUpMaterial, takeInMaterial } from "#lib/server/gear/orders/stock-material.ts";
import { textOf } from "#app/_ui/form/read-form.ts";

async function afresh<T>(answer: Promise<Result<T>>): Promise<Result<T>> {
  const given = await answer;
  if (given.ok) revalidatePath("/projects/[projectId]", "layout");
  return given;
}

export async function placeOrderAction(input: Parameters<typeof placeOrder>[1]) {
  return afresh(placeOrder(await currentCaller(), input));
}
export async function receiveOrderAction(input: Parameters<typeof receiveOrder>[1]) {
  return afresh(receiveOrder(await currentCaller(), input));
}
export async function reverseReceiptAction(data: FormData) {
  return afresh(reverseReceipt(await currentCaller(), { projectId: textOf(data, "projectId"), receiptId: textOf(data, "subjectId"), reason: textOf(data, "reason") }));
}
export async function endOrderAction(input: Parameters<typeof endOrder>[1]) {
  return afresh(endOrder(await currentCaller(), input));
}
export async function saveBuyingRuleAction(input: Parameters<typeof saveBuyingRule>[1]) {
  return afresh(saveBuyingRule(await currentCaller(), input));
}
export async function takeInMaterialAction(input: Parameters<typeof takeInMaterial>[1]) {
  return afresh(takeInMaterial(await currentCaller(), input));
}
export async function cutUpMaterialAction(input: Parameters<typeof cutUpMaterial>[1]) {
  return afresh(cutUpMaterial(await currentCaller(), input));
}
