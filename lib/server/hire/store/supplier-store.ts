import "server-only";
import { termsRule, type TermsVersion } from "#lib/contracts/hire/terms.ts";
import type { Day } from "#lib/kernel/days.ts";
import type { CompanyScope } from "../../gate/scope.ts";

export type Supplier = {
  readonly id: string; readonly name: string; readonly placeId: string; readonly contact: string | null; readonly phone: string | null;
  readonly email: string | null; readonly isRetired: boolean;
};

export const listSuppliers = async (scope: CompanyScope): Promise<Supplier[]> =>
  (await scope.tx.hireSupplier.findMany({ where: { companyId: scope.companyId }, orderBy: [{ retiredAt: { sort: "asc", nulls: "first" } }, { name: "asc" }] }))
    .map(({ id, name, placeId, contact, phone, email, retiredAt }) => ({ id, name, placeId, contact, phone, email, isRetired: retiredAt !== null }));

export const findSupplier = async (scope: CompanyScope, supplierId: string): Promise<Supplier | undefined> =>
  (await listSuppliers(scope)).find(({ id, isRetired }) => id === supplierId && !isRetired);

type Written = { readonly name: string; readonly contact: string | null; readonly phone: string | null; readonly email: string | null };

export async function addSupplier(scope: CompanyScope, id: string, placeId: string, supplier: Written): Promise<void> {
  await scope.tx.hireSupplier.create({ data: { ...supplier, id, placeId, companyId: scope.companyId }, select: { id: true } });
}

/** False when there is no such supplier to change. */
export const changeSupplier = async (scope: CompanyScope, id: string, data: Partial<Written> & { readonly retiredAt?: string }): Promise<boolean> =>
  (await scope.tx.hireSupplier.updateMany({ where: { companyId: scope.companyId, id, retiredAt: null }, data })).count === 1;

export type KnownTerms = TermsVersion & {
  readonly supplierId: string; readonly recordedAt: string; readonly by: string;
  readonly reversal: { readonly reason: string; readonly at: string; readonly by: string } | null;
};

const numberOrNull = (value: bigint | null): number | null => (value === null ? null : Number(value));

/** Every version of every supplier's terms, reversed ones too, the latest first. */
export async function listTerms(scope: CompanyScope): Promise<KnownTerms[]> {
  const { tx, companyId } = scope;
  const [rows, reversals] = [
    await tx.hireTerms.findMany({ where: { companyId }, include: { rates: true, by: { select: { name: true } } }, orderBy: [{ validFrom: "desc" }, { id: "desc" }] }),
    await listReversals(scope, "terms"),
  ];
  return rows.map(({ id, supplierId, validFrom, currency, rule, recordedAt, by, rates }) => ({
    ...termsRule.parse(rule),
    id, supplierId, currency, validFrom: validFrom.toISOString().slice(0, 10) as Day, recordedAt: recordedAt.toISOString(), by: by.name,
    reversal: reversals.get(id) ?? null,
    rates: rates.map((rate) => ({
      itemId: rate.itemId, supplierName: rate.supplierName, minimumDays: rate.minimumDays,
      perDay: numberOrNull(rate.perDay), perWeek: numberOrNull(rate.perWeek), perMonth: numberOrNull(rate.perMonth),
      lossPrice: numberOrNull(rate.lossPrice), damagePrice: numberOrNull(rate.damagePrice), cleaningPrice: numberOrNull(rate.cleaningPrice),
    })),
  }));
}

export type NewTerms = {
  readonly id: string; readonly supplierId: string; readonly validFrom: string; readonly currency: string; readonly rule: object;
  readonly rates: readonly (TermsVersion["rates"][number])[];
};
export async function addTermsRows(scope: CompanyScope, { rates, ...terms }: NewTerms): Promise<void> {
  const { tx, companyId, member, now } = scope;
  await tx.hireTerms.create({
    data: { ...terms, validFrom: new Date(`${terms.validFrom}T00:00:00Z`), companyId, recordedBy: member.id, recordedAt: now }, select: { id: true },
  });
  await tx.hireRate.createMany({ data: rates.map((rate) => ({ ...rate, companyId, termsId: terms.id })) });
}

export type Reversal = { readonly reason: string; readonly at: string; readonly by: string };
type Subject = "docket" | "terms" | "invoice";

export async function listReversals(scope: CompanyScope, subject: Subject): Promise<ReadonlyMap<string, Reversal>> {
  const rows = await scope.tx.hireReversal.findMany({ where: { companyId: scope.companyId, subject }, include: { by: { select: { name: true } } } });
  return new Map(rows.map(({ subjectId, reason, reversedAt, by }) => [subjectId, { reason, at: reversedAt.toISOString(), by: by.name }]));
}

export async function addReversal(scope: CompanyScope, subject: Subject, subjectId: string, projectId: string | null, reason: string): Promise<void> {
  const { tx, companyId, member, now } = scope;
  await tx.hireReversal.create({ data: { companyId, subject, subjectId, projectId, reason, reversedBy: member.id, reversedAt: now }, select: { subjectId: true } });
}
