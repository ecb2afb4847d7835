import type { DocketKind } from "#lib/contracts/hire/dockets.ts";

/** An item a docket may name, with how many there are to be: ordered, called off or on hire. */
export type OfferedItem = { readonly id: string; readonly name: string; readonly expected: number | null };

const ANSWERS: Partial<Record<DocketKind, DocketKind>> = { "delivery": "order", "return": "off-hire", "yard-count": "return", "settlement": "missing" };
export const answeringKind = (kind: DocketKind): DocketKind | null => ANSWERS[kind] ?? null;

type Given = {
  readonly kind: DocketKind; readonly supplierId: string;
  readonly book: { readonly items: readonly { readonly id: string; readonly name: string }[] };
  readonly terms: { readonly terms: readonly { readonly supplierId: string; readonly reversal: object | null; readonly rates: readonly { readonly itemId: string }[] }[] };
  readonly standing: { readonly suppliers: readonly { readonly id: string; readonly rows: readonly { readonly itemId: string; readonly quantity: number; readonly isMissing: boolean }[] }[] };
  readonly answered: { readonly lines: readonly { readonly itemId: string; readonly quantity: number }[] } | undefined;
};

/** What leaves is what is on hire; what comes is what the terms have a rate for, or anything that is counted where there is none. */
export function offeredItems({ kind, supplierId, book, terms, standing, answered }: Given): OfferedItem[] {
  const named = (ids: readonly string[]) => book.items.filter(({ id }) => ids.includes(id));
  if (answered) return named(answered.lines.map(({ itemId }) => itemId)).map((item) => ({ ...item, expected: answered.lines.find(({ itemId }) => itemId === item.id)?.quantity ?? null }));
  const rows = standing.suppliers.find(({ id }) => id === supplierId)?.rows.filter(({ isMissing }) => !isMissing) ?? [];
  if (kind === "return" || kind === "off-hire" || kind === "missing") {
    return named(rows.map(({ itemId }) => itemId)).map((item) => ({ ...item, expected: rows.reduce((sum, row) => sum + (row.itemId === item.id ? row.quantity : 0), 0) }));
  }
  const priced = named(terms.terms.filter((version) => version.supplierId === supplierId && version.reversal === null).flatMap(({ rates }) => rates.map(({ itemId }) => itemId)));
  return (priced.length > 0 ? priced : [...book.items]).map(({ id, name }) => ({ id, name, expected: null }));
}
