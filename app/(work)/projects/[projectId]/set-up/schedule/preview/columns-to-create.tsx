import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";
import { sizeText } from "./preview-words.ts";
import type { ColumnToCreate, Shown } from "./shorten-preview.ts";
import { ShownNote } from "./shown-note.tsx";

export function ColumnsToCreate({ columns, units }: { readonly columns: Shown<ColumnToCreate>; readonly units: Units }) {
  const heads: readonly DataColumn<ColumnToCreate>[] = [
    { key: "grid", head: "Grid", isRowHead: true, cell: ({ gridRef }) => gridRef },
    { key: "mark", head: "Mark", cell: ({ mark }) => mark },
    { key: "size", head: units === "us" ? "Section" : "Section, mm", cell: (lift) => sizeText(lift, units) },
    { key: "lift", head: "Lift", cell: ({ fromLevel, toLevel }) => <span className="whitespace-nowrap">{fromLevel} → {toLevel}</span> },
    { key: "storey", head: units === "us" ? "Storey" : "Storey, mm", isFigure: true, cell: ({ storeyHeight_mm }) => (storeyHeight_mm === null ? "" : lengthFigure(storeyHeight_mm, units)) },
    { key: "concrete", head: "Concrete", cell: ({ concrete }) => concrete ?? "" },
  ];
  return (
    <>
      <DataTable caption="Columns created" isCaptionHidden columns={heads} rows={columns.first} rowKey={({ gridRef, fromLevel }) => `${gridRef} ${fromLevel}`} />
      <ShownNote shown={columns.first.length} count={columns.count} />
    </>
  );
}
