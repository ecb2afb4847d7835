import { zipSync } from "fflate";
import readWorkbook from "read-excel-file/universal";
import type { Cell, Sheet } from "#lib/trade/schedule/table/sheet.ts";
import { inspectSheetXml, refuseEntities } from "./inspect-sheet-xml.ts";
import { FileRefusal, MAX_FILLED_CELLS, MAX_SHEETS, TOO_MANY_CELLS } from "./limits.ts";
import { listZip, unpackZip } from "./open-zip.ts";

/** Parts that hold no cells and may be large. */
const UNWANTED = /^xl\/(?:media|drawings|charts|chartsheets|embeddings|pivotCache|pivotTables|theme|printerSettings|customXml|activeX|ctrlProps|comments|threadedComments|persons|externalLinks|queryTables|slicers|tables)\b/;

/** Opens a workbook only after its zip directory and every sheet's XML have been looked through. Macros are left unread. */
export async function readXlsx(bytes: Uint8Array): Promise<Sheet[]> {
  const entries = listZip(bytes);
  refuseOtherZips(entries.map((entry) => entry.name));
  const wanted = entries.filter(({ name }) => name.startsWith("xl/") && /\.(?:xml|rels)$/.test(name) && !UNWANTED.test(name));
  const parts = await unpackZip(bytes, wanted);
  let filled = 0;
  for (const part of parts.values()) filled += inspectPart(part);
  if (filled > MAX_FILLED_CELLS) throw new FileRefusal(TOO_MANY_CELLS);
  return sheetsOf(await parse(parts));
}

function refuseOtherZips(names: readonly string[]): void {
  const has = (pattern: RegExp) => names.some((name) => pattern.test(name));
  if (has(/^xl\/workbook\.xml$/)) return;
  if (has(/^xl\/workbook\.bin$/)) throw new FileRefusal("This is an .xlsb workbook. Save it as .xlsx or .csv and upload that.");
  if (has(/^content\.xml$/)) throw new FileRefusal("This is an OpenDocument file. Save it as .xlsx or .csv and upload that.");
  if (has(/^(?:word|ppt)\//)) throw new FileRefusal("This is a document or a presentation, not a spreadsheet. Copy the schedule into a spreadsheet and upload that.");
  throw new FileRefusal("This is a zip archive, not a workbook. Unpack it and upload the .xlsx or .csv itself.");
}

function inspectPart(part: Uint8Array): number {
  const xml = new TextDecoder().decode(part);
  if (xml.includes("\u0000")) throw new FileRefusal("The workbook is written in an encoding that is not read here. Save it again as .xlsx and upload that.");
  refuseEntities(xml);
  return xml.includes("sheetData") ? inspectSheetXml(xml) : 0;
}

/** The reader is given a plain copy of the inspected parts, so that nothing is expanded a second time or differently. */
async function parse(parts: ReadonlyMap<string, Uint8Array>): Promise<Awaited<ReturnType<typeof readWorkbook>>> {
  const plain = zipSync(Object.fromEntries(parts), { level: 0 });
  try {
    return await readWorkbook(plain.slice().buffer, { trim: false });
  } catch {
    throw new FileRefusal("The workbook could not be read. Open it in a spreadsheet, save it again as .xlsx and upload that.");
  }
}

function sheetsOf(workbook: Awaited<ReturnType<typeof readWorkbook>>): Sheet[] {
  if (workbook.length > MAX_SHEETS) throw new FileRefusal(`The workbook has more than ${MAX_SHEETS} sheets.`);
  return workbook.map(({ sheet, data }) => ({ name: sheet.slice(0, 100), rows: data.map((row) => row.map(toCell)) }));
}

/** The reader gives dates as Date objects, though its types say otherwise. */
function toCell(value: unknown): Cell {
  if (typeof value === "string") return value.trim() === "" ? null : value;
  if (typeof value === "number") return value;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value instanceof Date && !Number.isNaN(value.getTime()) ? value.toISOString().slice(0, 10) : null;
}
