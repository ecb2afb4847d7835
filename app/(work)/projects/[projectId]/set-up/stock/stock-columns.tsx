import type { Failure } from "#lib/kernel/result.ts";
import { CellInput } from "#app/_ui/table/cell-input.tsx";
import { CellSelect } from "#app/_ui/table/cell-select.tsx";
import type { EditColumn } from "#app/_ui/table/edit-table.tsx";
import { problemIn } from "#app/_ui/table/use-rows.ts";
import type { Edge, SheetRow, TimberRow } from "./stock-row.ts";

type Table<Row> = { readonly edge: Edge; readonly failure: Failure | undefined; readonly change: (index: number, part: Partial<Row>) => void };
type Typed<Row> = { readonly key: keyof Row & string; readonly head: string; readonly field: string; readonly width: string };

const USES = [{ value: "backing", label: "Backing timber" }, { value: "fillet", label: "Fillet" }] as const;

const lengthUnit = ({ units }: Edge): string => (units === "us" ? "ft-in" : "mm");

export const sheetColumns = (table: Table<SheetRow>): readonly EditColumn<SheetRow>[] => [
  typed("sheets", table, { key: "length", head: `Length (${lengthUnit(table.edge)})`, field: "lengthMm", width: "7rem" }),
  typed("sheets", table, { key: "width", head: `Width (${lengthUnit(table.edge)})`, field: "widthMm", width: "7rem" }),
  typed("sheets", table, { key: "price", head: `Price each (${table.edge.currency})`, field: "price", width: "7rem" }),
  typed("sheets", table, { key: "onHand", head: "On the rack", field: "onHand", width: "6rem" }),
];

export const timberColumns = (table: Table<TimberRow>): readonly EditColumn<TimberRow>[] => [
  {
    key: "use", head: "For", width: "10rem",
    cell: (row, index) => <CellSelect label={`Use of row ${index + 1}`} value={row.use} choices={USES} onChange={(use) => table.change(index, { use })} place={{ row: index, column: "use" }} />,
  },
  typed("timbers", table, { key: "length", head: `Length (${lengthUnit(table.edge)})`, field: "lengthMm", width: "7rem" }),
  typed("timbers", table, { key: "price", head: `Price each (${table.edge.currency})`, field: "price", width: "7rem" }),
  typed("timbers", table, { key: "onHand", head: "On the rack", field: "onHand", width: "6rem" }),
];

function typed<Row extends SheetRow | TimberRow>(list: "sheets" | "timbers", { failure, change }: Table<Row>, { key, head, field, width }: Typed<Row>): EditColumn<Row> {
  return {
    key, head, width, isFigure: true,
    cell: (row, index) => {
      const path = `cuttingRule.${list}.${index}.${field}`;
      return (
        <CellInput
          label={`${head} of row ${index + 1}`} value={String(row[key])} onChange={(text) => change(index, { [key]: text } as unknown as Partial<Row>)}
          field={path} place={{ row: index, column: key }} problem={problemIn(failure, path)} isFigure
        />
      );
    },
  };
}
