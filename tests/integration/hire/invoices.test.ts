import writeWorkbook, { type SheetData } from "write-excel-file/node";
import { beforeAll, describe, expect, it } from "vitest";
import { getInvoice, getInvoiceFile, getInvoices, importInvoice, reverseInvoice, saveQuery } from "#lib/server/hire/invoices.ts";
import { aCompany, type Company } from "#tests/support/builders/a-company.ts";
import { aProject } from "#tests/support/builders/a-project.ts";
import { aDelivery, aReturn, aSupplier, type Hire } from "#tests/support/builders/a-hire.ts";
import { refusal, valueOf } from "#tests/support/builders/value-of.ts";
import { ownDatabase } from "#tests/support/own-database.ts";

ownDatabase();
let company: Company;
let hire: Hire;
/** 120 wedges from 2 November, 40 back on the 15th, at 0.60 a day; two trips at 180.00. */
beforeAll(async () => {
  company = await aCompany("Teasel Boxing");
  const { projectId } = await aProject(company.office, { name: "Weir Lane" });
  hire = await aSupplier(company.office, projectId, "Withy Hire");
  await aDelivery(company.office, hire, "WH-100", "2026-11-02", 120);
  await aReturn(company.office, hire, "WH-R7", "2026-11-15", 40);
});

const HEADS = "Docket,Charge,Description,Qty,From,To,Days,Rate,Amount";
const csv = (...rows: string[]): Uint8Array<ArrayBuffer> => Uint8Array.from(Buffer.from([HEADS, ...rows].join("\r\n")));
const workbook = async (rows: SheetData): Promise<Uint8Array<ArrayBuffer>> => Uint8Array.from(await writeWorkbook(rows, { sheet: "Invoice" }).toBuffer());
const head = (number: string, currency = "AUD") => ({ projectId: hire.projectId, supplierId: hire.supplierId, number, issuedOn: "2026-11-21", from: "2026-11-01", to: "2026-11-20", currency });
const read = async (number: string, file: Uint8Array<ArrayBuffer>) => {
  const { invoiceId } = valueOf(await importInvoice(company.office, { ...head(number), fileName: "invoice.csv", file }));
  return { invoiceId, page: valueOf(await getInvoice(company.leadingHand, { projectId: hire.projectId, invoiceId })) };
};
const TRIPS = ["WH-100,Delivery,Delivery,1,2/11/2026,2/11/2026,1,180.00,180.00", "WH-R7,Collection,Collection,1,15/11/2026,15/11/2026,1,180.00,180.00"];

