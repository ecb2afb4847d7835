import { hasDone, type Stage } from "#lib/trade/progress/stages.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { instantWords } from "#app/_ui/value/time-words.ts";
import type { ColumnPage } from "../column-page.ts";

/** What of a column can be changed by hand, as it is stored. */
export type StoredColumn = {
  readonly projectId: string; readonly columnId: string; readonly name: string; readonly version: number; readonly units: Units;
  readonly shape: "rectangle" | "circle"; readonly widthMm: number; readonly depthMm: number; readonly headedBy: "slab" | "beam";
  readonly formHeightMm: number | null; readonly concrete: string | null; readonly remarks: string | null;
  readonly stage: Stage | null; readonly isStood: boolean;
  /** Who changed it last in the schedule, with the time in the zone of the site. */
  readonly lastChange: string | null;
};

export function storedColumn({ project, column, state, changes }: ColumnPage): StoredColumn {
  const last = changes.at(-1);
  const at = last ? instantWords(last.at, project.timeZone) : null;
  return {
    projectId: project.id, columnId: column.id, name: `${column.gridRef}, ${column.fromLevel.name}`, version: column.version, units: project.units,
    shape: column.shape, widthMm: column.widthMm, depthMm: column.depthMm, headedBy: column.headedBy, formHeightMm: column.formHeightMm,
    concrete: column.concrete, remarks: column.remarks, stage: state.stage, isStood: hasDone(state.done, "stood"),
    lastChange: last && at ? `last by ${last.by}, ${at.day}, ${at.time} ${at.zone}` : null,
  };
}
