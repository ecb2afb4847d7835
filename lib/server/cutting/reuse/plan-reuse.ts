import "server-only";
import type { z } from "zod";
import { reuseInput, type ReuseLine } from "#lib/contracts/planning/reuse.ts";
import { ok, type Result } from "#lib/kernel/result.ts";
import type { PanelUse, ReusePlan } from "#lib/trade/planning/reuse/reuse-order.ts";
import type { Caller } from "../../gate/caller.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { worked } from "../planner.ts";
import { faceOf } from "./panels-at-hand.ts";
import { reuseTask } from "./reuse-task.ts";

const LIMIT_MS = 6_000;

/** Which panels the coming columns ask for, which are at hand, and what is spoken for. */
export const getReuseOrder = projectUseCase("cutting.getReuseOrder", "gear.read", reuseInput, async (scope, { whole }) => ok(await reuseTask(scope, whole)));
export type ReuseTask = Extract<Awaited<ReturnType<typeof getReuseOrder>>, { ok: true }>["value"];

/** `lines` are the plan's uses in their order, as they are accepted. */
export type PlannedReuse = { readonly task: ReuseTask; readonly plan: ReusePlan; readonly lines: readonly ReuseLine[] };

/** Outside the transaction that read the order. */
export async function planReuseOf(caller: Caller | null, input: z.input<typeof reuseInput>): Promise<Result<PlannedReuse>> {
  const asked = await getReuseOrder(caller, input);
  if (!asked.ok) return asked;
  const plan = await worked("reuse", asked.value.order, LIMIT_MS);
  if (!plan.ok) return plan;
  return ok({ task: asked.value, plan: plan.value, lines: plan.value.uses.map((use) => asLine(use)) });
}

function asLine({ demandId, source }: PanelUse): ReuseLine {
  const own = faceOf(demandId);
  if (source.kind === "new") return { ...own, source };
  const from = source.kind === "panel" ? source.panelId : source.demandId;
  return { ...own, source: from.includes(" ") ? { kind: "after", ...faceOf(from) } : { kind: "panel", itemId: from } };
}
