import type { UnitSystem } from "./projects.ts";

/**
 * A column in the sheet every view of the project is drawn from, short because there may be 5,000 of them:
 * id, grid reference, mark id, grid line ids along x and y, from and to level ids, 0 rectangle or 1 circle, width and
 * depth in mm, bitmask of stages done, 1 when flagged, form height in mm when given by hand, 0 headed by slab or 1 by beam.
 */
export type SheetRow = readonly [
  id: string, gridRef: string, markId: string, gridXId: string | null, gridYId: string | null, fromLevelId: string,
  toLevelId: string, shape: 0 | 1, widthMm: number, depthMm: number, done: number, flagged: 0 | 1,
  formHeightMm: number | null, headedBy: 0 | 1,
];

export type SheetColumn = {
  readonly id: string; readonly gridRef: string; readonly markId: string; readonly gridXId: string | null;
  readonly gridYId: string | null; readonly fromLevelId: string; readonly toLevelId: string;
  readonly shape: "rectangle" | "circle"; readonly width_mm: number; readonly depth_mm: number; readonly done: number;
  readonly flagged: boolean; readonly formHeightMm: number | null; readonly headedBy: "slab" | "beam";
};

export const readSheetRow = (row: SheetRow): SheetColumn => ({
  id: row[0], gridRef: row[1], markId: row[2], gridXId: row[3], gridYId: row[4], fromLevelId: row[5], toLevelId: row[6],
  shape: row[7] === 1 ? "circle" : "rectangle", width_mm: row[8], depth_mm: row[9], done: row[10], flagged: row[11] === 1,
  formHeightMm: row[12], headedBy: row[13] === 1 ? "beam" : "slab",
});

export type SheetLevel = { id: string; name: string; elevationMm: number; slabDepthMm: number; beamDepthMm: number };
export type SheetGridLine = { id: string; axis: string; name: string; offsetMm: number };
export type SheetMark = { id: string; name: string; shape: string; widthMm: number; depthMm: number };

export type ColumnsSheet = {
  readonly projectId: string; readonly units: UnitSystem; readonly timeZone: string;
  /** The last number of the project that this sheet already holds; the live feed goes on from it. */
  readonly seq: number;
  readonly levels: readonly SheetLevel[]; readonly gridLines: readonly SheetGridLine[]; readonly marks: readonly SheetMark[];
  /** JSON of SheetRow[]; kept as text because it crosses to the phone as it leaves the database. */
  readonly rowsJson: string;
};

/** One message of the live feed. `columns` hold the state as it is now, so applying one twice does no harm. */
export type LiveMessage = {
  readonly seq: number;
  readonly kind: "progress" | "schedule" | "set-up";
  readonly by: string;
  readonly columns: readonly { id: string; done: number; flagged: boolean }[];
};
