import "server-only";
import { docketInput, onHireInput, statementInput } from "#lib/contracts/hire/dockets.ts";
import { hireInput } from "#lib/contracts/hire/terms.ts";
import { addDays, toDay, type Day } from "#lib/kernel/days.ts";
import { notFound, ok } from "#lib/kernel/result.ts";
import { accrue, monthOf, totalOf, type Period } from "#lib/trade/hire/accrual/accrue.ts";
import { onHire } from "#lib/trade/hire/accrual/on-hire.ts";
import { openParts } from "#lib/trade/hire/open-dockets.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { docketsOf, factsOf, itemName, readBook, termsOf, type HireBook } from "./hire-book.ts";
import type { Docket } from "./store/docket-store.ts";
import type { Supplier } from "./store/supplier-store.ts";

const named = (book: HireBook) => (docket: Docket) => ({
  ...docket, lines: docket.lines.map((line) => ({ ...line, item: itemName(book, line.itemId) })),
});
const reach = ({ id, name, contact, phone, email, isRetired }: Supplier) => ({ id, name, contact, phone, email, isRetired });
const plainItems = (book: HireBook) => book.items.map(({ id, name, family }) => ({ id, name, family }));
const sortedTerms = (book: HireBook, supplierId: string) => termsOf(book, supplierId).filter(({ currency }) => currency === book.project.currency);

/** What one supplier charges for a period, with names for what the lines point at. */
export function chargesOf(book: HireBook, supplierId: string, period: Period) {
  const dockets = docketsOf(book, supplierId);
  const { lines, gaps } = accrue(sortedTerms(book, supplierId), factsOf(dockets), period);
  const number = (docketId: string): string => dockets.find(({ id }) => id === docketId)?.number ?? "";
  return {
    lines: lines.map((line) => ({ ...line, item: line.itemId === null ? null : itemName(book, line.itemId), docket: number(line.docketId) })),
    gaps: gaps.map((gap) => ({ ...gap, item: gap.itemId === null ? null : itemName(book, gap.itemId), docket: number(gap.docketId) })),
  };
}
export type NamedCharge = ReturnType<typeof chargesOf>["lines"][number];

function standing(book: HireBook, supplier: Supplier, on: Day) {
  const dockets = docketsOf(book, supplier.id);
  const docketOf = new Map(dockets.map((docket) => [docket.id, docket]));
  const rows = onHire(sortedTerms(book, supplier.id), factsOf(dockets), on).map((row) => {
    const docket = docketOf.get(row.docketId);
    return { ...row, item: itemName(book, row.itemId), docket: docket?.number ?? "", deliveredOn: docket?.on ?? row.since };
  }).filter(({ deliveredOn }) => deliveredOn <= on);
  const first = dockets[0]?.on ?? on;
  const month = monthOf(on);
  const cost = (from: Day, to: Day): number => (from > to ? 0 : totalOf(chargesOf(book, supplier.id, { from, to }).lines));
  const toDate = chargesOf(book, supplier.id, { from: first < on ? first : on, to: on });
  return {
    ...reach(supplier), rows, hasTerms: sortedTerms(book, supplier.id).length > 0, hasDockets: dockets.length > 0,
    costToDate: totalOf(toDate.lines), monthToDate: cost(month.from, on),
    /** If nothing goes back before the month is over. */
    restOfMonth: cost(addDays(on, 1), month.to),
    gaps: toDate.gaps,
  };
}

/** What is on hire, since when, what it has cost and what comes next. */
export const getOnHire = projectUseCase("hire.getOnHire", "hire.read", onHireInput, async (scope, given) => {
  const book = await readBook(scope);
  const on = given.on === undefined ? book.today : toDay(given.on);
  const suppliers = book.suppliers.map((supplier) => standing(book, supplier, on)).filter(({ hasDockets, isRetired }) => hasDockets || !isRetired);
  return ok({ project: book.project, today: book.today, on, suppliers, itemNames: Object.fromEntries(book.items.map(({ id, name }) => [id, name])) });
});

/** Every docket with what it still waits for, the latest first. */
export const getDockets = projectUseCase("hire.getDockets", "hire.read", hireInput, async (scope) => {
  const book = await readBook(scope);
  const open = openParts(book.dockets.filter(({ reversal }) => reversal === null));
  const dockets = book.dockets.map(named(book)).reverse().map((docket) => ({
    ...docket, open: (open.get(docket.id) ?? []).map((part) => ({ ...part, item: part.itemId === null ? null : itemName(book, part.itemId) })),
  }));
  return ok({ project: book.project, today: book.today, items: plainItems(book), suppliers: book.suppliers.map(reach), dockets });
});

/** One docket with its whole chain: what it answers, and what answers it. */
export const getDocket = projectUseCase("hire.getDocket", "hire.read", docketInput, async (scope, { docketId }) => {
  const book = await readBook(scope);
  const docket = book.dockets.find(({ id }) => id === docketId);
  if (!docket) return notFound("docket");
  const open = openParts(book.dockets.filter(({ reversal }) => reversal === null)).get(docketId) ?? [];
  const chain = book.dockets.filter(({ id, answersId }) => id === docket.answersId || answersId === docket.id);
  const supplier = book.suppliers.find(({ id }) => id === docket.supplierId);
  return ok({
    project: book.project, today: book.today, docket: named(book)(docket), chain: chain.map(named(book)), supplier: supplier ? reach(supplier) : null,
    open: open.map((part) => ({ ...part, item: part.itemId === null ? null : itemName(book, part.itemId) })),
  });
});

/** Suppliers with every version of their terms. */
export const getTerms = projectUseCase("hire.getTerms", "hire.read", hireInput, async (scope) => {
  const book = await readBook(scope);
  const terms = book.terms.map((version) => ({ ...version, rates: version.rates.map((rate) => ({ ...rate, item: itemName(book, rate.itemId) })) }));
  return ok({ project: book.project, today: book.today, items: plainItems(book), suppliers: book.suppliers.map(reach), terms });
});

/** What a supplier charges for a period by our own books, line by line. */
export const getStatement = projectUseCase("hire.getStatement", "hire.read", statementInput, async (scope, { supplierId, from, to }) => {
  const book = await readBook(scope);
  const supplier = book.suppliers.find(({ id }) => id === supplierId);
  if (!supplier) return notFound("supplier");
  const dockets = docketsOf(book, supplierId);
  const credits = dockets.filter(({ kind, on, amount }) => kind === "credit" && amount !== null && on >= from && on <= to);
  return ok({
    project: book.project, today: book.today, supplier: reach(supplier), from, to, ...chargesOf(book, supplierId, { from: toDay(from), to: toDay(to) }),
    credits: credits.map(({ id, number, on, amount, note }) => ({ id, number, on, amount: amount ?? 0, note })),
  });
});
