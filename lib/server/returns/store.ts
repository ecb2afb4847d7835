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
  readonly id: string; readonly status: "waiting" | "ready" | "failed"; readonly input: PlanInput; readonly result: PlanResult | null;
  readonly solver: string | null; readonly wallMs: number | null; readonly orderedAt: string; readonly by: string;
};

export async function addPlan(scope: ProjectScope, id: string, input: PlanInput, inputHash: string): Promise<void> {
  const { tx, member, now, companyId, projectId } = scope;
  await tx.returnPlan.create({
    data: { ...own(scope), id, status: "waiting", input: JSON.parse(JSON.stringify(input)) as object, inputHash, orderedBy: member.id, orderedAt: now }, select: { id: true },
  });
  await tx.$queryRaw`select 1 from (select queue_return_plan(${companyId}::uuid, ${projectId}::uuid, ${id}::uuid)) queued`;
}

/** The latest plan, or one by its id; none where it was laid out before plans were for several suppliers. */
export async function findPlan(scope: ProjectScope, which: { readonly id?: string } = {}): Promise<KeptPlan | null> {
  const row = await scope.tx.returnPlan.findFirst({ where: { ...own(scope), ...which }, orderBy: { orderedAt: "desc" }, include: { by: { select: { name: true } } } });
  const input = planInput.safeParse(row?.input);
  return row && input.success ? {
    id: row.id, status: row.status as KeptPlan["status"], input: input.data,
    result: row.status === "ready" ? planResult.parse(row.result) : null,
    solver: row.solver, wallMs: row.wallMs, orderedAt: row.orderedAt.toISOString(), by: row.by.name,
  } : null;
}

export type Task = {
  readonly id: string; readonly planId: string; readonly supplierId: string; readonly kind: "call" | "load" | "collect"; readonly on: Day; readonly collectOn: Day; readonly lines: readonly ReturnLine[];
  readonly state: "open" | "done" | "withdrawn"; readonly sequence: number; readonly changedAt: string; readonly supplier: string;
};

/** The tasks of the project that still stand or did, the earliest first. */
export async function listTasks(scope: ProjectScope, where: { readonly state?: Task["state"]; readonly supplierId?: { readonly in: string[] } } = {}): Promise<Task[]> {
  const rows = await scope.tx.returnTask.findMany({
    where: { ...own(scope), ...where }, include: { supplier: { select: { name: true } } }, orderBy: [{ onDay: "asc" }, { collectOn: "asc" }, { kind: "asc" }],
  });
  return rows.map(({ id, planId, supplierId, kind, onDay, collectOn, lines, state, sequence, changedAt, supplier }) => ({
    id, planId, supplierId, kind: kind as Task["kind"], on: dayOf(onDay), collectOn: dayOf(collectOn), lines: returnLines.parse(lines), state: state as Task["state"], sequence,
    changedAt: changedAt.toISOString(), supplier: supplier.name,
  }));
}

export type NewTask = Pick<Task, "id" | "planId" | "supplierId" | "kind" | "on" | "collectOn" | "lines">;
export async function addTasks(scope: ProjectScope, tasks: readonly NewTask[]): Promise<void> {
  await scope.tx.returnTask.createMany({
    data: tasks.map(({ on, collectOn, lines, ...task }) => ({
      ...task, ...own(scope), onDay: atMidnight(on), collectOn: atMidnight(collectOn), lines: [...lines], state: "open", changedBy: scope.member.id, changedAt: scope.now,
    })),
  });
}

/** Tasks of these suppliers that are open or done. */
export const listStanding = async (scope: ProjectScope, supplierIds: readonly string[]): Promise<StandingTask[]> =>
  (await listTasks(scope, { supplierId: { in: [...supplierIds] } })).flatMap(({ state, ...task }) => (state === "withdrawn" ? [] : [{ ...task, state }]));

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
