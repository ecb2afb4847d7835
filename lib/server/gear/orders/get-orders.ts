import "server-only";
import { orderInput, ordersInput } from "#lib/contracts/planning/orders.ts";
import { dayIn } from "#lib/kernel/days.ts";
import { notFound, ok } from "#lib/kernel/result.ts";
import { TIMBER_USES } from "#lib/contracts/planning/cutting.ts";
import { asShutterRule } from "#lib/contracts/shutter.ts";
import { timberNames } from "#lib/trade/shutter/cutting-list.ts";
import { readCuttingRule } from "../../cutting/read-cutting-rule.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { companyName } from "../../people/store.ts";
import { projectHead, readRules } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { listOpenPlaces } from "../ledger/place-store.ts";
import { stockSizes } from "./buying-rows.ts";
import { materialsKnown, ordersShown } from "./materials-known.ts";

async function head(scope: ProjectScope) {
  const row = await readProject(scope);
  const project = projectHead(row);
  return { row, project, today: dayIn(scope.now, project.timeZone), role: scope.member.role };
}

/** Where sheets and lengths are kept, the yard first. */
const keptAt = async (scope: ProjectScope) =>
  (await listOpenPlaces(scope, scope.projectId)).filter(({ kind }) => ["yard", "rack", "truck"].includes(kind)).sort((a, b) => Number(b.kind === "yard") - Number(a.kind === "yard")).map(({ id, name, kind }) => ({ id, name, kind }));

/** Every order with where it stands, what lies at hand, and the sizes the project cuts from. */
export const getOrders = projectUseCase("gear.getOrders", "gear.read", ordersInput, async (scope) => {
  const { row, project, today, role } = await head(scope);
  const rules = readRules(row);
  const orders = await ordersShown(scope);
  const materials = await materialsKnown(scope, orders);
  const names = timberNames(asShutterRule(rules.shutterRule));
  const timbers = TIMBER_USES.flatMap((use) => { const material = names[use]; return material === null ? [] : [{ use, material }]; });
  const cuttingRule = readCuttingRule(row);
  const sizes = stockSizes(cuttingRule, rules.shutterRule.ply.label, timbers);
  return ok({ project, today, role, orders, materials, sizes, priceSource: cuttingRule.source, places: await keptAt(scope) });
});
export type OrdersPage = Extract<Awaited<ReturnType<typeof getOrders>>, { ok: true }>["value"];

export const getOrder = projectUseCase("gear.getOrder", "gear.read", orderInput, async (scope, { orderId }) => {
  const { project, today, role } = await head(scope);
  const [order] = await ordersShown(scope, orderId);
  if (!order) return notFound("order");
  const materials = (await materialsKnown(scope, [])).filter(({ itemId }) => order.lines.some((line) => line.itemId === itemId)).map(({ itemId, use, material, lengthMm, widthMm }) => ({ itemId, use, material, lengthMm, widthMm }));
  return ok({ project, today, role, order, materials, places: await keptAt(scope), company: await companyName(scope) });
});
export type OrderPage = Extract<Awaited<ReturnType<typeof getOrder>>, { ok: true }>["value"];

/** What should have come, or comes today: for the start of the day, when somebody has to be at the gate. */
export const getOrdersDue = projectUseCase("gear.getOrdersDue", "gear.read", ordersInput, async (scope) => {
  const { today } = await head(scope);
  const due = (await ordersShown(scope)).filter(({ state, wantedOn }) => (state === "open" || state === "part") && wantedOn <= today);
  return ok(due.map(({ id, number, supplier, wantedOn, isLate, lines }) => ({ id, number, supplier, wantedOn, isLate, lines: lines.filter(({ open }) => open > 0).map(({ itemId, item, open }) => ({ itemId, item, open })) })));
});
