import type { Failure } from "#lib/kernel/result.ts";
import { CellInput } from "#app/_ui/table/cell-input.tsx";
import { CellSelect } from "#app/_ui/table/cell-select.tsx";
import type { EditColumn } from "#app/_ui/table/edit-table.tsx";
import { problemIn } from "#app/_ui/table/use-rows.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import type { GearRow, Limit } from "./gear-row.ts";

export type Named = { readonly id: string; readonly name: string };
type Table = {
  readonly units: Units; readonly items: readonly Named[]; readonly levels: readonly Named[]; readonly failure: Failure | undefined;
  readonly change: (index: number, part: Partial<GearRow>) => void;
};

export function gearColumns(table: Table): readonly EditColumn<GearRow>[] {
  const { units, items, levels, change } = table;
  const unit = units === "us" ? "ft-in" : "mm";
  return [
    {
      key: "itemId", head: "Item", width: "14rem",
      cell: (row, index) => (
        <CellSelect label={`Item of row ${index + 1}`} value={row.itemId} choices={items.map(({ id, name }) => ({ value: id, label: name }))} onChange={(itemId) => change(index, { itemId })} place={{ row: index, column: "itemId" }} />
      ),
    },
    { ...typed(table, "count", "Each column", "count"), width: "6rem" },
    {
      key: "level", head: "Columns on", width: "10rem",
      cell: (row, index) => (
        <CellSelect label={`Level of row ${index + 1}`} value={row.level} choices={[{ value: "", label: "every level" }, ...levels.map(({ id, name }) => ({ value: id, label: name }))]} onChange={(level) => change(index, { level })} place={{ row: index, column: "level" }} />
      ),
    },
    limit(table, "sideOver", `Larger side over (${unit})`),
    limit(table, "sideUpTo", `up to (${unit})`),
    limit(table, "heightOver", `Form height over (${unit})`),
    limit(table, "heightUpTo", `up to (${unit})`),
  ];
}

const limit = (table: Table, key: Limit, head: string): EditColumn<GearRow> => typed(table, key, head, `${key}Mm`);

function typed({ failure, change }: Table, key: Limit | "count", head: string, field: string): EditColumn<GearRow> {
  return {
    key, head, width: "8rem", isFigure: true,
    cell: (row, index) => {
      const path = `columnGear.rows.${index}.${field}`;
      const problem = problemIn(failure, path) ?? (key === "count" ? problemIn(failure, `columnGear.rows.${index}.itemId`) : undefined);
      return (
        <CellInput label={`${key.startsWith("height") && head.startsWith("up") ? "Form height " : ""}${key.startsWith("side") && head.startsWith("up") ? "Larger side " : ""}${head} of row ${index + 1}`} value={row[key]} onChange={(text) => change(index, { [key]: text })} field={path} place={{ row: index, column: key }} problem={problem} isFigure />
      );
    },
  };
}
