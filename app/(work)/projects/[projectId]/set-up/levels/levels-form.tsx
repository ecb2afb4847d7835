"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { CellInput } from "#app/_ui/table/cell-input.tsx";
import { EditTable, type EditColumn } from "#app/_ui/table/edit-table.tsx";
import { problemIn, useRows } from "#app/_ui/table/use-rows.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { heightText, readHeightMm, readLengthMm } from "#app/_ui/value/typed-length.ts";
import { saveLevelsAction } from "../_parts/actions.ts";
import { rowAbove, storeyMm, toLevel, toLevelRow, type Level, type LevelRow } from "./level-row.ts";

export type LevelsFormProps = {
  readonly projectId: string; readonly units: Units; readonly levels: readonly Level[]; readonly canEdit: boolean;
};
type TextKey = "name" | "elevation" | "slab" | "beam";

export function LevelsForm({ projectId, units, levels, canEdit }: LevelsFormProps) {
  const { rows, change, add, remove } = useRows(levels, (level) => toLevelRow(level, units));
  const answered = useAnswer(() => saveLevelsAction({ projectId, levels: rows.map((row) => toLevel(row, units)) }));
  const unit = units === "us" ? "ft-in" : "mm";

  const cell = (key: TextKey, field: string, label: string, isWrong: (text: string) => boolean = () => false) =>
    function LevelCell(row: LevelRow, index: number) {
      const own = row[key] !== "" && isWrong(row[key]) ? "Not a length" : undefined;
      const path = `levels.${index}.${field}`;
      return (
        <CellInput
          label={`${label} of ${row.name || `row ${index + 1}`}`}
          value={row[key]}
          onChange={(text) => change(index, { [key]: text })}
          field={path}
          place={{ row: index, column: key }}
          problem={own ?? problemIn(answered.failure, path)}
          isFigure={key !== "name"}
        />
      );
    };
  const noHeight = (text: string) => readHeightMm(text, units) === undefined;
  const noLength = (text: string) => readLengthMm(text, units) === undefined;
  const columns: readonly EditColumn<LevelRow>[] = [
    { key: "name", head: "Name", width: "8rem", cell: cell("name", "name", "Name") },
    { key: "elevation", head: `Elevation (${units === "us" ? "ft-in" : "m"})`, isFigure: true, width: "8rem", cell: cell("elevation", "elevationMm", "Elevation", noHeight) },
    { key: "slab", head: `Slab depth (${unit})`, isFigure: true, width: "7rem", cell: cell("slab", "slabDepthMm", "Slab depth", noLength) },
    { key: "beam", head: `Beam depth (${unit})`, isFigure: true, width: "7rem", cell: cell("beam", "beamDepthMm", "Beam depth", noLength) },
    { key: "storey", head: "Storey height to the next", isFigure: true, width: "8rem", cell: (_row, index) => <Storey valueMm={storeyMm(rows, index, units)} units={units} isTop={index === rows.length - 1} /> },
  ];
  const addRow = () => add((key) => rowAbove(rows, units, key));
  return (
    <SaveForm answered={answered} label="Save the levels" done="Levels saved." canEdit={canEdit} className="flex flex-col gap-3">
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

function Storey({ valueMm, units, isTop }: { readonly valueMm: number | undefined; readonly units: Units; readonly isTop: boolean }) {
  const look = "inline-flex min-h-hand items-center whitespace-nowrap";
  if (valueMm === undefined) return <span className={`${look} text-ink-soft`}>{isTop ? "top" : "–"}</span>;
  if (valueMm <= 0) return <span className={`${look} font-semibold text-flag-deep`}>not above</span>;
  return <span className={look}>{heightText(valueMm, units)}{units === "metric" ? " m" : ""}</span>;
}
