import "server-only";
import { acceptReturnsInput, calendarFeedInput, returnTaskInput } from "#lib/contracts/hire/returns.ts";
import { addDays, dayIn, type Day } from "#lib/kernel/days.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { isTruckDay } from "#lib/trade/planning/demand/truck-days.ts";
import { recordChange } from "../gate/change-line.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { newId } from "../platform/new-id.ts";
import { projectHead } from "../projects/project-head.ts";
import { readProject } from "../projects/store.ts";
import { planLines } from "./plan-lines.ts";
import { addTasks, changeTaskLines, findPlan, listTasks, type NewTask, setTaskState } from "./store.ts";

/** Makes the chosen lines of a plan into tasks: call in time, load the day before, be there when it is collected. */
export const acceptReturns = projectUseCase("returns.acceptReturns", "hire.record", acceptReturnsInput, async (scope, { planId, lines: chosen }) => {
  const project = projectHead(await readProject(scope));
  const seq = await recordChange(scope, { kind: "set-up", detail: { hire: "returns accepted", lines: chosen.length } });
  const plan = await findPlan(scope, { id: planId });
  if (!plan?.result) return notFound("return plan");
  const today = dayIn(scope.now, project.timeZone);
  const accepted = planLines(plan.input, plan.result).filter(({ way }) => way === "take").flatMap((line) => {
    const items = line.items.filter(({ itemId }) => chosen.some((each) => each.collectOn === line.on && each.itemId === itemId));
    return items.length > 0 ? [{ ...line, items }] : [];
  });
  const late = accepted.find(({ callOn }) => callOn < today);
  if (late) return brokenRule("return-call-too-late", { collect: late.on, call: late.callOn });
  if (accepted.length === 0) return notFound("line of the plan");
  const there = await listTasks(scope, { planId, state: "open" });
  const week = { weekdays: project.workingDays, daysOff: [] };
  for (const { on, callOn, items } of accepted) {
    const own = there.filter(({ collectOn }) => collectOn === on);
    const lines = items.map(({ itemId, item, quantity }) => ({ itemId, item, quantity }));
    const all = [...lines, ...(own[0]?.lines ?? []).filter(({ itemId }) => !lines.some((each) => each.itemId === itemId))];
    if (own.length > 0) for (const { id } of own) await changeTaskLines(scope, id, all);
    else await addTasks(scope, tasksFor(planId, { on, callOn, loadOn: workingDayBefore(on, week, today) }, all));
  }
  return ok({ seq, dates: accepted.length });
});

function tasksFor(planId: string, days: { readonly on: Day; readonly callOn: Day; readonly loadOn: Day }, lines: NewTask["lines"]): NewTask[] {
  const task = (kind: NewTask["kind"], on: Day): NewTask => ({ id: newId(), planId, kind, on, collectOn: days.on, lines });
  return [task("call", days.callOn), task("load", days.loadOn), task("collect", days.on)];
}

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
