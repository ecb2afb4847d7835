"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { EditTable } from "#app/_ui/table/edit-table.tsx";
import { OutdatedNotice } from "#app/_ui/table/outdated-notice.tsx";
import { useRows } from "#app/_ui/table/use-rows.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { saveMarksAction } from "../_parts/actions.ts";
import { markColumns, nameOf } from "./mark-columns.tsx";
import { toMark, toMarkRow, type Mark } from "./mark-row.ts";

export type MarksFormProps = {
  readonly projectId: string; readonly units: Units; readonly marks: readonly Mark[]; readonly stamp: string; readonly canEdit: boolean;
};

export function MarksForm({ projectId, units, marks, stamp, canEdit }: MarksFormProps) {
  const { rows, seen, change, add, remove, saving, isOutdated, startAgain } = useRows(marks, (mark) => toMarkRow(mark, units), stamp);
  const answered = useAnswer(() => saving(saveMarksAction({ projectId, seen, marks: rows.map((row) => toMark(row, units)) })));
  const columns = markColumns({ units, failure: answered.failure, change });
  const addRow = () => add((key) => ({ key, given: undefined, name: "", shape: rows.at(-1)?.shape ?? "rectangle", width: "", depth: "" }));
  return (
    <SaveForm answered={answered} label="Save the marks" done="Marks saved." canEdit={canEdit} className="flex flex-col gap-3">
      <OutdatedNotice isOutdated={isOutdated} startAgain={startAgain} />
      {rows.length === 0 ? (
        <EmptyState title="No marks yet">Add the marks of the column schedule with their sizes; or import the schedule, which brings them along.</EmptyState>
      ) : (
        <EditTable
          caption="Marks" columns={columns} rows={rows} rowKey={(row) => row.key} rowName={nameOf}
          onAdd={canEdit ? addRow : undefined} onRemove={canEdit ? remove : undefined}
        />
      )}
      {canEdit ? <div className="flex flex-wrap items-center gap-4"><Button onPress={addRow}>Add a mark</Button><span className="text-sm text-ink-soft">A square column needs its width only.</span></div> : null}
    </SaveForm>
  );
}
