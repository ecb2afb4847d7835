import type { Role } from "#lib/access/roles.ts";
import { anOrder, aReceipt, orderOf, PLY, receiptOf } from "#tests/support/builders/an-order.ts";
import { aReceivedYard } from "./a-full-order.ts";
import type { Row, Site } from "./permission-table.ts";

const all: readonly Role[] = ["owner", "leading hand", "office"];
const desk: readonly Role[] = ["owner", "office"];
type OfProject = (may: Row["may"], example?: (site: Site) => object) => Row;

const ordered = ({ company, project }: Site) => anOrder(company.owner, project.projectId);
const came = async (site: Site) => {
  const order = await ordered(site);
  return { order, receiptId: await aReceipt(site.company.owner, site.project.projectId, order, 9) };
};

export const orderPermissions = (ofProject: OfProject): Readonly<Record<string, Row>> => ({
  "gear.getOrders": ofProject(all),
  "gear.getOrdersDue": ofProject(all),
  "gear.getOrder": ofProject(all, async (site) => ({ orderId: (await ordered(site)).orderId })),
  "gear.getBuyingTask": ofProject(all),
  "gear.saveBuyingRule": ofProject(desk, () => ({ leadDays: 6, makingDays: 2, waste: 800 })),
  "gear.placeOrder": ofProject(desk, ({ project }) => orderOf(project.projectId)),
  "gear.endOrder": ofProject(desk, async (site) => ({ orderId: (await ordered(site)).orderId, kind: "cancelled", reason: "Wrong merchant" })),
  "gear.receiveOrder": ofProject(all, async (site) => receiptOf(site.project.projectId, await ordered(site), 8)),
  "gear.reverseReceipt": ofProject(desk, async (site) => ({ receiptId: (await came(site)).receiptId, reason: "Another order's docket" })),
  "gear.takeInMaterial": ofProject(all, () => ({ lines: [{ ...PLY, quantity: 4 }] })),
  "gear.cutUpMaterial": ofProject(all, aReceivedYard),
});
