import type { Plumbing } from "#lib/trade/progress/stages.ts";
import type { UnitSystem } from "./projects.ts";

/**
 * A column in the sheet every view of the project is drawn from, short because there may be 5,000 of them: id, grid
 * reference, then places in the sheet's lists of marks, grid lines (along x, along y), levels (from, to); 0 rectangle or
 * 1 circle, width and depth in mm, bitmask of stages done, 1 when flagged, form height in mm when given by hand,
 * 0 headed by slab or 1 by beam.
 */
export type SheetRow = readonly [
  id: string, gridRef: string, mark: number, gridX: number | null, gridY: number | null, fromLevel: number,
  toLevel: number, shape: 0 | 1, widthMm: number, depthMm: number, done: number, flagged: 0 | 1,
  formHeightMm: number | null, headedBy: 0 | 1,
];

export type SheetColumn = {
  readonly id: string; readonly gridRef: string; readonly markId: string; readonly gridXId: string | null;
  readonly gridYId: string | null; readonly fromLevelId: string; readonly toLevelId: string;
  readonly shape: "rectangle" | "circle"; readonly width_mm: number; readonly depth_mm: number; readonly done: number;
  readonly flagged: boolean; readonly formHeightMm: number | null; readonly headedBy: "slab" | "beam";
};

/** JSON with backticks for quotes, which a page can carry without escaping each of them twice; backticks of its own are written as escapes. */
export const quoteByBacktick = (json: string): string => json.replaceAll("`", "\\u0060").replaceAll("\"", "`");

export function readSheetRows({ rowsJson, levels, gridLines, marks }: Pick<ColumnsSheet, "rowsJson" | "levels" | "gridLines" | "marks">): SheetColumn[] {
  const rows: readonly SheetRow[] = JSON.parse(rowsJson.replaceAll("`", "\""));
  const idAt = (list: readonly { id: string }[], place: number): string => list[place]?.id ?? "";
  const lineAt = (place: number | null): string | null => (place === null ? null : (gridLines[place]?.id ?? null));
  return rows.map((row) => ({
    id: row[0], gridRef: row[1], markId: idAt(marks, row[2]), gridXId: lineAt(row[3]), gridYId: lineAt(row[4]),
    fromLevelId: idAt(levels, row[5]), toLevelId: idAt(levels, row[6]), shape: row[7] === 1 ? "circle" : "rectangle",
    width_mm: row[8], depth_mm: row[9], done: row[10], flagged: row[11] === 1,
    formHeightMm: row[12], headedBy: row[13] === 1 ? "beam" : "slab",
  }));
}

export type SheetLevel = { id: string; name: string; elevationMm: number; slabDepthMm: number; beamDepthMm: number };
export type SheetGridLine = { id: string; axis: string; name: string; offsetMm: number };
export type SheetMark = { id: string; name: string; shape: string; widthMm: number; depthMm: number };

export type ColumnsSheet = {
  readonly projectId: string; readonly projectName: string; readonly units: UnitSystem; readonly timeZone: string;
  /** Whether a later stage already says that it was plumbed; and what comes off every form height. */
  readonly plumbing: Plumbing; readonly kickerMm: number;
  /** The last number of the project that this sheet already holds; the live feed goes on from it. */
  readonly seq: number;
  readonly levels: readonly SheetLevel[]; readonly gridLines: readonly SheetGridLine[]; readonly marks: readonly SheetMark[];
  /** JSON of SheetRow[], quoted by backticks; kept as text because it crosses to the phone as it leaves the database. */
  readonly rowsJson: string;
};

/** One message of the live feed. `columns` hold the state as it is now, so applying one twice does no harm. */
export type LiveMessage = {
  readonly seq: number;
  readonly kind: "progress" | "schedule" | "set-up";
  readonly by: string;
  readonly columns: readonly { id: string; done: number; flagged: boolean }[];
};
