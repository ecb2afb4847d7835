import type { Family, PlaceKind } from "#lib/trade/gear/ledger.ts";

export type Standing = {
  readonly itemId: string; readonly item: string; readonly family: Family; readonly placeId: string; readonly place: string; readonly kind: PlaceKind; readonly quantity: number;
};
/** Columns of the overview: single places by name, all columns together, and what is out of reach at the end. */
export type Heading = { readonly key: string; readonly label: string };
export type StandingRow = { readonly key: string; readonly itemId: string | null; readonly name: string; readonly family: Family; readonly at: ReadonlyMap<string, number>; readonly onSite: number };

const OUT_OF_REACH: readonly PlaceKind[] = ["lost", "scrapped"];
const ORDER: readonly PlaceKind[] = ["rack", "cleaning bay", "column", "truck", "yard", "supplier", "lost", "scrapped"];

/** What stands under zero at a hirer is what is on hire from there; own stock's source says nothing of where it is. */
const headingOf = ({ kind, placeId, place }: Standing): Heading | null => {
  if (kind === "bought") return null;
  if (kind === "column") return { key: "column", label: "At columns" };
  if (kind === "supplier") return { key: placeId, label: `On hire: ${place}` };
  return { key: placeId, label: place };
};

/** Items by place; panels are one row, since each of them is at one place only. */
export function layStandings(standings: readonly Standing[]): { readonly headings: readonly Heading[]; readonly rows: readonly StandingRow[] } {
  const headings = new Map<string, Heading & { readonly order: number }>();
  const rows = new Map<string, Omit<StandingRow, "at"> & { at: Map<string, number> }>();
  for (const standing of standings) {
    const heading = headingOf(standing);
    if (!heading) continue;
    headings.set(heading.key, { ...heading, order: ORDER.indexOf(standing.kind) });
    const isPanel = standing.family === "panel";
    const key = isPanel ? "panel" : standing.itemId;
    const row = rows.get(key) ?? { key, itemId: isPanel ? null : standing.itemId, name: isPanel ? "Panels" : standing.item, family: standing.family, at: new Map<string, number>(), onSite: 0 };
    const count = standing.kind === "supplier" ? -standing.quantity : standing.quantity;
    row.at.set(heading.key, (row.at.get(heading.key) ?? 0) + count);
    const counts = standing.kind !== "supplier" && !OUT_OF_REACH.includes(standing.kind);
    rows.set(key, { ...row, onSite: row.onSite + (counts ? standing.quantity : 0) });
  }
  return { headings: [...headings.values()].sort((left, right) => left.order - right.order || left.label.localeCompare(right.label)), rows: [...rows.values()] };
}
