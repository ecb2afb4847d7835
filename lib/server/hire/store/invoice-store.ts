import "server-only";
import { invoiceLines, type QueryState } from "#lib/contracts/hire/invoices.ts";
import type { DifferenceReason, InvoiceLine } from "#lib/trade/hire/match/invoice.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { listReversals, type Reversal } from "./supplier-store.ts";

export type Query = {
  readonly id: string; readonly groupKey: string; readonly reason: DifferenceReason; readonly amount: number; readonly ownerId: string; readonly owner: string;
  readonly dueOn: string; readonly status: QueryState; readonly note: string | null;
};
export type Invoice = {
  readonly id: string; readonly supplierId: string; readonly number: string; readonly issuedOn: string; readonly from: string; readonly to: string;
  readonly currency: string; readonly fileName: string | null; readonly recordedAt: string; readonly by: string;
  readonly lines: readonly InvoiceLine[]; readonly queries: readonly Query[]; readonly reversal: Reversal | null;
};
const day = (at: Date): string => at.toISOString().slice(0, 10);

/** Every invoice of the project, reversed ones too, the latest first. */
export async function listInvoices(scope: ProjectScope): Promise<Invoice[]> {
  const rows = await scope.tx.hireInvoice.findMany({
    where: { companyId: scope.companyId, projectId: scope.projectId }, omit: { file: true },
    include: { by: { select: { name: true } }, queries: { include: { owner: { select: { name: true } } }, orderBy: { id: "asc" } } },
    orderBy: [{ toOn: "desc" }, { id: "desc" }],
  });
  const reversals = await listReversals(scope, "invoice");
  return rows.map((row) => ({
    id: row.id, supplierId: row.supplierId, number: row.number, issuedOn: day(row.issuedOn), from: day(row.fromOn), to: day(row.toOn), currency: row.currency,
    fileName: row.fileName, recordedAt: row.recordedAt.toISOString(), by: row.by.name, reversal: reversals.get(row.id) ?? null,
    lines: invoiceLines.parse(row.lines) as readonly InvoiceLine[],
    queries: row.queries.map(({ id, groupKey, reason, amount, ownerId, owner, dueOn, status, note }) => ({
      id, groupKey, reason: reason as DifferenceReason, amount: Number(amount), ownerId, owner: owner.name, dueOn: day(dueOn), status: status as QueryState, note,
    })),
  }));
}

export type NewInvoice = {
  readonly id: string; readonly supplierId: string; readonly number: string; readonly issuedOn: string; readonly from: string; readonly to: string;
  readonly currency: string; readonly lines: readonly InvoiceLine[]; readonly fileName: string | null; readonly file: Uint8Array | null;
};
export async function addInvoice(scope: ProjectScope, { from, to, issuedOn, lines, file, ...invoice }: NewInvoice): Promise<void> {
  const { tx, companyId, projectId, member, now } = scope;
  const at = (on: string): Date => new Date(`${on}T00:00:00Z`);
  await tx.hireInvoice.create({
    data: {
      ...invoice, companyId, projectId, issuedOn: at(issuedOn), fromOn: at(from), toOn: at(to), lines: lines.map((line) => ({ ...line })),
      file: file === null ? null : Uint8Array.from(file), recordedBy: member.id, recordedAt: now,
    },
    select: { id: true },
  });
}

export const findInvoiceFile = (scope: ProjectScope, invoiceId: string) =>
  scope.tx.hireInvoice.findFirst({ where: { companyId: scope.companyId, projectId: scope.projectId, id: invoiceId, file: { not: null } }, select: { fileName: true, file: true } });

export type QueryRow = Omit<Query, "owner"> & { readonly invoiceId: string };
export async function writeQuery(scope: ProjectScope, { id, dueOn, ...query }: QueryRow): Promise<void> {
  const { tx, companyId, projectId, now } = scope;
  const { invoiceId, groupKey } = query;
  const data = { ...query, dueOn: new Date(`${dueOn}T00:00:00Z`), changedAt: now };
  await tx.hireQuery.upsert({
    where: { companyId_projectId_invoiceId_groupKey: { companyId, projectId, invoiceId, groupKey } },
    create: { ...data, id, companyId, projectId }, update: data, select: { id: true },
  });
}

export const listOwners = (scope: ProjectScope) =>
  scope.tx.person.findMany({ where: { companyId: scope.companyId, isActive: true }, select: { id: true, name: true, role: true }, orderBy: { name: "asc" } });
