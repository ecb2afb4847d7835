import "server-only";
import { brokenRule, type Failure, type Result } from "#lib/kernel/result.ts";
import type { Calculation, OrderOf, PlanOf } from "#lib/solver/calculations.ts";
import { createPlanner, type Planner } from "#lib/solver/planner.ts";

type PlanIn<C extends Calculation> = PlanOf<C> extends Result<infer Plan, Failure> ? Plan : never;

const MOST_WAITING = 8;
const MOST_KEPT = 60;
let planner: Planner | null = null;

/** Works it out in the one planner of this server: what nobody waited for in time, or stood too far back in the queue, is a failure to be told. */
export async function worked<C extends Calculation>(calculation: C, order: OrderOf<C>, limitMs: number): Promise<Result<PlanIn<C>>> {
  planner ??= createPlanner({ mostWaiting: MOST_WAITING, mostKept: MOST_KEPT });
  const planned = await planner.plan(calculation, order, limitMs);
  switch (planned.kind) {
    case "plan": return planned.plan as Result<PlanIn<C>>;
    case "busy": return brokenRule("planner-busy", { waiting: MOST_WAITING });
    case "overrun": return brokenRule("plan-overran", { seconds: Math.round(limitMs / 1000) });
  }
}
