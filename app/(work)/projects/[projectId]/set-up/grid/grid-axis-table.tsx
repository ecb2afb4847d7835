"use client";

import { useRef } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { CellInput } from "#app/_ui/table/cell-input.tsx";
import { EditTable, type EditColumn } from "#app/_ui/table/edit-table.tsx";
import { problemIn } from "#app/_ui/table/use-rows.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { heightText, readHeightMm } from "#app/_ui/value/typed-length.ts";
import { GridQuickEntry } from "./grid-quick-entry.tsx";
import { offsetsMm, runRows, type Axis, type GridMode, type GridRow } from "./grid-row.ts";

export type GridAxisTableProps = {
  readonly axis: Axis; readonly title: string; readonly example: string; readonly units: Units; readonly mode: GridMode;
  readonly rows: readonly GridRow[]; readonly canEdit: boolean; readonly failure: Failure | undefined;
  /** Where these lines begin in the list that is saved, since the server names problems by place. */
  readonly firstIndex: number;
  readonly onChange: (rows: readonly GridRow[]) => void;
};

export function GridAxisTable(props: GridAxisTableProps) {
  const { axis, title, example, units, mode, rows, canEdit, onChange } = props;
  const made = useRef(0);
  const newKey = (): string => `new-${axis}-${(made.current += 1)}`;
  const change = (index: number, part: Partial<GridRow>) => onChange(rows.map((row, at) => (at === index ? { ...row, ...part } : row)));
  const addRow = () => onChange([...rows, { key: newKey(), id: undefined, name: "", place: mode === "spacing" ? rows.at(-1)?.place ?? "0" : "" }]);

  const columns = gridColumns(props, change);
  return (
    <div className="flex flex-col gap-3">
      {canEdit ? (
        <GridQuickEntry
          label="Several at once" example={example} units={units}
          onRun={(run) => onChange([...rows, ...runRows(run, rows, mode, units, newKey)])}
        />
      ) : null}
      {rows.length === 0 ? <p className="text-ink-soft">No lines yet.</p> : (
        <EditTable
          caption={title} columns={columns} rows={rows} rowKey={(row) => row.key} rowName={(row, index) => (row.name ? `line ${row.name}` : `row ${index + 1}`)}
          onAdd={canEdit ? addRow : undefined} onRemove={canEdit ? (index) => onChange(rows.filter((_row, at) => at !== index)) : undefined}
        />
      )}
      {canEdit ? <div><Button onPress={addRow}>Add a line</Button></div> : null}
    </div>
  );
}

type ChangeRow = (index: number, part: Partial<GridRow>) => void;

function gridColumns({ units, mode, rows, failure, firstIndex }: GridAxisTableProps, change: ChangeRow): readonly EditColumn<GridRow>[] {
  const offsets = offsetsMm(rows, mode, units);
  const unit = units === "us" ? "ft-in" : "m";
  const cell = (key: "name" | "place", field: string, label: string) => function GridCell(row: GridRow, index: number) {
    const path = `gridLines.${firstIndex + index}.${field}`;
    const own = key === "place" && row.place !== "" && readHeightMm(row.place, units) === undefined ? "Not a length" : undefined;
    return (
      <CellInput
        label={`${label} of ${row.name || `row ${index + 1}`}`} value={row[key]} onChange={(text) => change(index, { [key]: text })}
        field={path} place={{ row: index, column: key }} problem={own ?? problemIn(failure, path)} isFigure={key === "place"}
      />
    );
  };
  return [
    { key: "name", head: "Name", width: "5rem", cell: cell("name", "name", "Name") },
    { key: "place", head: `${mode === "spacing" ? "Spacing" : "Offset"} (${unit})`, isFigure: true, width: "7rem", cell: cell("place", "offsetMm", mode === "spacing" ? "Spacing" : "Offset") },
    {
      key: "derived", head: mode === "spacing" ? `Offset (${unit})` : `Spacing (${unit})`, isFigure: true, width: "7rem",
      cell: (_row, index) => <Derived valueMm={mode === "spacing" ? offsets[index] : spacingOf(offsets, index)} units={units} />,
    },
  ];
}

function spacingOf(offsets: readonly (number | undefined)[], index: number): number | undefined {
  const [here, before] = [offsets[index], index === 0 ? 0 : offsets[index - 1]];
  return here === undefined || before === undefined ? undefined : here - before;
}

function Derived({ valueMm, units }: { readonly valueMm: number | undefined; readonly units: Units }) {
  return <span className="inline-flex min-h-hand items-center text-ink-soft">{valueMm === undefined ? "–" : heightText(valueMm, units)}</span>;
}
