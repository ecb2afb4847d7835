import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { changeText, stageWords } from "./preview-words.ts";
import type { ColumnToChange, Shown } from "./shorten-preview.ts";
import { ShownNote } from "./shown-note.tsx";

/** The first stage at which a change of size means work done for nothing. */
const STOOD = 2;

export function ColumnsToChange({ columns, units }: { readonly columns: Shown<ColumnToChange>; readonly units: Units }) {
  const heads: readonly DataColumn<ColumnToChange>[] = [
    { key: "grid", head: "Grid", isRowHead: true, cell: ({ gridRef }) => gridRef },
    { key: "from", head: "From level", cell: ({ fromLevel }) => fromLevel },
    { key: "stage", head: "Stage", cell: ({ stage }) => <span className={stage >= STOOD ? "font-semibold text-flag-deep" : ""}>{stageWords(stage)}</span> },
    { key: "change", head: "Change", cell: ({ changes }) => changes.map((change) => changeText(change, units)).join("; ") },
    { key: "where", head: "In the file", cell: ({ source }) => `${source.sheet}, row ${source.row}` },
  ];
  return (
    <>
      <DataTable caption="Columns changed" isCaptionHidden columns={heads} rows={columns.first} rowKey={({ id }) => id} />
      <ShownNote shown={columns.first.length} count={columns.count} />
    </>
  );
}
