import "server-only";
import { orderReturnPlanInput } from "#lib/contracts/hire/returns.ts";
import { invalid, ok } from "#lib/kernel/result.ts";
import { checkReturnOrder } from "#lib/trade/planning/returns/return-order.ts";
import { recordChange } from "../gate/change-line.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { newId } from "../platform/new-id.ts";
import { sha256 } from "../platform/secrets.ts";
import { buildInput } from "./basis/build-input.ts";
import { outlook } from "./basis/outlook.ts";
import { pieceKg, readSite } from "./basis/site-now.ts";
import { addPlan } from "./store.ts";

/** Asks the worker for the cheapest plan of what goes back to which supplier when, from how things stand now. */
export const orderReturnPlan = projectUseCase("returns.orderReturnPlan", "hire.record", orderReturnPlanInput, async (scope, { settings }) => {
  const site = await readSite(scope, settings.cleaningDays);
  const view = outlook(site, settings);
  if (!view.ok) return view;
  const unweighed = view.value.need.filter(({ itemId }) => pieceKg(site, settings, itemId) === null);
  if (unweighed.length > 0) return invalid(...unweighed.map(({ itemId, item }) => ({ field: `settings.unitKg.${itemId}`, message: `Enter what a piece of ${item} weighs: trucks are filled by it.` })));
  const input = buildInput(site, view.value);
  const order = checkReturnOrder(input.order);
  if (!order.ok) return order;
  const planId = newId();
  await addPlan(scope, planId, input, sha256(JSON.stringify(input)));
  const seq = await recordChange(scope, { kind: "set-up", detail: { hire: "return plan" } });
  return ok({ planId, seq });
});
