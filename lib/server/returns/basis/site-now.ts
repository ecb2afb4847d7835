import "server-only";
import type { ReturnSettings } from "#lib/contracts/hire/returns.ts";
import { onHire, type OnHire } from "#lib/trade/hire/accrual/on-hire.ts";
import type { HireTerms } from "#lib/trade/hire/terms/hire-terms.ts";
import { layTerms } from "#lib/trade/hire/terms/terms-in-force.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { docketsOf, factsOf, type HireBook, readBook, termsOf } from "../../hire/hire-book.ts";
import { listOnProject } from "./form-store.ts";
import { type Holders, readHolders } from "./gear-holders.ts";

/** What of a supplier's is on hire here and not called off, and the latest terms; null where there are none. */
export type Standing = { readonly supplierId: string; readonly supplier: string; readonly terms: HireTerms | null; readonly hired: readonly OnHire[] };

/** What every plan of the project rests on, read once. */
export type SiteNow = { readonly book: HireBook; readonly holders: Holders; readonly onProject: ReadonlyMap<string, number>; readonly standing: readonly Standing[] };

export async function readSite(scope: ProjectScope, cleaningDays: number): Promise<SiteNow> {
  const book = await readBook(scope);
  return {
    book, holders: await readHolders(scope, book.items, book.today, cleaningDays),
    onProject: new Map((await listOnProject(scope)).map(({ itemId, quantity }) => [itemId, quantity])),
    standing: book.suppliers.map(({ id, name }) => ({
      supplierId: id, supplier: name, terms: layTerms(termsOf(book, id)).at(-1)?.terms ?? null,
      hired: onHire(termsOf(book, id), factsOf(docketsOf(book, id)), book.today).filter(({ isMissing, endsOn }) => !isMissing && endsOn === null),
    })),
  };
}

/** As it was set for the plan, else as its clamp kind says; null where nobody has told yet. */
export const pieceKg = ({ holders }: Pick<SiteNow, "holders">, { unitKg }: Pick<ReturnSettings, "unitKg">, itemId: string): number | null =>
  unitKg[itemId] ?? holders.kgOf.get(itemId) ?? null;

export const countByItem = (rows: readonly OnHire[]): Map<string, number> =>
  rows.reduce((counts, { itemId, quantity }) => counts.set(itemId, (counts.get(itemId) ?? 0) + quantity), new Map<string, number>());

/** Items of a supplier's a plan can be made for: on hire, with a rate, and what columns need of them is known. */
export const plannedItems = ({ book, holders }: SiteNow, { terms, hired }: Standing): string[] => {
  const onHand = countByItem(hired);
  return book.items.filter(({ id }) => (onHand.get(id) ?? 0) > 0 && holders.known.has(id) && terms?.rates.some(({ itemId }) => itemId === id)).map(({ id }) => id);
};
