import "server-only";
import { returnLines } from "#lib/contracts/hire/returns.ts";
import type { Day } from "#lib/kernel/days.ts";
import type { ReturnLine, StandingTask } from "#lib/trade/planning/returns/tasks/succeed.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { planInput, planResult, type PlanInput, type PlanResult } from "./basis/plan-input.ts";

const own = ({ companyId, projectId }: ProjectScope) => ({ companyId, projectId });
const dayOf = (at: Date): Day => at.toISOString().slice(0, 10) as Day;
const atMidnight = (on: string): Date => new Date(`${on}T00:00:00Z`);

export type KeptPlan = {
  readonly id: string; readonly supplierId: string; readonly status: "waiting" | "ready" | "failed"; readonly input: PlanInput; readonly result: PlanResult | null;
  readonly solver: string | null; readonly wallMs: number | null; readonly orderedAt: string; readonly by: string;
};

export async function addPlan(scope: ProjectScope, id: string, supplierId: string, input: PlanInput, inputHash: string): Promise<void> {
  const { tx, member, now, companyId, projectId } = scope;
  await tx.returnPlan.create({
    data: { ...own(scope), id, supplierId, status: "waiting", input: JSON.parse(JSON.stringify(input)) as object, inputHash, orderedBy: member.id, orderedAt: now }, select: { id: true },
  });
  await tx.$queryRaw`select 1 from (select queue_return_plan(${companyId}::uuid, ${projectId}::uuid, ${id}::uuid)) queued`;
}

/** The latest plan for a supplier, or one by its id. */
export async function findPlan(scope: ProjectScope, which: { readonly supplierId: string } | { readonly id: string }): Promise<KeptPlan | null> {
  const row = await scope.tx.returnPlan.findFirst({ where: { ...own(scope), ...which }, orderBy: { orderedAt: "desc" }, include: { by: { select: { name: true } } } });
  return row && {
    id: row.id, supplierId: row.supplierId, status: row.status as KeptPlan["status"], input: planInput.parse(row.input),
    result: row.status === "ready" ? planResult.parse(row.result) : null,
    solver: row.solver, wallMs: row.wallMs, orderedAt: row.orderedAt.toISOString(), by: row.by.name,
  };
}

export type Task = {
  readonly id: string; readonly planId: string; readonly kind: "call" | "load" | "collect"; readonly on: Day; readonly collectOn: Day; readonly lines: readonly ReturnLine[];
  readonly state: "open" | "done" | "withdrawn"; readonly sequence: number; readonly changedAt: string; readonly supplier: string;
};

/** The tasks of the project that still stand or did, the earliest first. */
export async function listTasks(scope: ProjectScope, where: { readonly planId?: string; readonly supplierId?: string; readonly state?: Task["state"] } = {}): Promise<Task[]> {
  const { supplierId, ...rest } = where;
  const rows = await scope.tx.returnTask.findMany({
    where: { ...own(scope), ...rest, ...(supplierId === undefined ? {} : { plan: { supplierId } }) }, include: { plan: { select: { supplier: { select: { name: true } } } } }, orderBy: [{ onDay: "asc" }, { collectOn: "asc" }, { kind: "asc" }],
  });
  return rows.map(({ id, planId, kind, onDay, collectOn, lines, state, sequence, changedAt, plan }) => ({
    id, planId, kind: kind as Task["kind"], on: dayOf(onDay), collectOn: dayOf(collectOn), lines: returnLines.parse(lines), state: state as Task["state"], sequence,
    changedAt: changedAt.toISOString(), supplier: plan.supplier.name,
  }));
}

export type NewTask = Pick<Task, "id" | "planId" | "kind" | "on" | "collectOn" | "lines">;
export async function addTasks(scope: ProjectScope, tasks: readonly NewTask[]): Promise<void> {
  await scope.tx.returnTask.createMany({
    data: tasks.map(({ on, collectOn, lines, ...task }) => ({
      ...task, ...own(scope), onDay: atMidnight(on), collectOn: atMidnight(collectOn), lines: [...lines], state: "open", changedBy: scope.member.id, changedAt: scope.now,
    })),
  });
}

/** Tasks of a supplier that are open or done. */
export const listStanding = async (scope: ProjectScope, supplierId: string): Promise<StandingTask[]> =>
  (await listTasks(scope, { supplierId })).flatMap(({ state, ...task }) => (state === "withdrawn" ? [] : [{ ...task, state }]));

/** To a newer plan that says the same; nothing in it changes, so its number stays. */
export const handOver = (scope: ProjectScope, planId: string, ids: readonly string[]) =>
  scope.tx.returnTask.updateMany({ where: { ...own(scope), id: { in: [...ids] } }, data: { planId } });

const changed = ({ member, now }: ProjectScope) => ({ sequence: { increment: 1 }, changedBy: member.id, changedAt: now });

export const changeTask = (scope: ProjectScope, id: string, planId: string, on: string, lines: Task["lines"]) =>
  scope.tx.returnTask.updateMany({ where: { ...own(scope), id }, data: { ...changed(scope), planId, onDay: atMidnight(on), lines: [...lines] } });

export const withdrawTasks = (scope: ProjectScope, ids: readonly string[]) =>
  scope.tx.returnTask.updateMany({ where: { ...own(scope), id: { in: [...ids] }, state: "open" }, data: { ...changed(scope), state: "withdrawn" } });

/** False when there is no such task. */
export const setTaskState = async (scope: ProjectScope, id: string, state: Task["state"]): Promise<boolean> =>
  (await scope.tx.returnTask.updateMany({ where: { ...own(scope), id, state: { not: "withdrawn" } }, data: { ...changed(scope), state } })).count === 1;
