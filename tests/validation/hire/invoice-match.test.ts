import { describe, expect, it } from "vitest";
import { toDay } from "#lib/kernel/days.ts";
import type { HireFacts } from "#lib/trade/hire/facts.ts";
import { compareInvoice, plainDocket, totalsOf } from "#lib/trade/hire/match/compare-invoice.ts";
import type { InvoiceLine } from "#lib/trade/hire/match/invoice.ts";
import { readInvoice } from "#lib/trade/hire/match/read-invoice.ts";
import { CLAMP, charged, delivered, returned, someTerms } from "./a-supplier.ts";

const line = (given: Partial<InvoiceLine>): InvoiceLine => ({
  row: 2, kind: "hire", docket: "D-7", itemId: "clamp", text: "Clamp", quantity: 120, from: toDay("2031-03-03"), to: toDay("2031-03-31"), days: 29, rate: 6000, amount: 0, ...given,
});

/** 120 clamps on docket D-7 from 3 March at 0.60 a day, 40 back on the 18th: 40 × 16 × 0.60 = 384.00 and 80 × 29 × 0.60 = 1,392.00. */
const march: Partial<HireFacts> = { delivered: [delivered("2031-03-03", 120, "D-7")], returned: [returned("2031-03-18", 40)] };
function against(invoice: readonly InvoiceLine[], given: Partial<HireFacts> = march, terms = someTerms(), month: readonly [string, string] = ["2031-03-01", "2031-03-31"]) {
  const { lines } = charged(terms, given, ...month);
  const earlier = charged(terms, given, "2031-01-01", new Date(Date.parse(month[0]) - 86_400_000).toISOString().slice(0, 10)).lines;
  return compareInvoice(invoice, { lines, earlier, periodTo: toDay(month[1]), docketNumber: (id) => id });
}
const short = line({ quantity: 40, to: toDay("2031-03-18"), days: 16, amount: 38_400 });
const long = line({ quantity: 80, amount: 139_200, row: 3 });
const found = (groups: ReturnType<typeof compareInvoice>) => groups.filter(({ guess }) => guess !== null).map(({ guess, difference }) => [guess?.reason, difference]);

// Planted mistakes whose amounts are worked by hand.
describe("an invoice beside our own charges", () => {
  it("agrees line by line, and as one line of the same amount", () => {
    expect(found(against([short, long]))).toEqual([]);
    expect(found(against([line({ quantity: null, days: null, from: null, to: null, rate: null, amount: 38_400 + 139_200 })]))).toEqual([]);
  });
  it("that forgets the return asks 40 × 13 days × 0.60 = 312.00 too much", () =>
    expect(found(against([line({ amount: 120 * 29 * 60 })]))).toEqual([["return-ignored", 31_200]]));
  it("that runs the 40 on to the end of the month in a line of their own asks the same", () =>
    expect(found(against([line({ quantity: 40, amount: 40 * 29 * 60 }), long]))).toEqual([["return-ignored", 31_200]]));
  it("with three days more for the 40 asks 40 × 3 × 0.60 = 72.00 too much", () =>
    expect(found(against([line({ quantity: 40, to: toDay("2031-03-21"), days: 19, amount: 40 * 19 * 60 }), long]))).toEqual([["extra-days", 7200]]));
  it("at 0.70 asks 80 × 29 × 0.10 = 232.00 too much", () =>
    expect(found(against([short, line({ quantity: 80, rate: 7000, amount: 80 * 29 * 70 })]))).toEqual([["wrong-rate", 23_200]]));
  it("with a line twice asks for it once too often", () => expect(found(against([short, { ...short, row: 9 }, long]))).toEqual([["charged-twice", 38_400]]));
  it("for 90 instead of 80 asks 10 × 29 × 0.60 = 174.00 too much", () =>
    expect(found(against([short, line({ quantity: 90, amount: 90 * 29 * 60 })]))).toEqual([["wrong-quantity", 17_400]]));
  it("for a docket of somebody else is not ours; what they forgot is named too", () => {
    const groups = against([short, long, line({ docket: "D-99", amount: 5000 })], { ...march, trips: [{ docketId: "D-7", kind: "delivery", on: toDay("2031-03-03") }] }, someTerms({ deliveryCharge: 18_000 }));
    expect(found(groups)).toEqual([["not-charged", -18_000], ["not-ours", 5000]]);
    expect(totalsOf(groups)).toEqual({ theirs: 182_600, ours: 195_600, over: 5000, under: 18_000 });
  });
  it("with the minimum of a hire that ended in February asks for it twice", () => {
    const terms = someTerms({ rates: [{ ...CLAMP, minimumDays: 28 }] });
    const given = { delivered: [delivered("2031-02-10", 10, "D-7")], returned: [returned("2031-02-19", 10)] };
    // Ten days of hire, then 18 days to the minimum: 10 × 18 × 0.60 = 108.00, charged in February.
    expect(found(against([line({ kind: "minimum", quantity: 10, from: null, to: null, days: 18, amount: 10_800 })], given, terms))).toEqual([["minimum-twice", 10_800]]);
  });
  it("a cent apart over two lines is rounding", () => expect(found(against([{ ...short, amount: 38_401 }, long]))).toEqual([]));
  it("knows a docket by its letters and figures", () => expect(["DN-0412", "dn 412", "DN 0412", "dn412"].map(plainDocket)).toEqual(Array.from({ length: 4 }, () => "DN412")));
});

