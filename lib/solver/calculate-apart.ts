import { brokenRule, ok, type Result } from "#lib/kernel/result.ts";
import type { Calculation, OrderOf, PlanOf } from "./calculations.ts";
import { createPlanner, type Planner } from "./planner.ts";

export type Calculate = <C extends Calculation>(calculation: C, order: OrderOf<C>, limitMs: number) => Promise<Result<PlanOf<C>>>;

/**
 * A planner for one room of the server, begun with its first question. What nobody waited for in time, or stood too far
 * back in the queue, is a failure to be told.
 */
export function calculateApart(size: Parameters<typeof createPlanner>[0]): Calculate {
  let planner: Planner | null = null;
  return async (calculation, order, limitMs) => {
    planner ??= createPlanner(size);
    const planned = await planner.plan(calculation, order, limitMs);
    switch (planned.kind) {
      case "plan": return ok(planned.plan);
      case "busy": return brokenRule("planner-busy", { waiting: size.mostWaiting });
      case "overrun": return brokenRule("plan-overran", { seconds: Math.round(limitMs / 1000) });
    }
  };
}
