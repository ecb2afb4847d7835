import "server-only";
import { transfer, type Line } from "#lib/trade/gear/ledger.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { listStandings } from "../../gear/ledger/ledger-store.ts";
import { projectPlaces } from "../../gear/ledger/place-store.ts";

/** Where sheets and lengths are taken from, the first first. */
const TAKEN_FROM = ["yard", "rack", "cleaning bay", "truck"];

/** The ledger as the saw sees it: what it takes goes back to where it was bought, what it leaves comes from there on to the rack. */
export type SawStock = {
  /** Takes as many pieces as lie there; `missing` are those the ledger does not know of. */
  readonly take: (itemId: string | undefined, pieces: number) => { readonly lines: readonly Line[]; readonly missing: number };
  readonly toRack: (itemId: string, pieces: number) => readonly Line[];
};

export async function sawStock(scope: ProjectScope): Promise<SawStock> {
  const places = await projectPlaces(scope);
  const idOf = (kind: "bought" | "rack"): string => places.find((place) => place.kind === kind)?.id ?? "";
  const [source, rack] = [idOf("bought"), idOf("rack")];
  const lying = (await listStandings(scope, scope.projectId)).filter(({ kind, quantity }) => quantity > 0 && TAKEN_FROM.includes(kind))
    .sort((a, b) => TAKEN_FROM.indexOf(a.kind) - TAKEN_FROM.indexOf(b.kind)).map(({ itemId, placeId, quantity }) => ({ itemId, placeId, left: quantity }));
  return {
    take: (itemId, pieces) => {
      let missing = pieces;
      const lines = lying.filter((at) => at.itemId === itemId).flatMap((at) => {
        const taken = Math.min(missing, at.left);
        at.left -= taken;
        missing -= taken;
        return taken > 0 ? transfer(at.itemId, at.placeId, source, taken) : [];
      });
      return { lines, missing };
    },
    toRack: (itemId, pieces) => transfer(itemId, source, rack, pieces),
  };
}