describe("an invoice read from a table", () => {
  const by = {
    currency: "AUD", currencies: new Set(["AUD", "EUR", "USD"]), dayOrder: "day-month" as const,
    itemNamed: (text: string) => (/clamp/i.test(text) ? "clamp" : null),
  };
  const heads = ["Docket No.", "Description", "Qty", "On hire", "Off hire", "Days", "Rate", "Amount (AUD)"];

  it("takes its lines and passes over headings, totals and tax", () => {
    const rows = [["Invoice 88", null], heads, ["D-7", "Clamp 600", 40, "03/03/2031", "18 Mar 2031", 16, "0.60", "$384.00"], ["D-7", "Delivery", 1, null, null, null, null, 180], [null, "Total", null, null, null, null, null, "564.00"], ["", "GST", "", "", "", "", "", "56.40"]];
    expect(readInvoice({ rows }, by)).toEqual({
      kind: "read", problems: [],
      lines: [
        { row: 3, kind: "hire", docket: "D-7", itemId: "clamp", text: "Clamp 600", quantity: 40, from: "2031-03-03", to: "2031-03-18", days: 16, rate: 6000, amount: 38_400 },
        { row: 4, kind: "delivery", docket: "D-7", itemId: null, text: "Delivery", quantity: 1, from: null, to: null, days: null, rate: null, amount: 18_000 },
      ],
    });
  });
  it("reads credits in brackets and days in the order of the country", () => {
    const read = readInvoice({ rows: [heads, ["D-7", "Clamp", 1, "03/18/2031", "3/20/2031", 3, "", "(1,250.50)"]] }, { ...by, dayOrder: "month-day" });
    expect(read).toMatchObject({ lines: [{ from: "2031-03-18", to: "2031-03-20", amount: -125_050, rate: null }] });
  });
  it("names the row and the cell it cannot read", () => {
    const read = readInvoice({ rows: [heads, ["D-7", "Clamp", 1, "31/02/2031", "", 3, "", "12.00"], ["D-7", "Clamp", 1, "", "", "", "", "twelve"], ["D-7", "Clamp", 1.5, "", "", "", "", "12"]] }, by);
    expect(read).toMatchObject({ lines: [], problems: [{ row: 2 }, { row: 3 }, { row: 4 }] });
  });
  it("is refused in another currency, wherever it says so", () => {
    expect(readInvoice({ rows: [["Docket", "Item", "Amount (EUR)"], ["D-7", "Clamp", 12]] }, by)).toEqual({ kind: "foreign-currency", currency: "EUR" });
    expect(readInvoice({ rows: [["Docket", "Item", "Amount"], ["D-7", "Clamp", "USD 12.00"]] }, by)).toEqual({ kind: "foreign-currency", currency: "USD" });
  });
  it("is refused where no row of headings is found", () => expect(readInvoice({ rows: [["a", "b"], [1, 2]] }, by)).toEqual({ kind: "no-headings" }));
});
