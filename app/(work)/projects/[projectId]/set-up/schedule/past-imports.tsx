import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { paths } from "#app/paths.ts";
import type { SetUp } from "../_parts/set-up-page.tsx";

type Row = SetUp["imports"][number];
export type PastImportsProps = { readonly project: SetUp["project"]; readonly imports: readonly Row[]; readonly canDownload: boolean };

/** What was taken in before, by whom, with the file as it was. */
export function PastImports({ project, imports, canDownload }: PastImportsProps) {
  const columns: readonly DataColumn<Row>[] = [
    {
      key: "file", head: "File", isRowHead: true,
      cell: ({ id, fileName }) => (canDownload ? <a href={paths.scheduleImport(project.id, id)} download className="inline-flex min-h-hand min-w-40 items-center break-all">{fileName}</a> : fileName),
    },
    { key: "at", head: "Imported", cell: ({ importedAt }) => <TimeText at={importedAt} timeZone={project.timeZone} /> },
    { key: "by", head: "By", cell: ({ by }) => by },
    { key: "created", head: "Created", isFigure: true, cell: ({ created }) => created },
    { key: "changed", head: "Changed", isFigure: true, cell: ({ changed }) => changed },
  ];
  return (
    <DataTable
      caption="Past imports" isCaptionHidden columns={columns} rows={imports} rowKey={({ id }) => id}
      empty={<p className="text-ink-soft">No schedule has been imported into this project yet.</p>}
    />
  );
}
