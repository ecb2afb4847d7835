import "server-only";
import type { z } from "zod";
import { cuttingOrderInput, type TimberUse } from "#lib/contracts/planning/cutting.ts";
import { brokenRule, notFound, ok, type Result } from "#lib/kernel/result.ts";
import type { SheetPlan } from "#lib/trade/planning/sheets/sheet-order.ts";
import type { TimberPlan } from "#lib/trade/planning/timber/timber-order.ts";
import type { Caller } from "../gate/caller.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { listClampKindRows } from "../projects/clamp-store.ts";
import { projectHead, readRules } from "../projects/project-head.ts";
import { listLevels, readProject } from "../projects/store.ts";
import { cuttingOrders } from "./cutting-orders.ts";
import { readCuttingRule } from "./read-cutting-rule.ts";
import { worked } from "./planner.ts";
import { setGroups } from "./set-groups.ts";
import { countByLevel, listLiftsOn } from "./store.ts";

const SHEETS_MS = 2_300;
const TIMBERS_MS = 700;

/** Which form sets are to be cut on a level and from what: everything the plan is worked out from. */
export const getCuttingOrder = projectUseCase("cutting.getCuttingOrder", "project.read", cuttingOrderInput, async (scope, { levelId, sets }) => {
  const project = await readProject(scope);
  const rules = readRules(project);
  const counts = await countByLevel(scope);
  const levels = (await listLevels(scope)).flatMap(({ id, name }) => {
    const count = counts.find((row) => row.levelId === id);
    return count ? [{ id, name, columns: count.columns, uncut: count.uncut }] : [];
  });
  const level = levelId === undefined ? levels.find(({ uncut }) => uncut > 0) ?? levels[0] : levels.find(({ id }) => id === levelId);
  if (!level && levelId !== undefined) return notFound("level");
  const found = setGroups(level ? await listLiftsOn(scope, level.id) : [], rules, await listClampKindRows(scope));
  const groups = found.groups.map((group) => ({ ...group, sets: sets === null ? group.toCut : sets.find(({ size }) => size === group.size)?.count ?? 0 }));
  const cuttingRule = readCuttingRule(project);
  return ok({ project: projectHead(project), ply: rules.shutterRule.ply, levels, level: level ?? null, groups, leftOut: found.leftOut, cuttingRule, orders: cuttingOrders(groups, cuttingRule) });
});
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
