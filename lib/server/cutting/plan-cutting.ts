import "server-only";
import type { z } from "zod";
import { cuttingOrderInput, type TimberUse } from "#lib/contracts/planning/cutting.ts";
import { brokenRule, ok, type Result } from "#lib/kernel/result.ts";
import type { SheetPlan } from "#lib/trade/planning/sheets/sheet-order.ts";
import type { TimberPlan } from "#lib/trade/planning/timber/timber-order.ts";
import type { Caller } from "../gate/caller.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { readCuttingTask } from "./cutting-task.ts";
import { worked } from "./planner.ts";

const SHEETS_MS = 1_900;
const TIMBERS_MS = 400;

/** What the plan of a level is worked out from. */
export const getCuttingOrder = projectUseCase("cutting.getCuttingOrder", "project.read", cuttingOrderInput, readCuttingTask);
export type CuttingTask = Extract<Awaited<ReturnType<typeof getCuttingOrder>>, { ok: true }>["value"];

export type CuttingPlan = {
  readonly task: CuttingTask;
  readonly sheets: Result<SheetPlan>;
  readonly timbers: readonly { readonly use: TimberUse; readonly material: string; readonly plan: Result<TimberPlan> }[];
};

/** Outside the transaction that read the order, so that no connection waits for the calculation. */
export async function planCutting(caller: Caller | null, input: z.input<typeof cuttingOrderInput>): Promise<Result<CuttingPlan>> {
  const asked = await getCuttingOrder(caller, input);
  if (!asked.ok) return asked;
  const { orders } = asked.value;
  const sheets = worked("sheets", orders.sheets, SHEETS_MS);
  const timbers = orders.timbers.map(async ({ use, material, order }) => ({
    use, material,
    plan: order.stock.length === 0 ? brokenRule("no-timber-stock", { material }) : await worked("timbers", order, TIMBERS_MS),
  }));
  return ok({ task: asked.value, sheets: await sheets, timbers: await Promise.all(timbers) });
}
