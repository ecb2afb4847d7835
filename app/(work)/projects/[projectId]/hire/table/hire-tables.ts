import type { Caller } from "#lib/server/gate/caller.ts";
import { getDockets, getOnHire, getStatement, getTerms } from "#lib/server/hire/get-hire.ts";
import { getInvoice, getInvoices } from "#lib/server/hire/invoices.ts";
import { amountFigure, minorDigits, RATE_PARTS } from "#lib/kernel/money.ts";
import { ok, type Result } from "#lib/kernel/result.ts";
import type { SheetTable } from "#app/_ui/value/sheet-table.ts";
import { CHARGE_WORDS, workingText } from "../_parts/charge-words.ts";
import { DOCKET_WORDS, openText } from "../_parts/docket-words.ts";
import { guessText } from "../_parts/invoice-words.ts";
import type { HireTable } from "../_parts/table-links.tsx";

const money = (minor: number | null, currency: string): number | null => (minor === null ? null : Number(amountFigure(minor, currency)));
const rate = (value: number | null, currency: string): number | null => (value === null ? null : value / RATE_PARTS / 10 ** minorDigits(currency));

/** The rows of a page of hire as a table, with everything the page shows. */
export function readTable(caller: Caller | null, projectId: string, what: HireTable): Promise<Result<SheetTable>> {
  switch (what) {
    case "on-hire": return onHireTable(caller, projectId);
    case "charges": return chargesTable(caller, projectId);
    case "dockets": return docketsTable(caller, projectId);
    case "terms": return termsTable(caller, projectId);
    case "invoices": return invoicesTable(caller, projectId);
  }
}

async function onHireTable(caller: Caller | null, projectId: string): Promise<Result<SheetTable>> {
  const answer = await getOnHire(caller, { projectId });
  if (!answer.ok) return answer;
  const { project: { currency }, suppliers } = answer.value;
  const heads = ["Supplier", "Item", "Pieces", "Docket", "Delivered", "Charged since", "Days", `Cost to date (${currency})`, "Next charge on", `Next charge (${currency})`, "Last day charged"];
  const rows = suppliers.flatMap(({ name, rows: own }) => own.map((row) => [
    name, row.item, row.quantity, row.docket, row.deliveredOn, row.since, row.days, money(row.costToDate, currency), row.next?.on ?? null, money(row.next?.amount ?? null, currency), row.endsOn,
  ]));
  return ok({ name: "On hire", heads, rows });
}

async function chargesTable(caller: Caller | null, projectId: string): Promise<Result<SheetTable>> {
  const [standing, book] = [await getOnHire(caller, { projectId }), await getDockets(caller, { projectId })];
  if (!standing.ok) return standing;
  if (!book.ok) return book;
  const { project: { currency }, suppliers, today } = standing.value;
  const rows: (string | number | null)[][] = [];
  for (const { id, name, hasDockets } of suppliers) {
    const first = book.value.dockets.filter(({ supplierId, reversal }) => supplierId === id && reversal === null).at(-1)?.on;
    if (!hasDockets || first === undefined || first > today) continue;
    const statement = await getStatement(caller, { projectId, supplierId: id, from: first, to: today });
    if (!statement.ok) return statement;
    rows.push(...statement.value.lines.map((line) => [name, line.docket, CHARGE_WORDS[line.kind], line.item, line.quantity, line.from, line.to, line.working?.chargedDays ?? null, money(line.amount, currency), workingText(line, currency)]));
  }
  return ok({ name: "Charges", heads: ["Supplier", "Docket", "Charge", "Item", "Pieces", "From", "To", "Charged days", `Amount (${currency})`, "How it comes about"], rows });
}

async function docketsTable(caller: Caller | null, projectId: string): Promise<Result<SheetTable>> {
  const answer = await getDockets(caller, { projectId });
  if (!answer.ok) return answer;
  const { dockets, suppliers, project: { currency } } = answer.value;
  const numberOf = (id: string | null): string | null => dockets.find((docket) => docket.id === id)?.number ?? null;
  const heads = ["Docket", "Kind", "Day", "At (UTC)", "Supplier", "With", "Answers", "Item", "Pieces", "Short", "Damaged", "Dirty", `Credit (${currency})`, "Open", "Photos", "Entered by", "Reversed", "Note"];
  const rows = dockets.flatMap((docket) => (docket.lines.length === 0 ? [null] : docket.lines).map((line) => [
    docket.number, DOCKET_WORDS[docket.kind], docket.on, docket.happenedAt, suppliers.find(({ id }) => id === docket.supplierId)?.name ?? null, docket.name, numberOf(docket.answersId),
    line?.item ?? null, line?.quantity ?? null, line?.short ?? null, line?.damaged ?? null, line?.dirty ?? null, money(docket.amount, currency),
    docket.open.filter(({ itemId }) => itemId === null || itemId === line?.itemId).map(openText).join("; "), docket.photos.length, docket.by, docket.reversal?.reason ?? null, docket.note,
  ]));
  return ok({ name: "Dockets", heads, rows });
}

async function termsTable(caller: Caller | null, projectId: string): Promise<Result<SheetTable>> {
  const answer = await getTerms(caller, { projectId });
  if (!answer.ok) return answer;
  const { terms, suppliers } = answer.value;
  const heads = ["Supplier", "In force from", "Currency", "Item", "Supplier calls it", "Day", "Week", "Month", "Least days", "Loss", "Damage", "Cleaning", "Reversed"];
  const rows = terms.flatMap((version) => version.rates.map((line) => [
    suppliers.find(({ id }) => id === version.supplierId)?.name ?? null, version.validFrom, version.currency, line.item, line.supplierName,
    rate(line.perDay, version.currency), rate(line.perWeek, version.currency), rate(line.perMonth, version.currency), line.minimumDays,
    money(line.lossPrice, version.currency), money(line.damagePrice, version.currency), money(line.cleaningPrice, version.currency), version.reversal?.reason ?? null,
  ]));
  return ok({ name: "Rates", heads, rows });
}

async function invoicesTable(caller: Caller | null, projectId: string): Promise<Result<SheetTable>> {
  const answer = await getInvoices(caller, { projectId });
  if (!answer.ok) return answer;
  const { invoices, project: { currency } } = answer.value;
  const rows: (string | number | null)[][] = [];
  for (const { id, number, supplier, reversal } of invoices) {
    const page = await getInvoice(caller, { projectId, invoiceId: id });
    if (!page.ok) return page;
    rows.push(...page.value.groups.map((group) => {
      const query = page.value.invoice.queries.find(({ groupKey }) => groupKey === group.key);
      return [
        supplier, number, group.docket, group.item, money(group.theirAmount, currency), money(group.ourAmount, currency), money(group.difference, currency),
        group.guess === null ? "agrees" : guessText(group.guess, currency), query?.status ?? null, query?.owner ?? null, query?.dueOn ?? null, reversal?.reason ?? null,
      ];
    }));
  }
  const heads = ["Supplier", "Invoice", "Docket", "What", `Asked (${currency})`, `By our books (${currency})`, `Difference (${currency})`, "Probable reason", "Query", "Followed up by", "Due", "Reversed"];
  return ok({ name: "Invoices", heads, rows });
}
