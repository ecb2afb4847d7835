import "server-only";
import { performance } from "node:perf_hooks";
import type { TaskList } from "graphile-worker";
import { z } from "zod";
import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { SOLVER } from "#lib/solver/solver-name.ts";
import { createSolverPool } from "#lib/solver/solver-pool.ts";
import { checkReturnPlan } from "#lib/trade/planning/returns/check-return-plan.ts";
import { planReturns } from "#lib/trade/planning/returns/plan-returns.ts";
import type { ReturnPlan } from "#lib/trade/planning/returns/return-order.ts";
import { transaction } from "../platform/db.ts";
import { log } from "../platform/log.ts";
import { keepResult, listWaiting, type PlanKey, readWaitingPlan } from "./job-store.ts";
import type { PlanInput, PlanResult } from "./basis/plan-input.ts";

const LIMIT_MS = 60_000;
const planKey = z.object({ companyId: z.uuid(), projectId: z.uuid(), planId: z.uuid() });

/** Solved outside any transaction, in a thread of its own that is ended when time is up; a plan that breaks a rule is never kept. */
export async function computePlan(key: PlanKey, limitMs = LIMIT_MS): Promise<void> {
  const input = await transaction((tx) => readWaitingPlan(tx, key));
  if (!input) return;
  const started = performance.now();
  const plan = await solve(input, limitMs);
  const wallMs = Math.round(performance.now() - started);
  if (plan.ok) {
    const breaches = checkReturnPlan(input.order, plan.value);
    if (breaches.length > 0) throw new Error(`The return plan ${key.planId} breaks ${JSON.stringify(breaches.slice(0, 3))}`);
  }
  await transaction((tx) => keepResult(tx, key, {
    solver: SOLVER, wallMs,
    ...(plan.ok
      ? { status: "ready" as const, result: asKept(plan.value), objective: plan.value.cost.total, bound: plan.value.bound }
      : { status: "failed" as const, result: plan.failure, objective: null, bound: null }),
  }));
  log.info({ planId: key.planId, wallMs, proven: plan.ok && plan.value.proven }, "computed a return plan");
}

async function solve({ order }: PlanInput, limitMs: number) {
  const pool = createSolverPool(1);
  try {
    return await answerQuestions(planReturns(order), pool.solve, { nowMs: () => performance.now(), limitMs });
  } finally {
    await pool.close();
  }
}

const asKept = ({ stays, trips, cost, bound, gap, proven, justInTime, keepToLast }: ReturnPlan): PlanResult =>
  ({ stays, trips: trips.map((counts) => [...counts]), cost, bound, gap, proven, justInTime: justInTime?.cost ?? null, keepToLast: keepToLast?.cost ?? null });

export const returnJobs: TaskList = {
  computeReturnPlan: (payload) => computePlan(planKey.parse(payload)),
  takeUpReturnPlans: async () => {
    for (const key of await transaction(listWaiting)) await computePlan(key);
  },
};
export const returnCrontab = "* * * * * takeUpReturnPlans";
