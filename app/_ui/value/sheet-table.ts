/** A table to be saved as a spreadsheet: one row of headings, then values. */
export type SheetTable = { readonly name: string; readonly heads: readonly string[]; readonly rows: readonly (readonly (string | number | null)[])[] };

/** Text that a spreadsheet would take for a formula is kept from being one: OWASP, CSV Injection. */
export const safeText = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);

const csvCell = (cell: string | number | null): string => {
  if (cell === null) return "";
  if (typeof cell === "number") return String(cell);
  const text = safeText(cell);
  return /[",\r\n;]/.test(text) ? `"${text.replaceAll("\"", "\"\"")}"` : text;
};

/** CSV of RFC 4180 in UTF-8, with the mark that spreadsheets know the encoding by. */
export const csvOf = ({ heads, rows }: SheetTable): string =>
  `\ufeff${[heads, ...rows].map((row) => row.map(csvCell).join(",")).join("\r\n")}\r\n`;
