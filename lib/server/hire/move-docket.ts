import "server-only";
import { ok, type Result } from "#lib/kernel/result.ts";
import { transfer, type Line } from "#lib/trade/gear/ledger.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { listStandings } from "../gear/ledger/ledger-store.ts";
import { projectPlaces } from "../gear/ledger/place-store.ts";
import { postMovements } from "../gear/ledger/post-movements.ts";

type Moved = { readonly itemId: string; readonly quantity: number };
type Docket = { readonly kind: string; readonly happenedAt: string; readonly lines: readonly Moved[] };

/** Where gear that leaves is taken from first, until there is enough. */
const TAKEN_FROM = ["rack", "cleaning bay", "truck", "yard"];
const MOVES = { "delivery": "delivered", "return": "returned", "missing": "lost", "settlement": "settled" } as const;

/** What a docket does in the gear ledger; null where it moves nothing. Refused by the ledger where it has less than leaves. */
export async function moveDocket(scope: ProjectScope, { kind, happenedAt, lines }: Docket, supplierPlaceId: string): Promise<Result<string | null>> {
  const movement = MOVES[kind as keyof typeof MOVES];
  const moved = lines.filter(({ quantity }) => quantity > 0);
  if (movement === undefined || moved.length === 0) return ok(null);
  const places = await projectPlaces(scope);
  const placeOf = (wanted: string): string => {
    const place = places.find((each) => each.kind === wanted);
    if (!place) throw new Error(`A company without a place for what is ${wanted}.`);
    return place.id;
  };
  const ledgerLines = movement === "delivered" ? moved.flatMap(({ itemId, quantity }) => transfer(itemId, supplierPlaceId, placeOf("rack"), quantity))
    : movement === "settled" ? moved.flatMap(({ itemId, quantity }) => transfer(itemId, placeOf("lost"), supplierPlaceId, quantity))
    : await takenFrom(scope, moved, placeOf("rack"), movement === "lost" ? placeOf("lost") : supplierPlaceId);
  const posted = await postMovements(scope, [{ kind: movement, projectId: scope.projectId, happenedAt, lines: ledgerLines }]);
  return posted.ok ? ok(posted.value[0] ?? null) : posted;
}

/** From the rack, then wherever else there is some; what is nowhere is asked of the rack, so that the refusal names it. */
async function takenFrom(scope: ProjectScope, moved: readonly Moved[], rackId: string, toId: string): Promise<Line[]> {
  const standings = (await listStandings(scope, scope.projectId)).filter(({ kind, quantity }) => TAKEN_FROM.includes(kind) && quantity > 0)
    .sort((a, b) => TAKEN_FROM.indexOf(a.kind) - TAKEN_FROM.indexOf(b.kind));
  return moved.flatMap(({ itemId, quantity }) => {
    let rest = quantity;
    const lines = standings.filter((each) => each.itemId === itemId).flatMap(({ placeId, quantity: there }) => {
      const taken = Math.min(rest, there);
      rest -= taken;
      return taken > 0 ? transfer(itemId, placeId, toId, taken) : [];
    });
    return rest > 0 ? [...lines, ...transfer(itemId, rackId, toId, rest)] : lines;
  });
}
