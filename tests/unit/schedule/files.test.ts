import { strToU8 } from "fflate";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readSheet } from "#lib/server/columns/read-sheet.ts";
import { aWorkbook, partsOf, withDirectoryField, zipped } from "./workbook.ts";

const rowsOf = async (bytes: Uint8Array, name: string) => {
  const result = await readSheet(bytes, name);
  return result.ok ? result.value[0]?.rows : result.failure;
};
const refusal = async (bytes: Uint8Array, name: string): Promise<string> => {
  const result = await readSheet(bytes, name);
  if (result.ok || result.failure.kind !== "invalid") return "not refused";
  expect(result.failure.problems).toHaveLength(1);
  const message = result.failure.problems[0]?.message ?? "";
  expect(message).not.toContain("\n");
  return message;
};
const text = (content: string): Uint8Array => new TextEncoder().encode(content);
const utf16 = (content: string): Uint8Array => Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(content, "utf16le")]);

describe("a CSV file", () => {
  it.each<[string, Uint8Array]>([
    ["with commas", text('Mark,Size\nP1,"0,3 x 0,6"\n')],
    ["with semicolons and decimal commas", text("Mark;Size\nP1;0,3 x 0,6\n")],
    ["with tabs", text("Mark\tSize\r\nP1\t0,3 x 0,6\r\n")],
    ["with a byte order mark", text("\uFEFFMark;Size\r\nP1;0,3 x 0,6")],
    ["in UTF-16", utf16("Mark\tSize\nP1\t0,3 x 0,6\n")],
  ])("is read %s", async (_, bytes) => {
    expect(await rowsOf(bytes, "columns.csv")).toEqual([["Mark", "Size"], ["P1", "0,3 x 0,6"]]);
  });

  it("is read in Windows-1252 when it is not UTF-8", async () => {
    expect(await rowsOf(Uint8Array.from([...text("Mark,Size\nP1,"), 0xd8, ...text("500\nP2,300"), 0xd7, ...text("600\n")]), "c.csv")).toEqual([["Mark", "Size"], ["P1", "\u00d8500"], ["P2", "300\u00d7600"]]);
  });

  it("keeps ditto and inch marks that were saved properly", async () => {
    expect(await rowsOf(text('Mark,Size\nP1,"12""x24"""\nP2,""""\n'), "c.csv")).toEqual([["Mark", "Size"], ["P1", '12"x24"'], ["P2", '"']]);
  });

  it("takes its sheet's name from the file", async () => {
    const result = await readSheet(text("a,b\n1,2"), "C:\\jobs\\block 3.csv");
    expect(result.ok && result.value[0]?.name).toBe("block 3");
  });

  it.each<[string, Uint8Array, string, RegExp]>([
    ["an open quotation mark", text('Mark,Size\nP1,"\nP2,300x600\n'), "c.csv", /quotation mark in row 2/],
    ["too many rows", text("a,b\n".repeat(20_001)), "c.csv", /more than 20000 rows/],
    ["a million rows", text("a,b\n".repeat(1_000_000)), "c.csv", /more than 20000 rows/],
    ["too many columns", text(`${"a,".repeat(200)}a\n`), "c.csv", /more than 200 columns/],
    ["half a million cells", text(`${"a,".repeat(49)}a\n`.repeat(10_001)), "c.csv", /more than 500000 cells/],
    ["one endless line", text("a,".repeat(4_000_000)), "c.csv", /more than 200 columns/],
    ["binary data", Uint8Array.from([1, 0, 2, 0, 3]), "c.csv", /binary/],
    ["nothing", new Uint8Array(), "c.csv", /empty/],
    ["more than 10 MB", new Uint8Array(10 * 1024 * 1024 + 1), "c.csv", /larger than 10 MB/],
    ["50 MB", new Uint8Array(50 * 1024 * 1024), "c.xlsx", /larger than 10 MB/],
  ])("is refused with %s", async (_, bytes, name, message) => {
    expect(await refusal(bytes, name)).toMatch(message);
  });
});

describe("a file of another kind", () => {
  const ole = (...words: string[]) => Buffer.concat([Buffer.from("d0cf11e0a1b11ae1", "hex"), Buffer.alloc(600), ...words.map((word) => Buffer.from(word, "utf16le"))]);
  it.each<[string, Uint8Array, string, RegExp]>([
    ["an old .xls workbook", ole("Workbook"), "c.xls", /old \.xls/],
    ["a workbook locked with a password", ole("EncryptionInfo", "EncryptedPackage"), "c.xlsx", /password/],
    ["an .xlsb workbook", zipped({ "xl/workbook.bin": text("x") }), "c.xlsb", /\.xlsb/],
    ["an OpenDocument file", zipped({ mimetype: text("x"), "content.xml": text("<x/>") }), "c.ods", /OpenDocument/],
    ["a text document", zipped({ "word/document.xml": text("<x/>") }), "c.docx", /document/],
    ["a zip of workbooks", zipped({ "columns.xlsx": zipped(partsOf("")) }), "c.zip", /zip archive/],
    ["a PDF", text("%PDF-1.7 ..."), "c.csv", /PDF/],
    ["a picture", Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a]), "c.xlsx", /picture/],
    ["a web page", text("<html><table><tr><td>P1</td></tr></table></html>"), "c.xls", /web page/],
    ["text named .xlsx", text("Mark,Size\n"), "c.xlsx", /plain text/],
    ["half a workbook", zipped(partsOf("")).slice(0, 200), "c.xlsx", /damaged/],
  ])("is refused and named: %s", async (_, bytes, name, message) => {
    expect(await refusal(bytes, name)).toMatch(message);
  });
});

