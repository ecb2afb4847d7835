import Papa from "papaparse";
import type { Sheet } from "#lib/trade/schedule/table/sheet.ts";
import { FileRefusal, MAX_COLUMNS, MAX_FILLED_CELLS, MAX_ROWS, TOO_MANY_CELLS } from "./limits.ts";

const DELIMITERS = [",", ";", "\t"] as const;
const LINES_SNIFFED = 30;

/** CSV with comma, semicolon or tab, in UTF-8, UTF-16 with a byte order mark, or Windows-1252. */
export function readCsv(bytes: Uint8Array, sheetName: string): Sheet {
  const text = decode(bytes);
  if (text.includes("\u0000")) throw new FileRefusal("The file holds binary data, not text. Save it as .xlsx or .csv and upload that.");
  const delimiter = sniffDelimiter(text);
  refuseEndlessLine(text, delimiter);
  const parsed = Papa.parse<string[]>(text, { delimiter, preview: MAX_ROWS + 1 });
  const quotes = parsed.errors.find((error) => error.type === "Quotes");
  if (quotes) {
    throw new FileRefusal(`A quotation mark in row ${(quotes.row ?? 0) + 1} is opened and never closed. For "as above" write do, for inches write in, or save the file from a spreadsheet.`);
  }
  const rows = parsed.data;
  while (rows.length > 0 && (rows.at(-1) ?? []).every((cell) => cell.trim() === "")) rows.pop();
  if (rows.length > MAX_ROWS) throw new FileRefusal(`The file has more than ${MAX_ROWS} rows. Split it and upload the parts.`);
  const wide = rows.findIndex((row) => row.length > MAX_COLUMNS);
  if (wide >= 0) throw new FileRefusal(`Row ${wide + 1} has more than ${MAX_COLUMNS} columns.`);
  const cells = rows.map((row) => row.map((cell) => (cell.trim() === "" ? null : cell)));
  const filled = cells.reduce((sum, row) => sum + row.filter((cell) => cell !== null).length, 0);
  if (filled > MAX_FILLED_CELLS) throw new FileRefusal(TOO_MANY_CELLS);
  return { name: sheetName, rows: cells };
}

function decode(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** The delimiter that splits the first lines into most columns, counted outside quotation marks and weighed by how many lines agree. */
function sniffDelimiter(text: string): string {
  const lines = text.slice(0, 64 * 1024).split(/\r\n|\n|\r/).filter((line) => line.trim() !== "").slice(0, LINES_SNIFFED);
  const weigh = (delimiter: string) => {
    const counts = lines.map((line) => line.replace(/"[^"]*"/g, "").split(delimiter).length - 1);
    const most = Math.max(0, ...counts);
    return most === 0 ? 0 : counts.filter((count) => count === most).length * 2 + Math.min(most, 20);
  };
  return DELIMITERS.map((delimiter) => ({ delimiter, weight: weigh(delimiter) })).reduce((best, next) => (next.weight > best.weight ? next : best)).delimiter;
}

/** One line of millions of cells would fill the memory before any row could be counted. */
function refuseEndlessLine(text: string, delimiter: string): void {
  let count = 0;
  for (let index = 0; index < text.length; index += 1) {
    const character = text[index];
    if (character === "\n" || character === "\r") count = 0;
    else if (character === delimiter) count += 1;
    if (count > MAX_COLUMNS * 10) throw new FileRefusal(`A row has more than ${MAX_COLUMNS} columns.`);
  }
}
