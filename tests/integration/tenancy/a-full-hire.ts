import { enterInvoice, getInvoice, saveQuery } from "#lib/server/hire/invoices.ts";
import { addPhoto } from "#lib/server/hire/photos.ts";
import { reverseDocket } from "#lib/server/hire/reverse-docket.ts";
import type { Company } from "#tests/support/builders/a-company.ts";
import { aDelivery, aSupplier } from "#tests/support/builders/a-hire.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { A_PICTURE } from "./hire-permissions.ts";

/** At least one row in every table of hire. */
export async function aFullHire({ owner }: Company, projectId: string): Promise<void> {
  const hire = await aSupplier(owner, projectId, "Weir Gear");
  const docketId = await aDelivery(owner, hire, "D1", "2026-11-02", 40);
  valueOf(await addPhoto(owner, { projectId, docketId, takenAt: "2026-11-02T01:00:00Z", file: A_PICTURE }));
  valueOf(await reverseDocket(owner, { projectId, subjectId: await aDelivery(owner, hire, "D2", "2026-11-03", 1), reason: "Entered twice" }));
  const line = { row: 1, kind: "hire" as const, docket: "D9", itemId: hire.itemId, text: "Wedge", quantity: 1, from: null, to: null, days: 1, rate: 6000, amount: 600 };
  const head = { projectId, supplierId: hire.supplierId, number: "88", issuedOn: "2026-11-20", from: "2026-11-01", to: "2026-11-20", currency: "AUD" };
  const { invoiceId } = valueOf(await enterInvoice(owner, { ...head, lines: [line] }));
  const groupKey = valueOf(await getInvoice(owner, { projectId, invoiceId })).groups[0]?.key ?? "";
  valueOf(await saveQuery(owner, { projectId, invoiceId, groupKey, reason: "not-ours", ownerId: owner.personId, dueOn: "2026-12-04", status: "open" }));
}
