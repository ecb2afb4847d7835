import { fail, ok, type Result } from "#lib/kernel/result.ts";

/** What is counted. A clamp set is the bars of one clamp; single bars and wedges, which go missing first, are counted apart. */
export const FAMILIES = ["clamp set", "clamp bar", "wedge", "prop", "panel", "sheet", "timber", "other"] as const;
export type Family = (typeof FAMILIES)[number];

/** Where gear can be. `supplier` and `bought` are where it came from; all others are places where it can be picked up. */
export const PLACE_KINDS = ["supplier", "bought", "yard", "truck", "cleaning bay", "rack", "column", "lost", "scrapped"] as const;
export type PlaceKind = (typeof PLACE_KINDS)[number];

/** A source stands under zero by what came from it and has not gone back: at a supplier, that is what is on hire. */
export const isSource = (kind: PlaceKind): boolean => kind === "supplier" || kind === "bought";

export const MOVEMENT_KINDS = [
  "opening", "delivered", "returned", "moved", "gathered", "stood", "clamped", "stripped", "cleaned", "made", "cut up", "cut down", "lost", "found", "scrapped",
  "settled", "reversed",
] as const;
export type MovementKind = (typeof MOVEMENT_KINDS)[number];
/** The stages whose ticks move gear. */
export const TICK_KINDS = ["stood", "clamped", "stripped"] as const satisfies readonly MovementKind[];
export type TickKind = (typeof TICK_KINDS)[number];

/** `quantity` pieces, a whole number, arriving (over zero) or leaving (under zero). */
export type Line = { readonly itemId: string; readonly placeId: string; readonly quantity: number };
export type Item = { readonly id: string; readonly name: string; readonly family: Family };
export type Place = { readonly id: string; readonly name: string; readonly kind: PlaceKind };

/** `quantity` of one item from one place to another. */
export const transfer = (itemId: string, from: string, to: string, quantity: number): readonly Line[] => [
  { itemId, placeId: from, quantity: -quantity },
  { itemId, placeId: to, quantity },
];

/** What undoes lines: the same with the sign turned. */
export const mirror = (lines: readonly Line[]): readonly Line[] => lines.map((line) => ({ ...line, quantity: -line.quantity }));

const keyOf = (itemId: string, placeId: string): string => `${itemId} ${placeId}`;

/** Lines of the same item and place as one; those that come to nothing fall away. */
export function gathered(lines: readonly Line[]): readonly Line[] {
  const sums = new Map<string, Line>();
  for (const line of lines) {
    const key = keyOf(line.itemId, line.placeId);
    sums.set(key, { ...line, quantity: (sums.get(key)?.quantity ?? 0) + line.quantity });
  }
  return [...sums.values()].filter(({ quantity }) => quantity !== 0);
}

/** What is where: pieces by item and place, nothing where nothing was ever moved. */
export class Balances {
  private readonly kept: Map<string, Line>;

  constructor(lines: Iterable<Line> = []) {
    this.kept = new Map();
    this.add([...lines]);
  }
  at(itemId: string, placeId: string): number {
    return this.kept.get(keyOf(itemId, placeId))?.quantity ?? 0;
  }
  add(lines: readonly Line[]): void {
    for (const line of lines) this.kept.set(keyOf(line.itemId, line.placeId), { ...line, quantity: this.at(line.itemId, line.placeId) + line.quantity });
  }
  /** Without what comes to nothing. */
  lines(): readonly Line[] {
    return [...this.kept.values()].filter(({ quantity }) => quantity !== 0);
  }
}

export type LedgerFault =
  | { readonly code: "gear-moves-nothing" | "gear-not-whole"; readonly values: Readonly<Record<string, string | number>> }
  | { readonly code: "gear-unbalanced"; readonly values: { readonly item: string; readonly sum: number } }
  | { readonly code: "gear-not-there"; readonly values: { readonly item: string; readonly place: string; readonly asked: number; readonly there: number } }
  | { readonly code: "gear-more-than-came"; readonly values: { readonly item: string; readonly place: string; readonly asked: number; readonly out: number } }
  | { readonly code: "panel-twice"; readonly values: { readonly item: string; readonly place: string } };

type Names = { readonly item: (id: string) => Item | undefined; readonly place: (id: string) => Place | undefined };

/** Lines that may be written at all: something moves, in whole pieces, and what leaves one place arrives at another. */
export function checkLines(lines: readonly Line[], names: Names): LedgerFault | null {
  if (lines.length === 0) return { code: "gear-moves-nothing", values: {} };
  const sums = new Map<string, number>();
  for (const { itemId, quantity } of lines) {
    if (!Number.isInteger(quantity) || quantity === 0 || Math.abs(quantity) > MOST_PIECES) return { code: "gear-not-whole", values: { quantity, most: MOST_PIECES } };
    sums.set(itemId, (sums.get(itemId) ?? 0) + quantity);
  }
  for (const [itemId, sum] of sums) if (sum !== 0) return { code: "gear-unbalanced", values: { item: names.item(itemId)?.name ?? itemId, sum } };
  return null;
}
/** More of one item than any yard holds; keeps every sum far inside what the database counts with. */
export const MOST_PIECES = 1_000_000;

/**
 * Adds a movement to the balances, or says what stands against it: nothing stands under zero where gear can be picked
 * up, no more goes back to a source than came from it, and a panel is at one place.
 */
export function applyLines(balances: Balances, lines: readonly Line[], names: Names): Result<null, LedgerFault> {
  const together = gathered(lines);
  const fault = checkLines(together, names);
  if (fault) return fail(fault);
  for (const { itemId, placeId, quantity } of together) {
    const [item, place] = [names.item(itemId), names.place(placeId)];
    if (!item || !place) throw new Error("A ledger line names an item or a place that was not read.");
    const before = balances.at(itemId, placeId);
    const after = before + quantity;
    const values = { item: item.name, place: place.name };
    if (isSource(place.kind) && after > 0) return fail({ code: "gear-more-than-came", values: { ...values, asked: quantity, out: -before } });
    if (item.family === "panel" && (Math.abs(after) > 1 || (place.kind === "supplier" && quantity !== 0))) return fail({ code: "panel-twice", values });
    if (!isSource(place.kind) && after < 0) return fail({ code: "gear-not-there", values: { ...values, asked: -quantity, there: before } });
  }
  balances.add(together);
  return ok(null);
}
