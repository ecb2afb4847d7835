import "server-only";
import { enterInvoiceInput, importInvoiceInput, invoiceInput, saveQueryInput } from "#lib/contracts/hire/invoices.ts";
import { hireInput, reverseInput } from "#lib/contracts/hire/terms.ts";
import { addDays, toDay } from "#lib/kernel/days.ts";
import { brokenRule, invalid, notFound, ok, type Result } from "#lib/kernel/result.ts";
import { compareInvoice, totalsOf } from "#lib/trade/hire/match/compare-invoice.ts";
import type { InvoiceLine } from "#lib/trade/hire/match/invoice.ts";
import { readInvoice } from "#lib/trade/hire/match/read-invoice.ts";
import { readSheet } from "../columns/read-sheet.ts";
import { recordChange } from "../gate/change-line.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { newId } from "../platform/new-id.ts";
import { chargesOf } from "./get-hire.ts";
import { docketsOf, itemName, readBook, termsOf, type HireBook } from "./hire-book.ts";
import { addInvoice, findInvoiceFile, listInvoices, listOwners, writeQuery, type Invoice } from "./store/invoice-store.ts";
import { addReversal } from "./store/supplier-store.ts";

/** Our charges of an invoice's period beside its lines. */
function compare(book: HireBook, invoice: Invoice) {
  const numbers = new Map(docketsOf(book, invoice.supplierId).map(({ id, number }) => [id, number]));
  const first = docketsOf(book, invoice.supplierId)[0]?.on ?? toDay(invoice.from);
  const before = addDays(toDay(invoice.from), -1);
  const { lines, gaps } = chargesOf(book, invoice.supplierId, { from: toDay(invoice.from), to: toDay(invoice.to) });
  const earlier = first > before ? [] : chargesOf(book, invoice.supplierId, { from: first, to: before }).lines;
  const groups = compareInvoice(invoice.lines, { lines, earlier, periodTo: toDay(invoice.to), docketNumber: (id) => numbers.get(id) ?? "" });
  return { groups: groups.map((group) => ({ ...group, item: group.itemId === null ? (group.theirs[0]?.text ?? null) : itemName(book, group.itemId) })), totals: totalsOf(groups), gaps };
}

export const getInvoices = projectUseCase("hire.getInvoices", "hire.read", hireInput, async (scope) => {
  const book = await readBook(scope);
  const invoices = (await listInvoices(scope)).map(({ lines, ...invoice }) => ({
    ...invoice, lineCount: lines.length, supplier: book.suppliers.find(({ id }) => id === invoice.supplierId)?.name ?? "", ...compare(book, { ...invoice, lines }).totals,
  }));
  const suppliers = book.suppliers.filter(({ isRetired }) => !isRetired).map(({ id, name }) => ({ id, name }));
  return ok({ project: book.project, today: book.today, suppliers, items: book.items.map(({ id, name }) => ({ id, name })), invoices });
});

export const getInvoice = projectUseCase("hire.getInvoice", "hire.read", invoiceInput, async (scope, { invoiceId }) => {
  const book = await readBook(scope);
  const invoice = (await listInvoices(scope)).find(({ id }) => id === invoiceId);
  if (!invoice) return notFound("invoice");
  const supplier = book.suppliers.find(({ id }) => id === invoice.supplierId);
  const dockets = docketsOf(book, invoice.supplierId).map(({ id, kind, number, on, happenedAt, name, photos, lines }) => (
    { id, kind, number, on, happenedAt, name, photos, itemIds: lines.map(({ itemId }) => itemId) }));
  return ok({
    project: book.project, today: book.today, invoice, dockets, owners: await listOwners(scope), me: scope.member.id,
    supplier: { name: supplier?.name ?? "", contact: supplier?.contact ?? null, email: supplier?.email ?? null }, ...compare(book, invoice),
  });
});
export type InvoicePage = Extract<Awaited<ReturnType<typeof getInvoice>>, { ok: true }>["value"];

type Head = { readonly supplierId: string; readonly number: string; readonly issuedOn: string; readonly from: string; readonly to: string; readonly currency: string };
type Paper = { readonly lines: readonly InvoiceLine[]; readonly fileName: string | null; readonly file: Uint8Array | null };

async function keep(scope: ProjectScope, book: HireBook, head: Head, paper: Paper): Promise<Result<{ invoiceId: string }>> {
  const known = (await listInvoices(scope)).find(({ supplierId, number, reversal }) => reversal === null && supplierId === head.supplierId && number.toUpperCase() === head.number.toUpperCase());
  if (known) return brokenRule("invoice-known", { number: head.number });
  if (paper.lines.some(({ itemId }) => itemId !== null && !book.items.some(({ id }) => id === itemId))) return notFound("gear item");
  const { supplierId, number, issuedOn, from, to, currency } = head;
  const invoiceId = newId();
  await addInvoice(scope, { id: invoiceId, supplierId, number, issuedOn, from, to, currency, ...paper });
  await recordChange(scope, { kind: "set-up", detail: { hire: "invoice", number, lines: paper.lines.length } });
  return ok({ invoiceId });
}