describe("a supplier's invoice", () => {
  it("that is right agrees: 40 × 14 and 80 × 19 days at 0.60", async () => {
    const { page } = await read("1", csv("wh 100,Hire,Wedge steel,40,2/11/2026,15/11/2026,14,0.60,336.00", "WH-100,Hire,Wedge steel,80,2/11/2026,20/11/2026,19,0.60,912.00", ...TRIPS));
    expect(page.totals).toEqual({ theirs: 160_800, ours: 160_800, over: 0, under: 0 });
  });

  it("with two mistakes shows both, each with its amount", async () => {
    // The return left out: 40 × 5 days × 0.60 = 120.00. The collection charged at 210.00 instead of 180.00.
    const { invoiceId, page } = await read("2", csv("WH-100,Hire,Wedge steel,120,2/11/2026,20/11/2026,19,0.60,1368.00", TRIPS[0] ?? "", "WH-R7,Collection,Collection,1,15/11/2026,15/11/2026,1,210.00,210.00"));
    const differing = page.groups.filter(({ guess }) => guess !== null);
    expect(differing.map(({ docket, difference, guess }) => [docket, difference, guess?.reason])).toEqual([["WH-100", 12_000, "return-ignored"], ["WH-R7", 3000, "wrong-rate"]]);
    const groupKey = differing[0]?.key ?? "";
    const query = { projectId: hire.projectId, invoiceId, groupKey, reason: "return-ignored" as const, ownerId: company.office.personId, dueOn: "2026-12-01", status: "open" as const };
    valueOf(await saveQuery(company.office, query));
    valueOf(await saveQuery(company.office, { ...query, status: "credited", note: "Credit 88" }));
    const after = valueOf(await getInvoice(company.owner, { projectId: hire.projectId, invoiceId }));
    expect(after.invoice.queries).toMatchObject([{ amount: 12_000, status: "credited", note: "Credit 88" }]);
    expect(refusal(await saveQuery(company.office, { ...query, groupKey: "hire|NOWHERE|" }))).toBe("not-found");
  });

  it("is kept as it came, and entered once unless it is reversed", async () => {
    const file = csv("WH-100,Hire,Wedge steel,80,2/11/2026,20/11/2026,19,0.60,912.00");
    const { invoiceId } = await read("3", file);
    expect([...valueOf(await getInvoiceFile(company.office, { projectId: hire.projectId, invoiceId })).file]).toEqual([...file]);
    expect(refusal(await importInvoice(company.office, { ...head("3"), fileName: "again.csv", file }))).toBe("invoice-known");
    valueOf(await reverseInvoice(company.office, { projectId: hire.projectId, subjectId: invoiceId, reason: "Wrong supplier" }));
    await read("3", file);
    const { invoices } = valueOf(await getInvoices(company.owner, { projectId: hire.projectId }));
    expect(invoices.filter(({ number }) => number === "3").map(({ reversal }) => reversal?.reason ?? null).sort()).toEqual(["Wrong supplier", null].sort());
  });

  // The same invoice as a workbook: dates as dates, amounts as numbers, a total below. 336.00 + 912.00 + 2 × 180.00 = 1,608.00.
  it("is read from a workbook as from a table of text, its total passed over", async () => {
    const on = (day: number) => ({ value: new Date(Date.UTC(2026, 10, day)), type: Date, format: "dd/mm/yyyy" });
    const file = await workbook([
      HEADS.split(",").map((value) => ({ value })),
      [{ value: "WH-100" }, { value: "Hire" }, { value: "Wedge steel" }, { value: 40 }, on(2), on(15), { value: 14 }, { value: 0.6 }, { value: 336 }],
      [{ value: "WH-100" }, { value: "Hire" }, { value: "Wedge steel" }, { value: 80 }, on(2), on(20), { value: 19 }, { value: 0.6 }, { value: 912 }],
      [{ value: "WH-100" }, { value: "Delivery" }, { value: "Delivery" }, { value: 1 }, on(2), on(2), { value: 1 }, { value: 180 }, { value: 180 }],
      [{ value: "WH-R7" }, { value: "Collection" }, { value: "Collection" }, { value: 1 }, on(15), on(15), { value: 1 }, { value: 180 }, { value: 180 }],
      [{ value: "Total" }, ...Array.from({ length: 7 }, () => null), { value: 1608 }],
    ]);
    const { invoiceId } = valueOf(await importInvoice(company.office, { ...head("6"), fileName: "withy.xlsx", file }));
    const { invoice, totals } = valueOf(await getInvoice(company.office, { projectId: hire.projectId, invoiceId }));
    expect(totals).toEqual({ theirs: 160_800, ours: 160_800, over: 0, under: 0 });
    expect(invoice.lines).toHaveLength(4);
    expect(invoice.lines[0]).toMatchObject({ docket: "WH-100", quantity: 40, from: "2026-11-02", to: "2026-11-15", days: 14, amount: 33_600 });
    expect([...valueOf(await getInvoiceFile(company.office, { projectId: hire.projectId, invoiceId })).file]).toEqual([...file]);
  });

  it("in another currency is refused, whether its head or its table says so", async () => {
    const file = csv("WH-100,Hire,Wedge steel,80,2/11/2026,20/11/2026,19,0.60,912.00");
    expect(refusal(await importInvoice(company.office, { ...head("4", "NZD"), fileName: "i.csv", file }))).toBe("invoice-foreign-currency");
    expect(refusal(await importInvoice(company.office, { ...head("4"), fileName: "i.csv", file: csv("WH-100,Hire,Wedge steel,80,2/11/2026,20/11/2026,19,0.60,EUR 912.00") }))).toBe("invoice-foreign-currency");
  });

  it("with rows that cannot be read is refused, naming them", async () => {
    const answer = await importInvoice(company.office, { ...head("5"), fileName: "i.csv", file: csv("WH-100,Hire,Wedge,80,99/11/2026,,19,0.60,912.00", "WH-100,Hire,Wedge,80,,,19,0.60,much") });
    expect(answer).toMatchObject({ ok: false, failure: { kind: "invalid", problems: [{ field: "lines.2" }, { field: "lines.3" }] } });
  });
});
