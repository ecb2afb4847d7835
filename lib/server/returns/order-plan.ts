import "server-only";
import { orderReturnPlanInput } from "#lib/contracts/hire/returns.ts";
import { ok } from "#lib/kernel/result.ts";
import { checkReturnOrder } from "#lib/trade/planning/returns/return-order.ts";
import { recordChange } from "../gate/change-line.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { newId } from "../platform/new-id.ts";
import { sha256 } from "../platform/secrets.ts";
import { buildInput, readSite, supplierNow } from "./basis/build-input.ts";
import { addPlan } from "./store.ts";

/** Asks the worker for the cheapest plan of what goes back to one supplier when, from how things stand now. */
export const orderReturnPlan = projectUseCase("returns.orderReturnPlan", "hire.record", orderReturnPlanInput, async (scope, { supplierId, settings }) => {
  const now = supplierNow(await readSite(scope, settings.cleaningDays), supplierId);
  if (!now.ok) return now;
  const input = buildInput(now.value, supplierId, settings);
  if (!input.ok) return input;
  const order = checkReturnOrder(input.value.order);
  if (!order.ok) return order;
  const planId = newId();
  await addPlan(scope, planId, supplierId, input.value, sha256(JSON.stringify(input.value)));
  const seq = await recordChange(scope, { kind: "set-up", detail: { hire: "return plan" } });
  return ok({ planId, seq });
});
