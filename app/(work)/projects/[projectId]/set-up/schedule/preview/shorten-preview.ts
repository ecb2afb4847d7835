import { groupBy } from "#lib/kernel/group-by.ts";
import type { ColumnChange, KnownColumn, SchedulePreview } from "#lib/trade/schedule/compare-schedule.ts";
import type { Lift, ScheduleReading } from "#lib/trade/schedule/lift.ts";

/** So many of each list are shown; a person who has to read more reads the file instead. */
export const MOST_SHOWN = 200;

/** The beginning of a list and how long it is. */
export type Shown<T> = { readonly first: readonly T[]; readonly count: number };
export type ColumnToChange = Pick<ColumnChange, "id" | "gridRef" | "fromLevel" | "stage" | "source"> & {
  readonly changes: readonly Pick<ColumnChange, "what" | "from" | "to">[];
};
export type ColumnToCreate = Pick<Lift, "mark" | "gridRef" | "shape" | "width_mm" | "depth_mm" | "fromLevel" | "toLevel" | "storeyHeight_mm" | "concrete">;

export type ShortPreview = {
  readonly digest: string;
  readonly reading: Pick<ScheduleReading, "layout" | "columnsRecognised" | "warnings"> & { readonly rowsRead: number; readonly lifts: number };
  readonly create: Pick<SchedulePreview["create"], "levels" | "gridLines" | "marks"> & { readonly columns: Shown<ColumnToCreate> };
  readonly change: { readonly levels: SchedulePreview["change"]["levels"]; readonly columns: Shown<ColumnToChange> };
  readonly sameCount: number;
  readonly refused: SchedulePreview["refused"];
  readonly notInFile: Shown<Pick<KnownColumn, "id" | "gridRef" | "fromLevel" | "stage">>;
  readonly freePlaces: Shown<string>;
};

const shown = <T>(list: readonly T[]): Shown<T> => ({ first: list.slice(0, MOST_SHOWN), count: list.length });
const shownAs = <T, R>(list: readonly T[], draw: (item: T) => R): Shown<R> => ({ first: list.slice(0, MOST_SHOWN).map(draw), count: list.length });

type Drawn = { readonly reading: Omit<ScheduleReading, "lifts">; readonly preview: SchedulePreview; readonly digest: string };

/** What the screen shows of a preview: problems whole, since they can be saved as a file; of long lists the beginning. */
export function shortenPreview({ reading, preview, digest }: Drawn): ShortPreview {
  const { create, change } = preview;
  const changed = [...groupBy(change.columns, ({ id }) => id).values()];
  return {
    digest,
    reading: { layout: reading.layout, columnsRecognised: reading.columnsRecognised, warnings: reading.warnings, rowsRead: reading.counts.rowsRead, lifts: reading.counts.lifts },
    create: { levels: create.levels, gridLines: create.gridLines, marks: create.marks, columns: shownAs(create.columns, toCreate) },
    change: { levels: change.levels, columns: shownAs(changed, toChange) },
    sameCount: preview.same.length,
    refused: preview.refused,
    notInFile: shownAs(preview.notInFile, ({ id, gridRef, fromLevel, stage }) => ({ id, gridRef, fromLevel, stage })),
    freePlaces: shown(preview.freePlaces),
  };
}

const toCreate = ({ mark, gridRef, shape, width_mm, depth_mm, fromLevel, toLevel, storeyHeight_mm, concrete }: Lift): ColumnToCreate =>
  ({ mark, gridRef, shape, width_mm, depth_mm, fromLevel, toLevel, storeyHeight_mm, concrete });

function toChange(own: readonly ColumnChange[]): ColumnToChange {
  const [first] = own;
  if (!first) throw new Error("A group of changes holds at least one.");
  const { id, gridRef, fromLevel, stage, source } = first;
  return { id, gridRef, fromLevel, stage, source, changes: own.map(({ what, from, to }) => ({ what, from, to })) };
}
