"use client";

import type { ColumnGear } from "#lib/contracts/hire/column-gear.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { EditTable } from "#app/_ui/table/edit-table.tsx";
import { OutdatedNotice } from "#app/_ui/table/outdated-notice.tsx";
import { useRows } from "#app/_ui/table/use-rows.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { changeColumnGearAction } from "./actions.ts";
import { gearColumns, type Named } from "./gear-columns.tsx";
import { emptyRow, toGear, toGearRow } from "./gear-row.ts";

export type GearFormProps = {
  readonly projectId: string; readonly version: number; readonly units: Units; readonly items: readonly Named[]; readonly levels: readonly Named[];
  readonly rows: ColumnGear["rows"]; readonly canEdit: boolean;
};

export function GearForm({ projectId, version, units, items, levels, rows: given, canEdit }: GearFormProps) {
  const { rows, seen, change, add, remove, saving, isOutdated, startAgain } = useRows(given.map((row, index) => ({ row, key: `row-${index}` })), ({ row, key }) => toGearRow(row, units, key), version);
  const answered = useAnswer(() => saving(changeColumnGearAction({ projectId, version: seen, columnGear: { rows: rows.map((row) => toGear(row, units)) } })));
  const addRow = () => add((key) => emptyRow(key, rows.at(-1)?.itemId ?? items[0]?.id ?? ""));
  return (
    <SaveForm answered={answered} label="Save the gear" done="Saved. Return plans count it from now on." canEdit={canEdit} className="flex flex-col gap-3">
      <OutdatedNotice isOutdated={isOutdated} startAgain={startAgain} />
      {rows.length === 0 ? (
        <EmptyState title="Clamps and wedges alone are counted">Add a row for each other thing a column holds while its form stands: props, loose bars, tie rods.</EmptyState>
      ) : (
        <EditTable
          caption="Gear of every column beside its clamps" columns={gearColumns({ units, items, levels, failure: answered.failure, change })} rows={rows} rowKey={({ key }) => key} rowName={(_row, index) => `row ${index + 1}`}
          onAdd={canEdit ? addRow : undefined} onRemove={canEdit ? remove : undefined}
        />
      )}
      {canEdit ? <div><Button onPress={addRow}>Add a row</Button></div> : null}
    </SaveForm>
  );
}
