import "server-only";
import type { Failure, Result } from "#lib/kernel/result.ts";
import { calculateApart } from "#lib/solver/calculate-apart.ts";
import type { Calculation, OrderOf, PlanOf } from "#lib/solver/calculations.ts";

type PlanIn<C extends Calculation> = PlanOf<C> extends Result<infer Plan, Failure> ? Plan : never;

const calculate = calculateApart({ mostWaiting: 8, mostKept: 60 });

/** Works out sheets, timbers and reuse one after another, for all who plan on this server. */
export async function worked<C extends Calculation>(calculation: C, order: OrderOf<C>, limitMs: number): Promise<Result<PlanIn<C>>> {
  const planned = await calculate(calculation, order, limitMs);
  return planned.ok ? (planned.value as Result<PlanIn<C>>) : planned;
}
