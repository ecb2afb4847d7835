import { addDays, dayIn, type Day } from "#lib/kernel/days.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { savePlannedDays } from "#lib/server/pours/planned-days.ts";
import { computePlan } from "#lib/server/returns/compute-plan.ts";
import { getReturnPlan } from "#lib/server/returns/get-return-plan.ts";
import { orderReturnPlan } from "#lib/server/returns/order-plan.ts";
import { aDelivery, aSupplier, RULE, type Hire } from "./a-hire.ts";
import type { Project } from "./a-project.ts";
import { valueOf } from "./value-of.ts";

/** A supplier in a plan; every piece of its items weighs a kilogram. */
type InPlan = Pick<Hire, "supplierId"> & { readonly itemId?: string; readonly moreItems?: readonly string[] };

export const settingsFor = (...suppliers: readonly InPlan[]) => ({
  suppliers: suppliers.map(({ supplierId }) => ({ supplierId, isIn: true, truckKg: 6000, tripCost: 18_000, leadDays: 3 })),
  handling: 0, weekdays: [1, 2, 3, 4, 5], floatPercent: 5, cleaningDays: 1, lossPercentMonth: 0,
  unitKg: Object.fromEntries(suppliers.flatMap(({ itemId, moreItems = [] }) => [...(itemId ? [itemId] : []), ...moreItems].map((id) => [id, 1] as const))),
});

/** The site day of today in the zone of the builders' project, some days on. */
export const inDays = (days: number): Day => addDays(dayIn(new Date().toISOString(), "Australia/Brisbane"), days);

/** Wedges on hire, called off two working days ahead, for the columns of the lowest lift: all stood in three days, poured a day later. */
export async function aHireToReturn(by: Caller, project: Project, name: string, pieces: number): Promise<Hire> {
  const hire = await aSupplier(by, project.projectId, name, { ...RULE, stop: { by: "collection", isLastDayCharged: true, noticeDays: 2, noticeCount: "working" } });
  await aDelivery(by, hire, "D1", inDays(-10), pieces);
  const columns = project.columnIds.map((columnId) => ({ columnId, pour: null, stoodOn: inDays(3), pouredOn: inDays(4) }));
  valueOf(await savePlannedDays(by, { projectId: project.projectId, columns }));
  return hire;
}

/** A plan ordered, and computed as the worker does. */
export async function aReturnPlan(company: { readonly companyId: string; readonly owner: Caller }, hire: Hire, ...others: readonly InPlan[]): Promise<string> {
  const { projectId } = hire;
  const { planId } = valueOf(await orderReturnPlan(company.owner, { projectId, settings: settingsFor(hire, ...others) }));
  await computePlan({ companyId: company.companyId, projectId, planId }, 60_000);
  return planId;
}

/** The returns of the latest plan, as the page lists them. */
export const returnsOf = async (by: Caller, { projectId }: Pick<Hire, "projectId">) =>
  (valueOf(await getReturnPlan(by, { projectId })).plan?.lines ?? []).filter(({ way }) => way === "take")
    .flatMap(({ supplierId, on, callOn, items }) => items.map((item) => ({ supplierId, on, callOn, ...item })));

/** All of them, as they are accepted. */
export const linesOf = async (by: Caller, hire: Pick<Hire, "projectId">) =>
  (await returnsOf(by, hire)).map(({ supplierId, on, itemId }) => ({ supplierId, collectOn: on, itemId }));
