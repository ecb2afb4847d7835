import type { Caller } from "#lib/server/gate/caller.ts";
import { openStock, prepareGear, savePlace } from "#lib/server/gear/stock.ts";
import type { PlaceKind } from "#lib/trade/gear/ledger.ts";
import { valueOf } from "./value-of.ts";

export const NOON = "2031-05-05T02:00:00.000Z";

export type Stock = {
  /** Item ids by name, place ids by kind. */
  readonly items: Readonly<Record<string, string>>;
  readonly places: Readonly<Partial<Record<PlaceKind, string>>>;
  readonly place: (kind: PlaceKind) => string;
  readonly item: (name: string) => string;
};

/** What a project can count, and its places, made the way the Gear page makes them. */
export async function gearOf(by: Caller, projectId: string): Promise<Stock> {
  const { items, places } = valueOf(await prepareGear(by, { projectId }));
  const byKind: Partial<Record<PlaceKind, string>> = Object.fromEntries([...places].reverse().map(({ kind, id }) => [kind, id]));
  const byName = Object.fromEntries(items.map(({ name, id }) => [name, id]));
  const known = (id: string | undefined, what: string): string => {
    if (id === undefined) throw new Error(`The project has no ${what}.`);
    return id;
  };
  return { items: byName, places: byKind, place: (kind) => known(byKind[kind], kind), item: (name) => known(byName[name], name) };
}

/** Pieces in the rack, by the names of the items; answers the movement. */
export async function aStock(by: Caller, projectId: string, pieces: Readonly<Record<string, number>> = { Wedge: 40 }): Promise<Stock & { movementId: string }> {
  const stock = await gearOf(by, projectId);
  const lines = Object.entries(pieces).map(([name, quantity]) => ({ itemId: stock.item(name), quantity }));
  const [movementId = ""] = valueOf(await openStock(by, { projectId, happenedAt: NOON, placeId: stock.place("rack"), lines }));
  return { ...stock, movementId };
}

export const anotherRack = async (by: Caller, projectId: string, name: string): Promise<string> =>
  valueOf(await savePlace(by, { projectId, kind: "rack", name })).id;
