import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { materialKey } from "#lib/contracts/planning/orders.ts";
import { isDay } from "#lib/kernel/days.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getOrders } from "#lib/server/gear/orders/get-orders.ts";
import { isExample } from "#app/_ui/message/example-notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Refused } from "../../../../../refused.tsx";
import { materialText } from "../_parts/order-words.ts";
import { OrderForm } from "./order-form.tsx";

export const metadata: Metadata = { title: "Write an order" };
type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>> };

/** What is ordered and for when; counts worked out under What to buy come with the address as `n.<size>`. */
export default async function NewOrderPage({ params, searchParams }: Props) {
  const [{ projectId }, query] = [await params, await searchParams];
  const answer = await getOrders(await currentCaller(), { projectId });
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, role, today, orders, materials, priceSource } = answer.value;
  // Made-up prices are to plan by; nobody orders at them.
  const sizes = answer.value.sizes.map((size) => ({ ...size, price: isExample(priceSource) ? null : size.price }));
  if (!can(role, "order.record")) return <Refused failure={{ kind: "not-allowed", permission: "order.record" }} />;
  const ordered = new Set(orders.flatMap(({ lines }) => lines.map(({ itemId }) => itemId)));
  const priced = [...sizes, ...materials.filter(({ itemId }) => ordered.has(itemId)).map((material) => ({ ...material, price: null }))];
  const rows = [...new Map(priced.map((row) => [materialKey(row), row]).reverse() as [string, (typeof priced)[number]][])].reverse();
  const asked = (key: string): number | null => { const value = Number(query[`n.${key}`]); return Number.isInteger(value) && value > 0 ? value : null; };
  const wanted = typeof query["wanted"] === "string" && isDay(query["wanted"]) && query["wanted"] >= today ? query["wanted"] : "";
  return (
    <Page title="Write an order" subtitle={`${project.name}: ply and timber`}>
      <OrderForm
        projectId={projectId} currency={project.currency} units={project.units} today={today} wanted={wanted} merchants={[...new Set(orders.map(({ supplier }) => supplier))]}
        rows={rows.map(([key, { use, material, lengthMm, widthMm, price }]) => ({ key, name: materialText({ use, material, lengthMm, widthMm }, project.units), material: { use, material, lengthMm, widthMm }, price, quantity: asked(key) }))}
      />
    </Page>
  );
}
