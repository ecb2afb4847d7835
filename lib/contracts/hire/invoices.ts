import { z } from "zod";
import { CHARGE_KINDS } from "#lib/trade/hire/accrual/charge-line.ts";
import { DIFFERENCE_REASONS } from "#lib/trade/hire/match/invoice.ts";
import { day, id, line, optionalLine } from "../fields.ts";

const count = z.number().int().min(0).max(1_000_000).nullable();
/** A line as it stands on the supplier's paper; amounts in minor units, rates in hundredths of one. */
export const invoiceLine = z.object({
  row: z.number().int().min(1), kind: z.enum(CHARGE_KINDS), docket: optionalLine(60), itemId: id.nullable(), text: z.string().trim().max(200),
  quantity: count, from: day.nullable(), to: day.nullable(), days: count, rate: z.number().int().min(0).max(1_000_000_000).nullable(),
  amount: z.number({ message: "Give an amount." }).int("Give the amount in whole cents or pence.").min(-1_000_000_000_00).max(1_000_000_000_00),
});
export const invoiceLines = z.array(invoiceLine).min(1, "Enter at least one line.").max(2000, "Not more than 2,000 lines.");

const head = {
  projectId: id, supplierId: id, number: line(60), issuedOn: day, from: day, to: day,
  currency: z.string().trim().toUpperCase().regex(/^[A-Z]{3}$/, "Give a three-letter currency code of ISO 4217, as AUD."),
};
const inOrder = ({ from, to }: { from: string; to: string }): boolean => from <= to;
const ORDER = { message: "The period ends before it begins.", path: ["to"] };
export const enterInvoiceInput = z.object({ ...head, lines: invoiceLines }).refine(inOrder, ORDER);
export const importInvoiceInput = z.object({ ...head, fileName: z.string().trim().min(1).max(255), file: z.instanceof(Uint8Array) }).refine(inOrder, ORDER);
export const invoiceInput = z.object({ projectId: id, invoiceId: id });

export const QUERY_STATES = ["open", "sent", "credited", "accepted"] as const;
export type QueryState = (typeof QUERY_STATES)[number];
export const saveQueryInput = z.object({
  projectId: id, invoiceId: id, groupKey: z.string().min(1).max(200), reason: z.enum(DIFFERENCE_REASONS), ownerId: id, dueOn: day,
  status: z.enum(QUERY_STATES), note: optionalLine(500),
});
