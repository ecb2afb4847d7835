import type { Failure } from "#lib/kernel/result.ts";
import { CellInput } from "#app/_ui/table/cell-input.tsx";
import type { EditColumn } from "#app/_ui/table/edit-table.tsx";
import { problemIn } from "#app/_ui/table/use-rows.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { heightText, readHeightMm, readLengthMm } from "#app/_ui/value/typed-length.ts";
import { storeyMm, type LevelRow } from "./level-row.ts";

export type LevelTable = {
  readonly rows: readonly LevelRow[]; readonly units: Units; readonly failure: Failure | undefined;
  readonly change: (index: number, part: Partial<LevelRow>) => void;
};
type Cell = { readonly key: "name" | "elevation" | "slab" | "beam"; readonly field: string; readonly label: string; readonly isWrong?: (text: string) => boolean };

export function levelColumns(table: LevelTable): readonly EditColumn<LevelRow>[] {
  const { rows, units } = table;
  const unit = units === "us" ? "ft-in" : "mm";
  const noHeight = (text: string) => readHeightMm(text, units) === undefined;
  const noLength = (text: string) => readLengthMm(text, units) === undefined;
  const cell = (kind: Cell) => (row: LevelRow, index: number) => levelCell(kind, table, row, index);
  return [
    { key: "name", head: "Name", width: "8rem", cell: cell({ key: "name", field: "name", label: "Name" }) },
    { key: "elevation", head: `Elevation (${units === "us" ? "ft-in" : "m"})`, isFigure: true, width: "8rem", cell: cell({ key: "elevation", field: "elevationMm", label: "Elevation", isWrong: noHeight }) },
    { key: "slab", head: `Slab depth (${unit})`, isFigure: true, width: "7rem", cell: cell({ key: "slab", field: "slabDepthMm", label: "Slab depth", isWrong: noLength }) },
    { key: "beam", head: `Beam depth (${unit})`, isFigure: true, width: "7rem", cell: cell({ key: "beam", field: "beamDepthMm", label: "Beam depth", isWrong: noLength }) },
    { key: "storey", head: "Storey height to the next", isFigure: true, width: "8rem", cell: (_row, index) => <Storey valueMm={storeyMm(rows, index, units)} units={units} isTop={index === rows.length - 1} /> },
  ];
}

function levelCell({ key, field, label, isWrong }: Cell, { failure, change }: LevelTable, row: LevelRow, index: number) {
  const own = row[key] !== "" && isWrong?.(row[key]) ? "Not a length" : undefined;
  const path = `levels.${index}.${field}`;
  return (
    <CellInput
      label={`${label} of ${row.name || `row ${index + 1}`}`}
      value={row[key]}
      onChange={(text) => change(index, { [key]: text })}
      field={path}
      place={{ row: index, column: key }}
      problem={own ?? problemIn(failure, path)}
      isFigure={key !== "name"}
    />
  );
}

function Storey({ valueMm, units, isTop }: { readonly valueMm: number | undefined; readonly units: Units; readonly isTop: boolean }) {
  const look = "inline-flex min-h-hand items-center whitespace-nowrap";
  if (valueMm === undefined) return <span className={`${look} text-ink-soft`}>{isTop ? "top" : "–"}</span>;
  if (valueMm <= 0) return <span className={`${look} font-semibold text-flag-deep`}>not above</span>;
  return <span className={look}>{heightText(valueMm, units)}{units === "metric" ? " m" : ""}</span>;
}
