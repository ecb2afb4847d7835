const HEADINGS = ["Mark", "Grid", "Shape", "Width (mm)", "Depth (mm)", "From level", "To level", "From elevation (m)", "To elevation (m)", "Concrete", "Main bars", "Remarks"];

/** An invented two-storey boathouse: enough to show every column, easy to write over. */
const ROWS: readonly (readonly string[])[] = [
  ["P1", "A/1", "Rectangular", "350", "450", "Slipway", "Deck", "1.150", "4.450", "C30/37", "6T20", ""],
  ["P1", "A/1", "Rectangular", "350", "350", "Deck", "Eaves", "4.450", "7.300", "C30/37", "4T20", ""],
  ["P2", "B/1", "Round", "400", "", "Slipway", "Deck", "1.150", "4.450", "C30/37", "6T20", "Fair faced"],
  ["P3", "\"A/2, B/2\"", "Square", "300", "300", "Slipway", "Deck", "1.150", "4.450", "C30/37", "4T20", "Two places on one row"],
];

/** A schedule to fill in, as CSV (RFC 4180) with a byte order mark so that spreadsheets open it as UTF-8. */
export const scheduleTemplateCsv = (): string => `\uFEFF${[HEADINGS, ...ROWS].map((row) => row.join(",")).join("\r\n")}\r\n`;