const cell = (reference: string, inner: string, type = ""): string => `<c r="${reference}"${type && ` t="${type}"`}>${inner}</c>`;
const row = (number: number | string, cells: string): string => `<row r="${number}">${cells}</row>`;
const sheet = (sheetData: string): Uint8Array => zipped(partsOf(sheetData));

describe("a workbook", () => {
  it("is read with its gaps, numbers and texts in place", async () => {
    const bytes = await aWorkbook([["Mark", null, "Size"], [null, null, null], ["P1", 4.2, "300x600"]]);
    expect(await rowsOf(bytes, "c.xlsx")).toEqual([["Mark", null, "Size"], [null, null, null], ["P1", 4.2, "300x600"]]);
  });

  it("may hold macros, which are not read", async () => {
    const parts = { ...partsOf(row(1, cell("A1", "<v>7</v>"))), "xl/vbaProject.bin": text("macro") };
    expect(await rowsOf(zipped(parts), "c.xlsm")).toEqual([[7]]);
  });

  it("may hold formulas in its formatting rules, and formatted empty cells far away", async () => {
    const parts = partsOf(row(1, cell("A1", "<v>7</v>")) + row(30_000, '<c r="ZZ30000" s="0"/>'));
    parts["xl/worksheets/sheet1.xml"] = strToU8(new TextDecoder().decode(parts["xl/worksheets/sheet1.xml"]).replace("</worksheet>", "<extLst><xm:f>A1</xm:f></extLst></worksheet>"));
    expect(await rowsOf(zipped({ ...parts, "xl/styles.xml": text("<styleSheet><cellXfs><xf/></cellXfs></styleSheet>") }), "c.xlsx")).toMatchObject([[7]]);
  });

  it.each<[string, string, RegExp]>([
    ["a formula", row(1, cell("A1", "<v>1</v>")) + row(7, cell("B7", "<f>A1*2</f><v>2</v>")), /^Cell B7 holds a formula/],
    ["a formula behind a prefix", row(1, '<x:c r="C1"><x:f>1+1</x:f><x:v>2</x:v></x:c>'), /^Cell C1 holds a formula/],
    ["a shared formula", row(2, cell("D2", '<f t="shared" si="0"/><v>2</v>')), /^Cell D2 holds a formula/],
    ["a row beyond the limit", row(20_001, cell("A20001", "<v>1</v>")), /more than 20000 rows/],
    ["the last row a sheet can have", row(1_048_576, cell("A1048576", "<v>1</v>")), /more than 20000 rows/],
    ["a row number no sheet can have", row(999_999_999, ""), /damaged/],
    ["a row number in disguise", row("&#57;99999999", ""), /damaged/],
    ["a row number behind a bracket in quotes", '<row a=">" r="999999999"></row>', /damaged/],
    ["a column beyond the limit", row(1, cell("GS1", "<v>1</v>")), /more than 200 columns/],
    ["a cell reference of nonsense", row(1, cell("AAAAAAAA1", "<v>1</v>")), /damaged/],
    ["cells out of order", row(1, cell("B1", "<v>1</v>") + cell("A1", "<v>1</v>")), /could not be read/],
    ["a shared text that is not there", row(1, cell("A1", "<v>5</v>", "s")), /could not be read/],
    ["entities", "<!DOCTYPE x [<!ENTITY a \"b\">]>", /damaged/],
    ["zero bytes", "\u0000", /encoding/],
  ])("is refused with %s", async (_, sheetData, message) => {
    expect(await refusal(sheet(sheetData), "c.xlsx")).toMatch(message);
  });

  it("is refused as a bomb before it is unpacked, and also when its directory lies about sizes", async () => {
    const bomb = zipped({ ...partsOf(""), "xl/worksheets/sheet2.xml": new Uint8Array(80 * 1024 * 1024).fill(32) });
    expect(bomb.length).toBeLessThan(200_000);
    expect(await refusal(bomb, "c.xlsx")).toMatch(/unpacks to far more/);
    expect(await refusal(withDirectoryField(bomb, 24, 10, 4), "c.xlsx")).toMatch(/unpacks to far more/);
    const smaller = zipped({ ...partsOf(""), "xl/worksheets/sheet2.xml": new Uint8Array(20 * 1024 * 1024).fill(32) });
    expect(await refusal(smaller, "c.xlsx")).toMatch(/unpacks to far more/);
    expect(await refusal(withDirectoryField(smaller, 24, 10, 4), "c.xlsx")).toMatch(/unpacks to far more/);
  });

  it("is refused with too many parts, a locked part, or an unknown packing", async () => {
    const many = Object.fromEntries(Array.from({ length: 1001 }, (_, index) => [`xl/media/${index}.png`, new Uint8Array(1)]));
    expect(await refusal(zipped({ ...partsOf(""), ...many }), "c.xlsx")).toMatch(/unpacks to far more/);
    expect(await refusal(withDirectoryField(sheet(""), 8, 1, 2), "c.xlsx")).toMatch(/password/);
    expect(await refusal(withDirectoryField(sheet(""), 10, 99, 2), "c.xlsx")).toMatch(/damaged/);
  });

  it("never makes the reader throw, wherever its bytes are bent", async () => {
    const good = await aWorkbook([["Mark", "Size"], ["P1", "300x600"]]);
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(fc.nat(good.length - 1), fc.nat(255)), { minLength: 1, maxLength: 6 }), async (bends) => {
        const bent = good.slice();
        for (const [at, value] of bends) bent[at] = value;
        await expect(readSheet(bent, "c.xlsx")).resolves.toHaveProperty("ok");
      }),
      { numRuns: 200 },
    );
    await fc.assert(fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => { await expect(readSheet(bytes, "c")).resolves.toHaveProperty("ok"); }));
  });
});
