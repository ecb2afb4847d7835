import { readAmount, readRate } from "#lib/kernel/money.ts";
import type { InvoiceLine } from "./invoice.ts";
import { kindIn, readHeading, type InvoiceField } from "./invoice-headings.ts";
import { currenciesIn, plainFigure, readDay, type DayOrder } from "./read-figures.ts";

type Cell = string | number | null;
export type InvoiceSheet = { readonly rows: readonly (readonly Cell[])[] };
export type ReadBy = {
  readonly currency: string;
  readonly currencies: ReadonlySet<string>;
  readonly dayOrder: DayOrder;
  /** The item a supplier means by a name or number of theirs; null when it is none of ours. */
  readonly itemNamed: (text: string) => string | null;
};
export type RowProblem = { readonly row: number; readonly message: string };
export type ReadInvoice =
  | { readonly kind: "read"; readonly lines: readonly InvoiceLine[]; readonly problems: readonly RowProblem[] }
  | { readonly kind: "no-headings" }
  | { readonly kind: "foreign-currency"; readonly currency: string };

type Column = { readonly index: number; readonly field: InvoiceField };
const ROWS_SEARCHED_FOR_HEADINGS = 40;
const textOf = (cell: Cell | undefined): string => (cell === null || cell === undefined ? "" : typeof cell === "number" ? String(Number(cell.toPrecision(12))) : cell.trim());

/** Reads a supplier's invoice from a table with one row of headings; totals and empty rows are passed over. */
export function readInvoice({ rows }: InvoiceSheet, by: ReadBy): ReadInvoice {
  const foreign = rows.flatMap((row) => row.flatMap((cell) => (typeof cell === "string" ? currenciesIn(cell, by.currencies) : []))).find((code) => code !== by.currency);
  if (foreign !== undefined) return { kind: "foreign-currency", currency: foreign };
  const heading = rows.slice(0, ROWS_SEARCHED_FOR_HEADINGS).findIndex((row) => has(columnsOf(row), "amount") && has(columnsOf(row), "item"));
  if (heading < 0) return { kind: "no-headings" };
  const columns = columnsOf(rows[heading] ?? []);
  const lines: InvoiceLine[] = [];
  const problems: RowProblem[] = [];
  for (const [index, row] of rows.entries()) {
    if (index <= heading || row.every((cell) => textOf(cell) === "")) continue;
    const at = (field: InvoiceField): string => textOf(row[columns.find((column) => column.field === field)?.index ?? -1]);
    if (isTotal(at, row)) continue;
    const line = readLine(at, index + 1, by);
    if ("message" in line) problems.push(line);
    else lines.push(line);
  }
  return { kind: "read", lines, problems };
}

const columnsOf = (row: readonly Cell[]): Column[] =>
  row.flatMap((cell, index) => {
    const field = typeof cell === "string" ? readHeading(cell) : null;
    return field === null ? [] : [{ index, field }];
  }).filter((column, place, all) => all.findIndex(({ field }) => field === column.field) === place);
const has = (columns: readonly Column[], field: InvoiceField): boolean => columns.some((column) => column.field === field);

const TOTAL = /^(?:sub ?-?total|total|gst|vat|tax|balance|amount due)\b/i;
/** Such a word may stand in any column, the first being that of the dockets as often as not. */
const isTotal = (at: (field: InvoiceField) => string, row: readonly Cell[]): boolean =>
  at("quantity") === "" && (at("docket") === "" || TOTAL.test(at("docket"))) && row.some((cell) => typeof cell === "string" && TOTAL.test(cell.trim()));

function readLine(at: (field: InvoiceField) => string, row: number, by: ReadBy): InvoiceLine | RowProblem {
  const figure = (field: InvoiceField): string => plainFigure(at(field));
  const amount = readAmount(figure("amount"), by.currency);
  if (amount === null) return { row, message: `Row ${row}: “${at("amount")}” is no amount in ${by.currency}.` };
  const whole = (field: InvoiceField): number | null => (/^\d{1,7}(?:\.0+)?$/.test(figure(field)) ? Number(figure(field)) : null);
  const wrong = (["from", "to"] as const).find((field) => at(field) !== "" && readDay(at(field), by.dayOrder) === null);
  if (wrong) return { row, message: `Row ${row}: “${at(wrong)}” is no day.` };
  if (at("quantity") !== "" && whole("quantity") === null) return { row, message: `Row ${row}: “${at("quantity")}” is no whole number of pieces.` };
  return {
    row, amount, kind: kindIn(at("kind") === "" ? at("item") : at("kind")), docket: at("docket") || null, itemId: by.itemNamed(at("item")), text: at("item"),
    quantity: whole("quantity"), days: whole("days"), from: readDay(at("from"), by.dayOrder), to: readDay(at("to"), by.dayOrder),
    rate: at("rate") === "" ? null : readRate(figure("rate"), by.currency),
  };
}
