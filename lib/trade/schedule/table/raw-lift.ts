import type { Field } from "./headings.ts";
import type { LengthUnit } from "./read-length.ts";
import type { Source } from "./sheet.ts";

/** Something to tell the reader of a file: where, what is there, and what to do about it. */
export type Finding = { readonly source: Source | null; readonly message: string; readonly remedy: string };
export type Findings = { readonly problems: Finding[]; readonly warnings: Finding[] };

export type RawCell = { readonly text: string; readonly source: Source };
/** One lift as its layout gives it: texts by field, each with the cell it came from. Every layout ends here. */
export type RawLift = { readonly source: Source; readonly cells: Readonly<Partial<Record<Field, RawCell>>> };

export type LayoutName = "list" | "matrix" | "turned matrix";
export type RecognisedHeading = {
  readonly sheet: string;
  readonly cell: string;
  readonly heading: string;
  readonly field: Field | null;
  readonly unit: LengthUnit | null;
};

/** What a recogniser makes of one sheet. */
export type Table = {
  readonly layout: LayoutName;
  readonly rowsRead: number;
  readonly headings: readonly RecognisedHeading[];
  readonly units: Readonly<Partial<Record<Field, LengthUnit>>>;
  readonly lifts: readonly RawLift[];
  /** Facts about levels that no single lift carries: names in the order written, upwards or downwards, and heights. */
  readonly levelRun: readonly RawCell[];
  readonly levelElevations: readonly { readonly level: RawCell; readonly elevation: RawCell }[];
};

/** At most this much of a cell is repeated in a message. */
export const quoted = (text: string): string => {
  const line = text.replace(/\s+/g, " ");
  return `"${line.length > 40 ? `${line.slice(0, 39)}…` : line}"`;
};
