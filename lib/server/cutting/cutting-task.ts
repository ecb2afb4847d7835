import "server-only";
import type { z } from "zod";
import type { cuttingOrderInput } from "#lib/contracts/planning/cutting.ts";
import { notFound, ok, type Result } from "#lib/kernel/result.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { listClampKindRows } from "../projects/clamp-store.ts";
import { projectHead, readRules } from "../projects/project-head.ts";
import { listLevels, readProject } from "../projects/store.ts";
import { listRackOffcuts } from "./cut/rack-offcuts.ts";
import { cuttingOrders } from "./cutting-orders.ts";
import { materialNames } from "./material-names.ts";
import { readCuttingRule } from "./read-cutting-rule.ts";
import { setGroups } from "./set-groups.ts";
import { countByLevel, listLiftsOn } from "./store.ts";

type Asked = Pick<z.output<typeof cuttingOrderInput>, "levelId" | "sets">;

/** Which form sets are to be cut on a level and from what, offcuts on the rack among it: everything the plan is worked out from. */
export async function readCuttingTask(scope: ProjectScope, { levelId, sets }: Asked) {
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
  const { ply } = rules.shutterRule;
  const offcuts = await listRackOffcuts(scope, cuttingRule, materialNames(rules));
  return ok({
    project: projectHead(project), ply, levels, level: level ?? null, groups, leftOut: found.leftOut, cuttingRule, offcuts, orders: cuttingOrders(groups, cuttingRule, offcuts),
    role: scope.member.role,
  });
}
export type CuttingTask = Awaited<ReturnType<typeof readCuttingTask>> extends Result<infer Task> ? Task : never;
