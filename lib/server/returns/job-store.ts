import "server-only";
import { enterCompany } from "../gate/store.ts";
import type { Tx } from "../platform/db.ts";
import { planInput, type PlanInput } from "./basis/plan-input.ts";

export type PlanKey = { readonly companyId: string; readonly projectId: string; readonly planId: string };
const row = ({ companyId, projectId, planId }: PlanKey) => ({ companyId, projectId, id: planId });

/** What waits to be computed; null when it no longer does. */
export async function readWaitingPlan(tx: Tx, key: PlanKey): Promise<PlanInput | null> {
  await enterCompany(tx, key.companyId);
  const found = await tx.returnPlan.findFirst({ where: { ...row(key), status: "waiting" }, select: { input: true } });
  return found && planInput.parse(found.input);
}

export type Computed = { readonly status: "ready" | "failed"; readonly result: object; readonly solver: string; readonly wallMs: number; readonly objective: number | null; readonly bound: number | null };

/** Keeps a result once, whoever computed it. */
export async function keepResult(tx: Tx, key: PlanKey, { result, ...computed }: Computed): Promise<void> {
  await enterCompany(tx, key.companyId);
  await tx.returnPlan.updateMany({ where: { ...row(key), status: "waiting" }, data: { ...computed, result: JSON.parse(JSON.stringify(result)) as object, finishedAt: new Date() } });
}

export const listWaiting = async (tx: Tx): Promise<PlanKey[]> =>
  tx.$queryRaw<PlanKey[]>`select company_id::text "companyId", project_id::text "projectId", id::text "planId" from return_plans_waiting()`;
