import type { Failure } from "#lib/kernel/result.ts";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { CellInput } from "#app/_ui/table/cell-input.tsx";
import { CellSelect } from "#app/_ui/table/cell-select.tsx";
import type { EditColumn } from "#app/_ui/table/edit-table.tsx";
import { problemIn } from "#app/_ui/table/use-rows.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { readSideMm } from "#app/_ui/value/typed-length.ts";
import { SHAPES, toMark, type MarkRow } from "./mark-row.ts";

export type MarkTable = {
  readonly units: Units; readonly failure: Failure | undefined; readonly change: (index: number, part: Partial<MarkRow>) => void;
};
type Cell = { readonly key: "name" | "width" | "depth"; readonly field: string; readonly label: string };

export const nameOf = (row: MarkRow, index: number): string => row.name || `row ${index + 1}`;

export function markColumns(table: MarkTable): readonly EditColumn<MarkRow>[] {
  const { units, change } = table;
  const unit = units === "us" ? "ft-in" : "mm";
  const cell = (key: Cell["key"], field: string, label: string) => (row: MarkRow, index: number) => markCell({ key, field, label }, table, row, index);
  return [
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
}

function markCell({ key, field, label }: Cell, { units, failure, change }: MarkTable, row: MarkRow, index: number) {
  if (key === "depth" && row.shape === "circle") return <span className="inline-flex min-h-hand items-center text-ink-soft">diameter</span>;
  const path = `marks.${index}.${field}`;
  const own = key !== "name" && row[key] !== "" && readSideMm(row[key], units) === undefined ? "Not a length" : undefined;
  return (
    <CellInput
      label={`${label} of ${nameOf(row, index)}`} value={row[key]} onChange={(text) => change(index, { [key]: text })}
      field={path} place={{ row: index, column: key }} problem={own ?? problemIn(failure, path)} isFigure={key !== "name"}
    />
  );
}

function Drawn({ row, units }: { readonly row: MarkRow; readonly units: Units }) {
  const { widthMm, depthMm } = toMark(row, units);
  if (!(widthMm > 0) || !(depthMm > 0)) return null;
  return <ColumnSign shape={row.shape} width_mm={widthMm} depth_mm={depthMm} done={63} flagged={false} size={40} />;
}