function refuse(book: HireBook, { supplierId, currency }: Head): Result<never> | null {
  if (!book.suppliers.some(({ id }) => id === supplierId)) return notFound("supplier");
  return currency === book.project.currency ? null : brokenRule("invoice-foreign-currency", { currency, project: book.project.currency });
}

/** An invoice typed in from paper. */
export const enterInvoice = projectUseCase("hire.enterInvoice", "hire.settle", enterInvoiceInput, async (scope, { lines, ...head }) => {
  const book = await readBook(scope);
  return refuse(book, head) ?? keep(scope, book, head, { lines: lines as readonly InvoiceLine[], fileName: null, file: null });
});

/** An invoice as the supplier's own table; kept whole with what was read from it, or refused with every row that could not be read. */
export const importInvoice = projectUseCase("hire.importInvoice", "hire.settle", importInvoiceInput, async (scope, { file, fileName, ...head }) => {
  const book = await readBook(scope);
  const refused = refuse(book, head);
  if (refused) return refused;
  const sheets = await readSheet(file, fileName);
  if (!sheets.ok) return sheets;
  const read = readInvoice({ rows: sheets.value[0]?.rows ?? [] }, {
    currency: book.project.currency, currencies: new Set(Intl.supportedValuesOf("currency")), dayOrder: book.project.units === "us" ? "month-day" : "day-month",
    itemNamed: namesOf(book, head.supplierId),
  });
  if (read.kind === "foreign-currency") return brokenRule("invoice-foreign-currency", { currency: read.currency, project: book.project.currency });
  if (read.kind === "no-headings") return invalid({ field: "file", message: "No row of headings was found. The table needs at least an item or description and an amount; docket, quantity, from, to, days and rate help." });
  if (read.problems.length > 0) return invalid(...read.problems.slice(0, 20).map(({ row, message }) => ({ field: `lines.${row}`, message })));
  if (read.lines.length === 0) return invalid({ field: "file", message: "There is no line under the headings." });
  return keep(scope, book, head, { lines: read.lines, fileName, file });
});

/** An item by what the supplier calls it in any version of the terms, or by our own name; the longest name that fits. */
function namesOf(book: HireBook, supplierId: string): (text: string) => string | null {
  const names = [
    ...termsOf(book, supplierId).flatMap(({ rates }) => rates.flatMap(({ itemId, supplierName }) => (supplierName === null ? [] : [[supplierName, itemId] as const]))),
    ...book.items.map(({ id, name }) => [name, id] as const),
  ].map(([name, id]) => [plain(name), id] as const).sort((a, b) => b[0].length - a[0].length);
  return (text) => names.find(([name]) => name !== "" && plain(text).includes(name))?.[1] ?? null;
}
const plain = (text: string): string => ` ${text.toLowerCase().replace(/[^a-z0-9]+/g, " ").trim()} `.replace(/^\s+$/, "");

export const getInvoiceFile = projectUseCase("hire.getInvoiceFile", "hire.read", invoiceInput, async (scope, { invoiceId }) => {
  const found = await findInvoiceFile(scope, invoiceId);
  return found ? ok({ fileName: found.fileName ?? "invoice", file: found.file ?? new Uint8Array() }) : notFound("invoice file");
});

export const reverseInvoice = projectUseCase("hire.reverseInvoice", "hire.settle", reverseInput, async (scope, { subjectId, reason }) => {
  const invoice = (await listInvoices(scope)).find(({ id }) => id === subjectId);
  if (!invoice) return notFound("invoice");
  if (invoice.reversal) return brokenRule("reversed-already", { number: invoice.number });
  await addReversal(scope, "invoice", invoice.id, scope.projectId, reason);
  return ok({ seq: await recordChange(scope, { kind: "set-up", detail: { hire: "invoice reversed", number: invoice.number, reason } }) });
});

/** Opens a query on a difference, or notes what came of it. The amount is the difference as it stands. */
export const saveQuery = projectUseCase("hire.saveQuery", "hire.settle", saveQueryInput, async (scope, { invoiceId, groupKey, reason, ownerId, dueOn, status, note }) => {
  const book = await readBook(scope);
  const invoice = (await listInvoices(scope)).find(({ id, reversal }) => id === invoiceId && reversal === null);
  const group = invoice && compare(book, invoice).groups.find(({ key }) => key === groupKey);
  const known = invoice?.queries.find((query) => query.groupKey === groupKey);
  if (!invoice || (!group && !known)) return notFound("difference");
  if (!(await listOwners(scope)).some(({ id }) => id === ownerId)) return notFound("person");
  await writeQuery(scope, { id: known?.id ?? newId(), invoiceId, groupKey, reason, ownerId, dueOn, status, note, amount: known?.amount ?? group?.difference ?? 0 });
  return ok({ seq: await recordChange(scope, { kind: "set-up", detail: { hire: "query", number: invoice.number, status } }) });
});
