import "server-only";
import { dayIn } from "#lib/kernel/days.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { readProject } from "../../projects/store.ts";
import { listStandings } from "../ledger/ledger-store.ts";
import { listMaterials } from "./material-store.ts";
import { withState, type OrderShown } from "./order-book.ts";
import { listOrders } from "./order-store.ts";

const LIES_AT = ["yard", "rack", "truck", "cleaning bay"];

/** Every size the company knows: what lies where this project can take it, and what is to come on its orders, overdue ones today at the earliest. */
export async function materialsKnown(scope: ProjectScope, orders?: readonly OrderShown[]) {
  const materials = await listMaterials(scope);
  const standings = materials.length === 0 ? [] : (await listStandings(scope, scope.projectId)).filter(({ kind }) => LIES_AT.includes(kind));
  const open = orders ?? (await ordersShown(scope));
  const today = dayIn(scope.now, (await readProject(scope)).timeZone);
  return materials.map((material) => {
    const at = standings.filter(({ itemId }) => itemId === material.itemId).map(({ placeId, place, quantity }) => ({ placeId, place, quantity }));
    const coming = open.flatMap(({ wantedOn, number, lines }) => lines.flatMap(({ itemId, open: count }) => (itemId === material.itemId && count > 0 ? [{ on: wantedOn < today ? today : wantedOn, count, number }] : [])));
    return { ...material, at, atHand: at.reduce((sum, { quantity }) => sum + quantity, 0), coming };
  });
}
export type KnownMaterial = Awaited<ReturnType<typeof materialsKnown>>[number];

export async function ordersShown(scope: ProjectScope, orderId: string | null = null): Promise<OrderShown[]> {
  const today = dayIn(scope.now, (await readProject(scope)).timeZone);
  return (await listOrders(scope, orderId)).map((order) => withState(order, today));
}
