import type { Finding } from "#lib/trade/schedule/table/raw-lift.ts";

const HEADINGS = ["Kind", "Sheet", "Row", "Cell", "What", "What to do"];

/** Text that a spreadsheet would run as a formula is made plain text by an apostrophe before it. */
const plain = (text: string): string => (/^[\s]*[=+\-@]|^[\t\r]/.test(text) ? `'${text}` : text);
const quoted = (text: string): string => `"${plain(text).replace(/"/g, '""')}"`;

/** Everything that was found, to be worked through beside the schedule: CSV (RFC 4180) with a byte order mark. */
export function problemsCsv(refused: readonly Finding[], warnings: readonly Finding[]): string {
  const row = (kind: string) => ({ source, message, remedy }: Finding): string[] =>
    [kind, source?.sheet ?? "", source === null ? "" : String(source.row), source?.cell ?? "", message, remedy];
  const rows = [HEADINGS, ...refused.map(row("refused")), ...warnings.map(row("warning"))];
  return `\uFEFF${rows.map((cells) => cells.map(quoted).join(",")).join("\r\n")}\r\n`;
}
