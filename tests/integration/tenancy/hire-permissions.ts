import type { Role } from "#lib/access/roles.ts";
import { addPhoto } from "#lib/server/hire/photos.ts";
import { enterInvoice, getInvoice, importInvoice } from "#lib/server/hire/invoices.ts";
import { getTerms } from "#lib/server/hire/get-hire.ts";
import { aDelivery, aSupplier, paper, RULE, rateOf, type Hire } from "#tests/support/builders/a-hire.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import type { Row, Site } from "./permission-table.ts";

const all: readonly Role[] = ["owner", "leading hand", "office"];
const desk: readonly Role[] = ["owner", "office"];
type OfProject = (may: Row["may"], example?: (site: Site) => object) => Row;

/** The smallest PNG there is: one transparent pixel. */
export const A_PICTURE = Uint8Array.from(Buffer.from("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==", "base64"));

const hireOf = ({ company, project, word }: Site): Promise<Hire> => aSupplier(company.owner, project.projectId, `Supplier ${word}`);
async function delivered(site: Site): Promise<Hire & { docketId: string }> {
  const hire = await hireOf(site);
  return { ...hire, docketId: await aDelivery(site.company.owner, hire, "D1", "2026-11-02", 40) };
}
const head = ({ projectId, supplierId }: Hire) => ({ projectId, supplierId, number: "88", issuedOn: "2026-11-20", from: "2026-11-01", to: "2026-11-20", currency: "AUD" });
const line = (hire: Hire) => ({ row: 1, kind: "hire" as const, docket: "D1", itemId: hire.itemId, text: "Wedge", quantity: 40, from: null, to: null, days: 19, rate: 6000, amount: 47_000 });
const file = { fileName: "88.csv", file: Uint8Array.from(Buffer.from("Docket,Item,Qty,Amount\nD1,Wedge,40,470.00\n")) };
async function invoiced(site: Site) {
  const hire = await delivered(site);
  const by = site.company.owner;
  const { invoiceId } = valueOf(await enterInvoice(by, { ...head(hire), lines: [line(hire)] }));
  return { invoiceId, key: valueOf(await getInvoice(by, { projectId: hire.projectId, invoiceId })).groups[0]?.key ?? "" };
}
async function imported(site: Site): Promise<string> {
  const hire = await delivered(site);
  return valueOf(await importInvoice(site.company.owner, { ...head(hire), ...file })).invoiceId;
}
async function photographed(site: Site): Promise<string> {
  const { projectId, docketId } = await delivered(site);
  return valueOf(await addPhoto(site.company.owner, { projectId, docketId, takenAt: "2026-11-02T01:00:00Z", file: A_PICTURE })).photoId;
}
async function termsId(site: Site): Promise<string> {
  const { projectId, supplierId } = await hireOf(site);
  return valueOf(await getTerms(site.company.owner, { projectId })).terms.find((terms) => terms.supplierId === supplierId)?.id ?? "";
}

export const hirePermissions = (ofProject: OfProject): Readonly<Record<string, Row>> => ({
  "hire.getOnHire": ofProject(all),
  "hire.getDockets": ofProject(all),
  "hire.getDocket": ofProject(all, async (site) => ({ docketId: (await delivered(site)).docketId })),
  "hire.getTerms": ofProject(all),
  "hire.getStatement": ofProject(all, async (site) => ({ supplierId: (await hireOf(site)).supplierId, from: "2026-11-01", to: "2026-11-30" })),
  "hire.saveSupplier": ofProject(desk, ({ word }) => ({ name: word })),
  "hire.retireSupplier": ofProject(desk, async (site) => ({ supplierId: (await hireOf(site)).supplierId })),
  "hire.addTerms": ofProject(desk, async (site) => {
    const { supplierId, itemId } = await hireOf(site);
    return { supplierId, validFrom: "2026-06-01", currency: "AUD", rule: RULE, rates: [rateOf(itemId)] };
  }),
  "hire.reverseTerms": ofProject(desk, async (site) => ({ subjectId: await termsId(site), reason: "Wrong letter" })),
  "hire.countDocket": ofProject(all, async (site) => {
    const hire = await hireOf(site);
    return { ...paper(hire, "D1", "2026-11-02"), kind: "delivery", bySupplier: true, lines: [{ itemId: hire.itemId, quantity: 40 }] };
  }),
  "hire.recordDocket": ofProject(desk, async (site) => {
    const hire = await delivered(site);
    return { ...paper(hire, "OFF 1", "2026-11-12"), kind: "off-hire", lines: [{ itemId: hire.itemId, quantity: 10 }] };
  }),
  "hire.reverseDocket": ofProject(desk, async (site) => ({ subjectId: (await delivered(site)).docketId, reason: "Entered twice" })),
  "hire.addPhoto": ofProject(all, async (site) => ({ docketId: (await delivered(site)).docketId, takenAt: "2026-11-02T01:00:00Z", file: A_PICTURE })),
  "hire.getPhoto": ofProject(all, async (site) => ({ photoId: await photographed(site) })),
  "hire.getInvoices": ofProject(all),
  "hire.getInvoice": ofProject(all, async (site) => ({ invoiceId: (await invoiced(site)).invoiceId })),
  "hire.enterInvoice": ofProject(desk, async (site) => {
    const hire = await delivered(site);
    return { ...head(hire), lines: [line(hire)] };
  }),
  "hire.importInvoice": ofProject(desk, async (site) => ({ ...head(await delivered(site)), ...file })),
  "hire.getInvoiceFile": ofProject(all, async (site) => ({ invoiceId: await imported(site) })),
  "hire.reverseInvoice": ofProject(desk, async (site) => ({ subjectId: (await invoiced(site)).invoiceId, reason: "Entered twice" })),
  "hire.saveQuery": ofProject(desk, async (site) => {
    const { invoiceId, key } = await invoiced(site);
    return { invoiceId, groupKey: key, reason: "extra-days", ownerId: site.company.office.personId, dueOn: "2026-12-04", status: "open" };
  }),
});
