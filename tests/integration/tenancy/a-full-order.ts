import { endOrder, saveBuyingRule } from "#lib/server/gear/orders/place-order.ts";
import type { Company } from "#tests/support/builders/a-company.ts";
import { anOrder, aReceipt } from "#tests/support/builders/an-order.ts";
import { NOON } from "#tests/support/builders/a-stock.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import type { Site } from "./permission-table.ts";

/** At least one row in every table of ply and timber orders. */
export async function aFullOrder({ owner }: Company, projectId: string): Promise<void> {
  const order = await anOrder(owner, projectId);
  await aReceipt(owner, projectId, order, 10);
  valueOf(await endOrder(owner, { projectId, orderId: order.orderId, kind: "closed", reason: "The rest is not needed" }));
  valueOf(await saveBuyingRule(owner, { projectId, leadDays: 4, makingDays: 1, waste: 700 }));
}

/** Sheets in the yard, some of which are cut up. */
export async function aReceivedYard({ company, project }: Site): Promise<object> {
  const order = await anOrder(company.owner, project.projectId);
  await aReceipt(company.owner, project.projectId, order, 5);
  return { placeId: order.yard, happenedAt: NOON, lines: [{ itemId: order.ply, quantity: 3 }] };
}
