import { FileRefusal, LAST_SHEET_ROW, MAX_COLUMNS, MAX_FILLED_CELLS, MAX_ROWS, TOO_MANY_CELLS } from "./limits.ts";

const DAMAGED = "A sheet of the workbook is damaged. Open it in a spreadsheet, save it again as .xlsx and upload that.";

/** A cell takes two or three tags, and formatted empty ones may outnumber the filled. */
const MAX_TAGS = 3_000_000;

/**
 * Looks through one sheet's XML before it is parsed: a formula, a declaration of entities, or a cell that would blow the
 * sheet up beyond its limits is refused here. A formula's stored result may be stale or forged, so it is never read.
 * Returns how many cells are filled.
 */
export function inspectSheetXml(xml: string): number {
  let cell: string | null = null;
  let [filled, tags] = [0, 0];
  for (const { name, attributes } of tagsOf(xml)) {
    tags += 1;
    if (tags > MAX_TAGS) throw new FileRefusal(TOO_MANY_CELLS);
    if (name === "row") refuseRowNumber(attributes);
    else if (name === "c") cell = cellReference(attributes);
    else if (name === "f") {
      throw new FileRefusal(`Cell ${cell ?? "A1"} holds a formula. Copy the sheet, paste it as values, save and upload that.`);
    } else if ((name === "v" || name === "is") && cell !== null) {
      refuseFarCell(cell);
      filled += 1;
      if (filled > MAX_FILLED_CELLS) throw new FileRefusal(TOO_MANY_CELLS);
    }
  }
  return filled;
}

export function refuseEntities(xml: string): void {
  if (/<!(?:DOCTYPE|ENTITY)/i.test(xml)) throw new FileRefusal(DAMAGED);
}

/** Opening tags without their prefix. `xm:f` belongs to formatting rules, not to cells. Quotes are followed so that `>` in a value ends nothing. */
function* tagsOf(xml: string): Generator<{ name: string; attributes: string }> {
  let at = xml.indexOf("<");
  while (at >= 0) {
    const closing = closingOf(xml, at);
    if (closing.tag) {
      const found = /^<([\w.-]+:)?([\w.-]+)/.exec(xml.slice(at, Math.min(closing.end, at + 80)));
      if (found?.[2] && found[1] !== "xm:") yield { name: found[2], attributes: xml.slice(at + found[0].length, closing.end) };
    }
    at = xml.indexOf("<", closing.end);
  }
}

function closingOf(xml: string, at: number): { end: number; tag: boolean } {
  const past = (text: string) => {
    const found = xml.indexOf(text, at);
    return found < 0 ? xml.length : found + text.length;
  };
  if (xml.startsWith("<!--", at)) return { end: past("-->"), tag: false };
  if (xml.startsWith("<![CDATA[", at)) return { end: past("]]>"), tag: false };
  if (xml[at + 1] === "/" || xml[at + 1] === "?") return { end: past(">"), tag: false };
  let quote = "";
  for (let index = at + 1; index < xml.length; index += 1) {
    const character = xml[index] ?? "";
    if (quote !== "") quote = character === quote ? "" : quote;
    else if (character === '"' || character === "'") quote = character;
    else if (character === ">") return { end: index, tag: true };
  }
  return { end: xml.length, tag: false };
}

const reference = (attributes: string): string | null => /(?:^|[\s:])r\s*=\s*["']([^"']*)["']/.exec(attributes)?.[1] ?? null;

function refuseRowNumber(attributes: string): void {
  const row = reference(attributes);
  if (row !== null && !(/^\d{1,7}$/.test(row) && Number(row) <= LAST_SHEET_ROW)) throw new FileRefusal(DAMAGED);
}

function cellReference(attributes: string): string {
  const cell = reference(attributes);
  if (cell === null || !/^[A-Z]{1,3}\d{1,7}$/.test(cell)) throw new FileRefusal(DAMAGED);
  return cell;
}

function refuseFarCell(cell: string): void {
  const letters = cell.replace(/\d+/, "");
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  if (Number(cell.slice(letters.length)) > MAX_ROWS) throw new FileRefusal(`The sheet has more than ${MAX_ROWS} rows (cell ${cell}). Split it and upload the parts.`);
  if (column > MAX_COLUMNS) throw new FileRefusal(`The sheet has more than ${MAX_COLUMNS} columns (cell ${cell}).`);
}
