const HEADINGS = ["Mark", "Grid", "Size (mm)", "From level", "To level"];

/** A column schedule as a list; more headings may be given with the rows that use them. */
export const aCsv = (rows: readonly (readonly (string | number)[])[], moreHeadings: readonly string[] = []): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(Buffer.from([[...HEADINGS, ...moreHeadings], ...rows].map((cells) => cells.join(",")).join("\r\n")));

export const ELEVATIONS = ["From elevation (mm)", "To elevation (mm)"] as const;
