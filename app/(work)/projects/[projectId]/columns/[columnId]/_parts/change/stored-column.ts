import { hasDone } from "#lib/trade/progress/stages.ts";
import { instantWords } from "#app/_ui/value/time-words.ts";
import type { ColumnPage } from "../column-page.ts";
import type { StoredColumn } from "./change-column.tsx";

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
