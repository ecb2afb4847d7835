import "server-only";
import { todayInput, type TodayColumn } from "#lib/contracts/progress.ts";
import { naturalOrder } from "#lib/kernel/natural-order.ts";
import { ok } from "#lib/kernel/result.ts";
import { next } from "#lib/trade/progress/next.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { projectHead, readRules } from "../projects/project-head.ts";
import { readProject } from "../projects/store.ts";
import { listQueriedEntries } from "./queried-entries.ts";
import { toProgressRule } from "./rule.ts";
import { findLevelToBegin, listOpenColumns, type OpenColumn } from "./today-store.ts";

const MOST = 600;

const byPlace = (left: OpenColumn, right: OpenColumn): number =>
  naturalOrder(left.level, right.level) || naturalOrder(left.gridRef, right.gridRef);

/** What is next on site, and what it is blocked by. */
export const getToday = projectUseCase("progress.getToday", "progress.read", todayInput, async (scope, { levelId }) => {
  const row = await readProject(scope);
  const project = projectHead(row);
  const rule = toProgressRule(readRules(row).progressRule, project);
  const level = levelId ?? (await findLevelToBegin(scope));
  const open = await listOpenColumns(scope, level, rule, MOST + 1);
  const queried = await listQueriedEntries(scope, open.filter(({ state }) => state.queried.length > 0), rule);
  const columns = open.slice(0, MOST).sort(byPlace).map(({ state, ...column }): TodayColumn => ({
    ...column,
    shape: column.shape === "circle" ? ("circle" as const) : ("rectangle" as const),
    next: next(state, rule, scope.now),
    asksForReading: state.asksForReading,
    queried: queried.get(column.id) ?? [],
    held: state.held,
    exceptions: state.exceptions.filter((each) => !each.acknowledged),
  }));
  return ok({ project, progressRule: rule, columns, isCut: open.length > MOST, levelToBegin: level, readAt: scope.now, role: scope.member.role });
});
export type Today = Extract<Awaited<ReturnType<typeof getToday>>, { ok: true }>["value"];
