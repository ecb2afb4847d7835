import "server-only";
import { brokenRule, conflict, notFound, ok, type Result } from "#lib/kernel/result.ts";
import { applyLines, Balances, gathered, mirror, type Item, type Line, type MovementKind } from "#lib/trade/gear/ledger.ts";
import type { CompanyScope } from "../../gate/scope.ts";
import { clashOf } from "../../platform/db.ts";
import { newId } from "../../platform/new-id.ts";
import { addMovements, findMovement, holdBalances, listItems, listPlaces, type PlaceRow } from "./ledger-store.ts";

export type NewMovement = {
  /** Made by the sender where it has one; the same id twice is refused by the database. */
  readonly id?: string;
  readonly kind: Exclude<MovementKind, "reversed">;
  /** Whose work it is; its places are the company's own or this project's. */
  readonly projectId: string | null;
  readonly columnId?: string | null;
  readonly siteEventId?: string | null;
  readonly happenedAt: string;
  readonly reason?: string | null;
  readonly lines: readonly Line[];
};
type Written = Omit<NewMovement, "kind"> & { readonly kind: MovementKind; readonly reversesId?: string };

/**
 * Writes movements, one after the other, all or none. What they touch is held first, so that of two who take the same
 * thing at the same moment one gets it and the other hears where it is. Answers their ids.
 */
export const postMovements = (scope: CompanyScope, movements: readonly NewMovement[]): Promise<Result<readonly string[]>> => write(scope, movements);

async function write(scope: CompanyScope, movements: readonly Written[]): Promise<Result<readonly string[]>> {
  const lines = movements.flatMap((movement) => movement.lines);
  const itemIds = [...new Set(lines.map(({ itemId }) => itemId))];
  const placeIds = [...new Set(lines.map(({ placeId }) => placeId))];
  const items = new Map((await listItems(scope, itemIds)).map((item) => [item.id, item]));
  if (items.size < itemIds.length) return notFound("gear item");
  const places = new Map((await listPlaces(scope, placeIds)).map((place) => [place.id, place]));
  if (movements.some((movement) => movement.lines.some(({ placeId }) => !isWithin(places.get(placeId), movement.projectId)))) return notFound("place");
  const balances = new Balances(await holdBalances(scope, itemIds, placeIds));
  const names = { item: (id: string): Item | undefined => items.get(id), place: (id: string) => places.get(id) };
  for (const movement of movements) {
    const applied = applyLines(balances, movement.lines, names);
    if (!applied.ok) return brokenRule(applied.failure.code, applied.failure.values);
  }
  return keep(scope, movements);
}

const isWithin = (place: PlaceRow | undefined, projectId: string | null): boolean =>
  place !== undefined && (place.projectId === null || projectId === null || place.projectId === projectId);

async function keep(scope: CompanyScope, movements: readonly Written[]): Promise<Result<readonly string[]>> {
  const rows = movements.map((movement) => ({
    id: movement.id ?? newId(), kind: movement.kind, projectId: movement.projectId, columnId: movement.columnId ?? null, siteEventId: movement.siteEventId ?? null,
    happenedAt: movement.happenedAt, reason: movement.reason ?? null, reversesId: movement.reversesId ?? null, lines: gathered(movement.lines),
  }));
  try {
    await addMovements(scope, rows);
    return ok(rows.map(({ id }) => id));
  } catch (error) {
    // What was brought in for the first time had no balance to hold: the database decides who was first.
    if (clashOf(error) !== null) return conflict("gear");
    throw error;
  }
}

/** What came of the saw can be put back as long as it lies there. */
const CUTS: ReadonlySet<MovementKind> = new Set(["cut up", "cut down"]);

/**
 * Mirrors a movement, once, under the sender's id where it has one. A mistake never was, so it is taken out at the
 * moment it was said to have happened.
 */
export async function reverseMovement(scope: CompanyScope, movementId: string, reason: string, id?: string): Promise<Result<readonly string[]>> {
  const movement = await findMovement(scope, movementId);
  if (!movement) return notFound("movement");
  if (movement.reversesId !== null) return brokenRule("movement-is-reversal");
  if (movement.reversedById !== null) return brokenRule("movement-reversed-already");
  const undone = await write(scope, [{
    ...(id === undefined ? {} : { id }), kind: "reversed", projectId: movement.projectId, columnId: movement.columnId, happenedAt: movement.happenedAt,
    reason, reversesId: movement.id, lines: mirror(movement.lines),
  }]);
  const isUsed = CUTS.has(movement.kind) && !undone.ok && undone.failure.kind === "rule" && undone.failure.code === "gear-not-there";
  return isUsed && undone.failure.kind === "rule" ? brokenRule("cut-used-already", undone.failure.values) : undone;
}
