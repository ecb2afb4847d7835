import "server-only";
import type { z } from "zod";
import { buyingInput, materialKey } from "#lib/contracts/planning/orders.ts";
import { addDays, dayIn } from "#lib/kernel/days.ts";
import { notFound, ok, type Failure, type Result } from "#lib/kernel/result.ts";
import { setDays, setsNeeded } from "#lib/trade/planning/buying/set-days.ts";
import { listRackOffcuts } from "../../cutting/cut/rack-offcuts.ts";
import { cuttingOrders } from "../../cutting/cutting-orders.ts";
import { materialNames } from "../../cutting/material-names.ts";
import { worked } from "../../cutting/planner.ts";
import { readCuttingRule } from "../../cutting/read-cutting-rule.ts";
import { setGroups } from "../../cutting/set-groups.ts";
import { countByLevel, listLiftsOn } from "../../cutting/store.ts";
import type { Caller } from "../../gate/caller.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { listPlannedColumns } from "../../pours/planned-store.ts";
import { listClampKindRows } from "../../projects/clamp-store.ts";
import { projectHead, readRules } from "../../projects/project-head.ts";
import { listLevels, readProject } from "../../projects/store.ts";
import { buyRows, offcutSizes, stockSizes, takenByDay, type StockSize, type ToBuySize } from "./buying-rows.ts";
import { readBuyingRule } from "./material-store.ts";
import { materialsKnown } from "./materials-known.ts";

const SHEETS_MS = 2_300;
const TIMBERS_MS = 700;
/** A day to clean and carry, after the strip time. */
const TURNAROUND = 1;

/** Which form sets are to be made, by when they stand, and what is there to make them from. */
export const getBuyingTask = projectUseCase("gear.getBuyingTask", "gear.read", buyingInput, async (scope, { levelId, columnIds, sets }) => {
  const row = await readProject(scope);
  const [project, rules, cuttingRule] = [projectHead(row), readRules(row), readCuttingRule(row)];
  const counts = await countByLevel(scope);
  const levels = (await listLevels(scope)).flatMap(({ id, name }) => {
    const uncut = counts.find((count) => count.levelId === id)?.uncut ?? 0;
    return uncut > 0 ? [{ id, name, columns: uncut }] : [];
  });
  const level = columnIds ? undefined : levelId === undefined ? levels[0] : levels.find(({ id }) => id === levelId);
  if (levelId !== undefined && !columnIds && !level && !counts.some((count) => count.levelId === levelId)) return notFound("level");
  const lifts = columnIds || level ? (await listLiftsOn(scope, level?.id ?? null, columnIds ?? null)).filter(({ done }) => done === 0) : [];
  const found = setGroups(lifts, rules, await listClampKindRows(scope));
  const days = new Map((await listPlannedColumns(scope, level?.id ?? null)).map((column) => [column.id, column]));
  const cured = Math.ceil(rules.progressRule.stripAfterHours / 24) + TURNAROUND;
  const groups = found.groups.map((group) => {
    const stays = group.columnIds.map((id) => {
      const { plannedStoodOn = null, plannedPouredOn = null } = days.get(id) ?? {};
      return { stoodOn: plannedStoodOn, freeOn: plannedPouredOn === null ? null : addDays(plannedPouredOn, cured) };
    });
    const own = setDays(stays);
    return { ...group, days: own, sets: sets === null ? setsNeeded(own) : sets.find(({ size }) => size === group.size)?.count ?? 0 };
  });
  const offcuts = await listRackOffcuts(scope, cuttingRule, materialNames(rules));
  return ok({
    project, today: dayIn(scope.now, project.timeZone), ply: rules.shutterRule.ply.label, levels, level: level ?? null,
    columns: columnIds ? lifts.map(({ id, gridRef }) => ({ id, gridRef })) : null, groups, leftOut: found.leftOut, cuttingRule, offcuts, orders: cuttingOrders(groups, cuttingRule, offcuts),
    buyingRule: await readBuyingRule(scope), known: await materialsKnown(scope), role: scope.member.role,
  });
});
export type BuyingTask = Extract<Awaited<ReturnType<typeof getBuyingTask>>, { ok: true }>["value"];

export type BuyingPlan = { readonly task: BuyingTask; readonly sizes: readonly ToBuySize[]; readonly fromRack: readonly (StockSize & { readonly count: number })[]; readonly failures: readonly Failure[] };

/** Outside the transaction that read the task, so that no connection waits for the calculation. */
export async function planBuying(caller: Caller | null, input: z.input<typeof buyingInput>): Promise<Result<BuyingPlan>> {
  const asked = await getBuyingTask(caller, input);
  if (!asked.ok) return asked;
  const { orders, offcuts, groups, cuttingRule, ply, known, buyingRule, project, today } = asked.value;
  const sheets = worked("sheets", orders.sheets, SHEETS_MS);
  const timbers = await Promise.all(orders.timbers.map(async ({ order }) => ({ order, plan: await worked("timbers", order, TIMBERS_MS) })));
  const cut = await sheets;
  const taken = [
    ...(cut.ok ? takenByDay(cut.value.layouts.map(({ sheetId, count, parts }) => ({ stockId: sheetId, count, partIds: parts.map(({ partId }) => partId) })), orders.sheets.parts, groups) : []),
    ...timbers.flatMap(({ order, plan }) => (plan.ok ? takenByDay(plan.value.layouts.map(({ stockId, count, cuts }) => ({ stockId, count, partIds: cuts.map(({ partId }) => partId) })), order.parts, groups) : [])),
  ];
  const sizes = stockSizes(cuttingRule, ply, orders.timbers);
  const stood = new Map(known.map((each) => [materialKey(each), each]));
  const racked = [...sizes.filter(({ fromRack }) => fromRack), ...offcutSizes(offcuts, ply, orders.timbers)].map((size) => ({ ...size, count: taken.filter(({ stockId }) => stockId === size.stockId).reduce((sum, { count }) => sum + count, 0) }));
  const failures = [...(cut.ok ? [] : [cut.failure]), ...timbers.flatMap(({ plan }) => (plan.ok ? [] : [plan.failure]))];
  return ok({
    task: asked.value, sizes: buyRows(sizes, taken, stood, buyingRule, project.workingDays, today), fromRack: racked.filter(({ count }) => count > 0), failures,
  });
}
