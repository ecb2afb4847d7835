import { strToU8, zipSync } from "fflate";
import writeWorkbook from "write-excel-file/node";
import type { Cell } from "#lib/trade/schedule/table/sheet.ts";

/** A workbook as a spreadsheet program would save it. */
export const aWorkbook = async (rows: readonly (readonly Cell[])[], sheet = "Columns"): Promise<Uint8Array> =>
  new Uint8Array(await writeWorkbook(rows.map((row) => row.map((value) => (value === null ? null : { value }))), { sheet }).toBuffer());

const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** The parts of a workbook whose one sheet holds the given XML rows; with them any part can be bent. */
export const partsOf = (sheetData: string): Record<string, Uint8Array> => ({
  "[Content_Types].xml": strToU8("<Types/>"),
  "xl/workbook.xml": strToU8(`<workbook xmlns:r="${RELATIONS}"><sheets><sheet name="Columns" sheetId="1" r:id="rId1"/></sheets></workbook>`),
  "xl/_rels/workbook.xml.rels": strToU8(`<Relationships><Relationship Id="rId1" Type="${RELATIONS}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`),
  "xl/worksheets/sheet1.xml": strToU8(`<worksheet><sheetData>${sheetData}</sheetData></worksheet>`),
});

export const zipped = (parts: Record<string, Uint8Array>): Uint8Array => zipSync(parts, { level: 9 });

/** Overwrites a field of every entry in a zip's central directory, so that the directory lies. */
export function withDirectoryField(zip: Uint8Array, offset: number, value: number, bytes: 2 | 4): Uint8Array {
  const copy = zip.slice();
  const view = new DataView(copy.buffer);
  for (let at = 0; at + 46 < copy.length; at += 1) {
    if (view.getUint32(at, true) !== 0x02014b50) continue;
    if (bytes === 2) view.setUint16(at + offset, value, true);
    else view.setUint32(at + offset, value, true);
  }
  return copy;
}
