import type { Finding, LayoutName, RecognisedHeading } from "./table/raw-lift.ts";
import type { Shape } from "./table/read-size.ts";
import type { Source } from "./table/sheet.ts";

export type UnitSystem = "metric" | "us";

/** One column between two levels, as a schedule gives it. A round one has its diameter as width and depth. */
export type Lift = {
  readonly mark: string;
  readonly gridRef: string;
  /** `mark` when the schedule gives no grid reference and the mark had to stand in for one. */
  readonly locatedBy: "grid" | "mark";
  readonly shape: Shape;
  readonly width_mm: number;
  readonly depth_mm: number;
  readonly fromLevel: string;
  readonly toLevel: string;
  readonly fromElevation_mm: number | null;
  readonly toElevation_mm: number | null;
  /** Level to level; the slab or beam depth is not in a schedule. */
  readonly storeyHeight_mm: number | null;
  readonly concrete: string | null;
  readonly mainBars: string | null;
  readonly remarks: string | null;
  readonly source: Source;
};

export type ReadLevel = { readonly name: string; readonly elevation_mm: number | null };
/** A level the project already has; its name and height help where the file is silent. */
export type KnownLevel = ReadLevel;

export type ScheduleReading = {
  readonly layout: LayoutName | null;
  /** Lowest first. */
  readonly levels: readonly ReadLevel[];
  readonly grids: readonly string[];
  readonly marks: readonly string[];
  readonly lifts: readonly Lift[];
  readonly problems: readonly Finding[];
  readonly warnings: readonly Finding[];
  readonly counts: { readonly rowsRead: number; readonly lifts: number; readonly errors: number; readonly warnings: number };
  readonly columnsRecognised: readonly RecognisedHeading[];
};
