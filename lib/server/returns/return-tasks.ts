import "server-only";
import { acceptReturnsInput, calendarFeedInput, returnTaskInput } from "#lib/contracts/hire/returns.ts";
import { addDays, dayIn, type Day } from "#lib/kernel/days.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { isTruckDay } from "#lib/trade/planning/demand/truck-days.ts";
import { succeed } from "#lib/trade/planning/returns/tasks/succeed.ts";
import { recordChange } from "../gate/change-line.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { newId } from "../platform/new-id.ts";
import { projectHead } from "../projects/project-head.ts";
import { readProject } from "../projects/store.ts";
import { outlook } from "./basis/outlook.ts";
import { readSite } from "./basis/site-now.ts";
import { stillHolds } from "./basis/still-holds.ts";
import { planLines } from "./plan-lines.ts";
import { addTasks, changeTask, findPlan, handOver, listStanding, listTasks, setTaskState, withdrawTasks } from "./store.ts";

/**
 * Makes the chosen lines of the latest plan into tasks: call in time, load the day before, be there when it is collected.
 * What earlier plans left open gives way in the same transaction.
 */
export const acceptReturns = projectUseCase("returns.acceptReturns", "hire.record", acceptReturnsInput, async (scope, { planId, lines: chosen }) => {
  const seq = await recordChange(scope, { kind: "set-up", detail: { hire: "returns accepted", lines: chosen.length } });
  const plan = await findPlan(scope, { id: planId });
  if (!plan?.result) return notFound("return plan");
  const latest = await findPlan(scope);
  if (latest && latest.id !== planId) return brokenRule("return-plan-replaced", { ordered: latest.orderedAt.slice(0, 10) });
  const site = await readSite(scope, plan.input.settings.cleaningDays);
  const now = outlook(site, plan.input.settings);
  if (!now.ok || !stillHolds(plan.input, now.value)) return brokenRule("return-plan-outdated", {});
  const { today, project } = site.book;
  const takes = planLines(plan.input, plan.result).filter(({ way }) => way === "take");
  const isChosen = (from: string, on: Day, itemId: string): boolean => chosen.some((each) => each.supplierId === from && each.collectOn === on && each.itemId === itemId);
  const accepted = takes.filter(({ supplierId, on, items }) => items.some(({ itemId }) => isChosen(supplierId, on, itemId)));
  const late = accepted.find(({ callOn }) => callOn < today);
  if (late) return brokenRule("return-call-too-late", { collect: late.on, call: late.callOn });
  if (accepted.length === 0) return notFound("line of the plan");
  const week = { weekdays: project.workingDays, daysOff: [] };
  const proposed = takes.map(({ supplierId, on, callOn, items }) => ({
    supplierId, days: { call: callOn, load: workingDayBefore(on, week, today), collect: on }, lines: items.map(({ itemId, item, quantity }) => ({ itemId, item, quantity })),
  }));
  const next = succeed(await listStanding(scope, plan.input.suppliers.map(({ supplierId }) => supplierId)), { id: planId, proposed }, isChosen);
  await handOver(scope, planId, next.kept);
  for (const { id, on, lines } of next.changed) await changeTask(scope, id, planId, on, lines);
  await addTasks(scope, next.added.map((task) => ({ ...task, id: newId(), planId })));
  await withdrawTasks(scope, next.withdrawn);
  return ok({ seq, dates: accepted.length, withdrawn: next.withdrawn.length });
});

function workingDayBefore(day: Day, week: Parameters<typeof isTruckDay>[1], today: Day): Day {
  let on = addDays(day, -1);
  while (on > today && !isTruckDay(on, week)) on = addDays(on, -1);
  return on < today ? today : on;
}

/** What is to be called, loaded or collected by today, and what is late, the longest first; and what comes next. */
export const getReturnTasks = projectUseCase("returns.getReturnTasks", "hire.read", calendarFeedInput, async (scope) => {
  const project = projectHead(await readProject(scope));
  return ok({ today: dayIn(scope.now, project.timeZone), tasks: await listTasks(scope, { state: "open" }) });
});

/** Done, open again, or withdrawn for good. */
export const setReturnTask = projectUseCase("returns.setReturnTask", "hire.count", returnTaskInput, async (scope, { taskId, to }) => {
  if (!(await setTaskState(scope, taskId, to))) return notFound("task");
  return ok({ seq: await recordChange(scope, { kind: "set-up", detail: { hire: "return task", to } }) });
});
