import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { amountFigure, minorDigits, rateFigure, readAmount, readRate } from "#lib/kernel/money.ts";
import { fraction, plus, roundHalfUp, times } from "#lib/kernel/fraction.ts";
import { csvOf, safeText } from "#app/_ui/value/sheet-table.ts";

// Read back by a general-purpose CSV reader.
describe("a table saved as CSV", () => {
  const rows = [["=1+1", 12.5, null], ["+61 555", -3, "a \"b\", c"], ["@sum(A1)", 0, "two\nlines"], ["-2", 1, "plain"]];
  const text = csvOf({ name: "t", heads: ["One", "Two", "Three"], rows });
  it("comes back cell by cell, with no text left that a spreadsheet would take for a formula", () => {
    const back = Papa.parse<string[]>(text.replace(/^\ufeff/, ""), { skipEmptyLines: true }).data;
    expect(back).toEqual([["One", "Two", "Three"], ["'=1+1", "12.5", ""], ["'+61 555", "-3", "a \"b\", c"], ["'@sum(A1)", "0", "two\nlines"], ["'-2", "1", "plain"]]);
  });
  // OWASP, "CSV Injection": cells beginning with = + - @, tab or carriage return.
  it.each(["=", "+", "-", "@", "\t", "\r"])("guards against %j", (sign) => expect(safeText(`${sign}x`).startsWith("'")).toBe(true));
});

// ISO 4217, minor units: AUD 2, JPY 0, KWD 3.
describe("money", () => {
  it("has the places of its currency", () => expect(["AUD", "JPY", "KWD"].map(minorDigits)).toEqual([2, 0, 3]));
  it("is read and written without loss, and refused where it is finer than it can be", () => {
    expect([readAmount("1,234.50", "AUD"), readAmount("-0.05", "AUD"), readAmount("12.345", "AUD"), readAmount("twelve", "AUD"), readAmount("1250", "JPY"), readAmount("1.5", "JPY")]).toEqual([123_450, -5, null, null, 1250, null]);
    expect([amountFigure(123_450, "AUD"), amountFigure(-5, "AUD"), amountFigure(1250, "JPY"), amountFigure(1, "KWD")]).toEqual(["1234.50", "-0.05", "1250", "0.001"]);
    expect([readRate("0.085", "AUD"), rateFigure(850, "AUD"), rateFigure(6000, "AUD"), rateFigure(855, "AUD"), readRate("0.08555", "AUD"), rateFigure(200, "JPY")]).toEqual([850, "0.085", "0.60", "0.0855", null, "2"]);
  });
});

describe("exact fractions", () => {
  it("add and multiply without a remainder: 1/7 + 2/7 + 4/7 = 1, 3/4 × 2/3 = 1/2", () => {
    expect([[1, 7], [2, 7], [4, 7]].map(([n = 0, d = 1]) => fraction(n, d)).reduce(plus)).toEqual({ n: 1n, d: 1n });
    expect(times(fraction(3, 4), fraction(2, 3))).toEqual({ n: 1n, d: 2n });
  });
  it("round halves away from zero", () => expect([[1, 2], [-1, 2], [3, 2], [49, 100], [-149, 100]].map(([n = 0, d = 1]) => roundHalfUp(fraction(n, d)))).toEqual([1, -1, 2, 0, -1]));
});
