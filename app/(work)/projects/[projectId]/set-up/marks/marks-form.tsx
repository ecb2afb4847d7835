"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { CellInput } from "#app/_ui/table/cell-input.tsx";
import { CellSelect } from "#app/_ui/table/cell-select.tsx";
import { EditTable, type EditColumn } from "#app/_ui/table/edit-table.tsx";
import { problemIn, useRows } from "#app/_ui/table/use-rows.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { readSideMm } from "#app/_ui/value/typed-length.ts";
import { saveMarksAction } from "../_parts/actions.ts";
import { SHAPES, toMark, toMarkRow, type Mark, type MarkRow } from "./mark-row.ts";

export type MarksFormProps = {
  readonly projectId: string; readonly units: Units; readonly marks: readonly Mark[]; readonly canEdit: boolean;
};

export function MarksForm({ projectId, units, marks, canEdit }: MarksFormProps) {
  const { rows, change, add, remove } = useRows(marks, (mark) => toMarkRow(mark, units));
  const answered = useAnswer(() => saveMarksAction({ projectId, marks: rows.map((row) => toMark(row, units)) }));
  const unit = units === "us" ? "ft-in" : "mm";
  const nameOf = (row: MarkRow, index: number) => row.name || `row ${index + 1}`;

  const cell = (key: "name" | "width" | "depth", field: string, label: string) => function MarkCell(row: MarkRow, index: number) {
    if (key === "depth" && row.shape === "circle") return <span className="inline-flex min-h-hand items-center text-ink-soft">diameter</span>;
    const path = `marks.${index}.${field}`;
    const own = key !== "name" && row[key] !== "" && readSideMm(row[key], units) === undefined ? "Not a length" : undefined;
    return (
      <CellInput
        label={`${label} of ${nameOf(row, index)}`} value={row[key]} onChange={(text) => change(index, { [key]: text })}
        field={path} place={{ row: index, column: key }} problem={own ?? problemIn(answered.failure, path)} isFigure={key !== "name"}
      />
    );
  };
  const columns: readonly EditColumn<MarkRow>[] = [
    { key: "name", head: "Mark", width: "7rem", cell: cell("name", "name", "Name") },
    {
      key: "shape", head: "Section", width: "11rem",
      cell: (row, index) => (
        <CellSelect label={`Section of ${nameOf(row, index)}`} value={row.shape} choices={SHAPES} onChange={(shape) => change(index, { shape })} place={{ row: index, column: "shape" }} />
      ),
    },
    { key: "width", head: `Width or diameter (${unit})`, isFigure: true, width: "8rem", cell: cell("width", "widthMm", "Width") },
    { key: "depth", head: `Depth (${unit})`, isFigure: true, width: "8rem", cell: cell("depth", "depthMm", "Depth") },
    { key: "drawn", head: "Drawn", width: "4rem", cell: (row) => <Drawn row={row} units={units} /> },
  ];
  const addRow = () => add((key) => ({ key, given: undefined, name: "", shape: rows.at(-1)?.shape ?? "rectangle", width: "", depth: "" }));
  return (
    <SaveForm answered={answered} label="Save the marks" done="Marks saved." canEdit={canEdit} className="flex flex-col gap-3">
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

function Drawn({ row, units }: { readonly row: MarkRow; readonly units: Units }) {
  const { widthMm, depthMm } = toMark(row, units);
  if (!(widthMm > 0) || !(depthMm > 0)) return null;
  return <ColumnSign shape={row.shape} width_mm={widthMm} depth_mm={depthMm} done={63} flagged={false} size={40} />;
}
