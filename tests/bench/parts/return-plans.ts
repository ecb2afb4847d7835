import { answerQuestions } from "#lib/solver/answer-questions.ts";
import { createSolverPool, type SolverPool } from "#lib/solver/solver-pool.ts";
import { checkReturnPlan } from "#lib/trade/planning/returns/check-return-plan.ts";
import { planReturns } from "#lib/trade/planning/returns/plan-returns.ts";
import type { PricedStays, ReturnOrder, ReturnPlan } from "#lib/trade/planning/returns/return-order.ts";
import { BENCHMARKS } from "#tests/bench/parts/cutting-benchmarks.ts";
import { haveHireBenchmarks, hireInstance, hireKnown } from "#tests/bench/parts/hire-benchmarks.ts";
import { aTowersGear } from "#tests/bench/parts/a-towers-gear.ts";
import type { Row } from "#tests/bench/parts/row.ts";

type Timed = { readonly plan: ReturnPlan; readonly ms: number };

export async function returnPlanRows(): Promise<Row[]> {
  const pool = createSolverPool(1);
  try {
    await timed(pool, aTowersGear({ items: 1, weeks: 4, by: "week" }), 10_000);
    const rows = [
      await soon(pool, "12 items x 26 weeks, by the week", aTowersGear({ items: 12, weeks: 26, by: "week" })),
      await large(pool, "12 items x 26 weeks, a ladder by weeks and months", aTowersGear({ items: 12, weeks: 26, by: "ladder" })),
      await large(pool, "40 items x 52 weeks, by the week", aTowersGear({ items: 40, weeks: 52, by: "week" })),
    ];
    if (!haveHireBenchmarks) return [...rows, { what: "hire instances with known optimum", measured: `not run: ${BENCHMARKS}/hire absent`, budget: "", ok: true }];
    for (const [name, { file, ub }] of hireKnown()) rows.push(await large(pool, `${name}, optimum ${ub}`, hireInstance(file), ub));
    return rows;
  } finally {
    await pool.close();
  }
}

async function timed(pool: SolverPool, order: ReturnOrder, limitMs: number): Promise<Timed> {
  const started = performance.now();
  const plan = await answerQuestions(planReturns(order), pool.solve, { nowMs: () => performance.now(), limitMs });
  const ms = performance.now() - started;
  if (!plan.ok || checkReturnPlan(order, plan.value).length > 0) throw new Error("No plan, or one that breaks a rule");
  return { plan: plan.value, ms };
}

async function soon(pool: SolverPool, what: string, order: ReturnOrder): Promise<Row> {
  const { plan, ms } = await timed(pool, order, 20_000);
  return { what, measured: `${seconds(ms)}, ${proof(plan)}, ${savings(plan)}`, budget: "proven < 5 s", ok: plan.proven && ms < 5_000 };
}

async function large(pool: SolverPool, what: string, order: ReturnOrder, optimum?: number): Promise<Row> {
  const early = await timed(pool, order, 10_000);
  const { plan, ms } = early.plan.proven ? early : await timed(pool, order, 60_000);
  const isKnown = optimum === undefined || plan.cost.total === optimum;
  return {
    what, budget: "gap <= 0.5 % at 10 s, proven < 60 s",
    measured: `gap at 10 s ${percent(early.plan.gap)}, ${seconds(ms)}, ${proof(plan)}${isKnown ? "" : ` but cost ${plan.cost.total}`}, ${savings(plan)}`,
    ok: early.plan.gap <= 0.005 && plan.proven && isKnown && ms < 60_000,
  };
}

const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;
const seconds = (ms: number): string => `${(ms / 1000).toFixed(1)} s`;
const proof = ({ proven, gap }: ReturnPlan): string => (proven ? "proven optimal" : `within ${percent(gap)}`);
const saving = ({ cost }: ReturnPlan, habit: PricedStays | null): string => (habit ? percent(1 - cost.total / habit.cost.total) : "-");
const savings = (plan: ReturnPlan): string => `saves ${saving(plan, plan.justInTime)} on just in time, ${saving(plan, plan.keepToLast)} on keeping`;
