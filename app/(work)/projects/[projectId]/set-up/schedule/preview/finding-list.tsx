import type { Finding } from "#lib/trade/schedule/table/raw-lift.ts";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { MOST_SHOWN } from "./shorten-preview.ts";
import { ShownNote } from "./shown-note.tsx";

type Numbered = Finding & { readonly place: number };

const where = ({ source }: Finding) => (source === null ? "Whole file" : <>{source.sheet}, row {source.row}<span className="block text-sm text-ink-soft">cell {source.cell}</span></>);

const COLUMNS: readonly DataColumn<Numbered>[] = [
  { key: "where", head: "Where", isRowHead: true, cell: where },
  { key: "what", head: "What", cell: ({ message }) => message },
  { key: "todo", head: "What to do", cell: ({ remedy }) => remedy },
];

/** Each finding with its place in the file and what to do about it. */
export function FindingList({ caption, findings }: { readonly caption: string; readonly findings: readonly Finding[] }) {
  const rows = findings.slice(0, MOST_SHOWN).map((finding, place) => ({ ...finding, place }));
  return (
    <>
      <DataTable caption={caption} isCaptionHidden columns={COLUMNS} rows={rows} rowKey={({ place }) => String(place)} />
      <ShownNote shown={rows.length} count={findings.length} />
    </>
  );
}
