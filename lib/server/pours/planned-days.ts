import "server-only";
import { plannedDaysInput, savePlannedDaysInput } from "#lib/contracts/planning/pours.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import { invalid, notFound, ok } from "#lib/kernel/result.ts";
import { columnDays } from "#lib/trade/planning/pours/column-days.ts";
import { recordChange } from "../gate/change-line.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { listLiveColumnIds } from "../progress/store.ts";
import { projectHead } from "../projects/project-head.ts";
import { listLevels, readProject } from "../projects/store.ts";
import { listPlannedColumns, writePlannedDays } from "./planned-store.ts";

/** The columns of one level with their planned and recorded days; without a level, the lowest that still has columns to pour. */
export const getPlannedDays = projectUseCase("pours.getPlannedDays", "project.read", plannedDaysInput, async (scope, { levelId }) => {
  const project = projectHead(await readProject(scope));
  const all = await listPlannedColumns(scope);
  const levels = (await listLevels(scope)).filter(({ id }) => all.some((column) => column.levelId === id)).map((level) => {
    const columns = all.filter((column) => column.levelId === level.id);
    return { id: level.id, name: level.name, columns: columns.length, planned: columns.filter((each) => each.plannedPouredOn !== null || each.pouredAt !== null).length };
  });
  const shown = levelId ?? (all.find(({ pouredAt }) => pouredAt === null) ?? all[0])?.levelId ?? null;
  const columns = all.filter((column) => column.levelId === shown)
    .sort((a, b) => naturalOrder(a.gridRef, b.gridRef))
    .map((column) => ({
      id: column.id, gridRef: column.gridRef, mark: column.mark, pour: column.pour,
      plannedStoodOn: column.plannedStoodOn, plannedPouredOn: column.plannedPouredOn, ...columnDays(column, project.timeZone),
    }));
  return ok({ project, levels, levelId: shown, columns, now: scope.now });
});

export const savePlannedDays = projectUseCase("pours.savePlannedDays", "pours.plan", savePlannedDaysInput, async (scope, { columns }) => {
  const ids = columns.map(({ columnId }) => columnId);
  if (new Set(ids).size < ids.length) return invalid({ field: "columns", message: "A column is named twice." });
  const live = await listLiveColumnIds(scope, ids);
  if (live.size < ids.length) return notFound("column");
  await writePlannedDays(scope, columns);
  const seq = await recordChange(scope, { kind: "set-up", detail: { list: "planned days", rows: columns.length } });
  return ok({ seq, count: columns.length });
});
