"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { EditTable } from "#app/_ui/table/edit-table.tsx";
import { OutdatedNotice } from "#app/_ui/table/outdated-notice.tsx";
import { useRows } from "#app/_ui/table/use-rows.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { saveLevelsAction } from "../_parts/actions.ts";
import { levelColumns } from "./level-columns.tsx";
import { rowAbove, toLevel, toLevelRow, type Level } from "./level-row.ts";

export type LevelsFormProps = {
  readonly projectId: string; readonly units: Units; readonly levels: readonly Level[]; readonly stamp: string; readonly canEdit: boolean;
};

export function LevelsForm({ projectId, units, levels, stamp, canEdit }: LevelsFormProps) {
  const { rows, seen, change, add, remove, saving, isOutdated, startAgain } = useRows(levels, (level) => toLevelRow(level, units), stamp);
  const answered = useAnswer(() => saving(saveLevelsAction({ projectId, seen, levels: rows.map((row) => toLevel(row, units)) })));
  const columns = levelColumns({ rows, units, failure: answered.failure, change });
  const addRow = () => add((key) => rowAbove(rows, units, key));
  return (
    <SaveForm answered={answered} label="Save the levels" done="Levels saved." canEdit={canEdit} className="flex flex-col gap-3">
      <OutdatedNotice isOutdated={isOutdated} startAgain={startAgain} />
      {rows.length === 0 ? (
        <EmptyState title="No levels yet">Add the lowest floor a column stands on, then each floor above it; or import a schedule that names its levels.</EmptyState>
      ) : (
        <EditTable
          caption="Levels, lowest first" columns={columns} rows={rows} rowKey={(row) => row.key}
          rowName={(row, index) => row.name || `row ${index + 1}`}
          onAdd={canEdit ? addRow : undefined} onRemove={canEdit ? remove : undefined}
        />
      )}
      {canEdit ? <div><Button onPress={addRow}>{rows.length === 0 ? "Add the lowest level" : "Add a level above"}</Button></div> : null}
    </SaveForm>
  );
}
