import "server-only";
import { dayIn, type Day } from "#lib/kernel/days.ts";
import { NO_FACTS, type HireFacts } from "#lib/trade/hire/facts.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { listCountedItems, type ItemRow } from "../gear/ledger/item-store.ts";
import { projectHead, type ProjectHead } from "../projects/project-head.ts";
import { readProject } from "../projects/store.ts";
import { listDockets, type Docket } from "./store/docket-store.ts";
import { listSuppliers, listTerms, type KnownTerms, type Supplier } from "./store/supplier-store.ts";

/** Everything hire goes by on one project, read once for whatever is asked of it. */
export type HireBook = {
  readonly project: ProjectHead;
  readonly today: Day;
  /** Sheets and timber are bought, not hired. */
  readonly items: readonly ItemRow[];
  readonly suppliers: readonly Supplier[];
  readonly terms: readonly KnownTerms[];
  readonly dockets: readonly Docket[];
};

export async function readBook(scope: ProjectScope): Promise<HireBook> {
  const project = projectHead(await readProject(scope));
  return {
    project, today: dayIn(scope.now, project.timeZone), items: (await listCountedItems(scope)).filter(({ family }) => family !== "sheet" && family !== "timber"), suppliers: await listSuppliers(scope),
    terms: await listTerms(scope), dockets: await listDockets(scope),
  };
}

export const itemName = (book: HireBook, itemId: string | null): string => book.items.find(({ id }) => id === itemId)?.name ?? (itemId === null ? "" : "an item taken out of use");

/** The versions in force, reversed ones left out. */
export const termsOf = (book: HireBook, supplierId: string): readonly KnownTerms[] =>
  book.terms.filter((terms) => terms.supplierId === supplierId && terms.reversal === null);

export const docketsOf = (book: HireBook, supplierId: string): readonly Docket[] =>
  book.dockets.filter((docket) => docket.supplierId === supplierId && docket.reversal === null);

/** What happened with a supplier, from the dockets that still stand. */
export function factsOf(dockets: readonly Docket[]): HireFacts {
  const of = (kind: Docket["kind"]): Docket[] => dockets.filter((docket) => docket.kind === kind && docket.reversal === null);
  const lines = (docket: Docket) => docket.lines.filter(({ quantity }) => quantity > 0).map((line) => ({ ...line, docketId: docket.id, on: docket.on }));
  const settled = new Map(of("settlement").map(({ answersId, on }) => [answersId, on]));
  return {
    ...NO_FACTS,
    delivered: of("delivery").flatMap((docket) => lines(docket).map((line) => ({ ...line, dispatchedOn: docket.dispatchedOn }))),
    calledOff: of("off-hire").flatMap(lines),
    returned: of("return").flatMap((docket) => lines(docket).map((line) => ({ ...line, callId: docket.answersId }))),
    missing: of("missing").flatMap((docket) => lines(docket).map((line) => ({ ...line, settledOn: settled.get(docket.id) ?? null }))),
    trips: [
      ...of("delivery").filter(({ bySupplier }) => bySupplier).map(({ id, on }) => ({ docketId: id, on, kind: "delivery" as const })),
      ...of("return").filter(({ bySupplier }) => bySupplier).map(({ id, on }) => ({ docketId: id, on, kind: "collection" as const })),
      ...of("failed-collection").map(({ id, on }) => ({ docketId: id, on, kind: "failed-collection" as const })),
    ],
    standDowns: of("stand-down").map(({ id, on, until, share, lines: own }) => ({ id, from: on, to: until ?? on, share: share ?? 0, itemId: own[0]?.itemId ?? null })),
  };
}
