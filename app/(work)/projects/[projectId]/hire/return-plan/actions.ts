"use server";

import { revalidatePath } from "next/cache";
import { readAmount } from "#lib/kernel/money.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { openCalendarFeed, revokeCalendarFeed } from "#lib/server/returns/calendar-feed.ts";
import { orderReturnPlan } from "#lib/server/returns/order-plan.ts";
import { acceptReturns, setReturnTask } from "#lib/server/returns/return-tasks.ts";
import { isTicked, numberOf, textOf } from "#app/_ui/form/read-form.ts";
import { paths } from "#app/paths.ts";

function redraw(projectId: string): void {
  revalidatePath(paths.returnPlan(projectId));
  revalidatePath(paths.today(projectId));
}

export async function orderPlanAction(data: FormData) {
  const projectId = textOf(data, "projectId");
  const currency = textOf(data, "currency");
  const money = (name: string): number => readAmount(textOf(data, name), currency) ?? Number.NaN;
  const answer = await orderReturnPlan(await currentCaller(), {
    projectId,
    settings: {
      suppliers: data.getAll("supplier").map(String).map((supplierId) => ({
        supplierId, isIn: isTicked(data, `in-${supplierId}`), truckKg: numberOf(data, `truckKg-${supplierId}`), tripCost: money(`tripCost-${supplierId}`), leadDays: numberOf(data, `leadDays-${supplierId}`),
      })),
      handling: money("handling"), weekdays: data.getAll("weekday").map(Number),
      floatPercent: numberOf(data, "floatPercent"), cleaningDays: numberOf(data, "cleaningDays"), lossPercentMonth: numberOf(data, "lossPercentMonth"),
      unitKg: Object.fromEntries(data.getAll("item").map((id) => [String(id), numberOf(data, `kg-${String(id)}`)])),
    },
  });
  if (answer.ok) redraw(projectId);
  return answer;
}

export async function acceptReturnsAction(input: Parameters<typeof acceptReturns>[1]) {
  const answer = await acceptReturns(await currentCaller(), input);
  if (answer.ok) redraw(input.projectId);
  return answer;
}

export async function setReturnTaskAction(input: Parameters<typeof setReturnTask>[1]) {
  const answer = await setReturnTask(await currentCaller(), input);
  if (answer.ok) redraw(input.projectId);
  return answer;
}

export async function openCalendarAction(projectId: string) {
  return openCalendarFeed(await currentCaller(), { projectId });
}

export async function closeCalendarAction(projectId: string) {
  const answer = await revokeCalendarFeed(await currentCaller(), { projectId });
  if (answer.ok) redraw(projectId);
  return answer;
}
