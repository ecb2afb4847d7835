import type { getDockets } from "#lib/server/hire/get-hire.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { amountText } from "#app/_ui/value/money.tsx";
import { paths } from "#app/paths.ts";
import { DOCKET_WORDS, openText } from "../_parts/docket-words.ts";

type Docket = Extract<Awaited<ReturnType<typeof getDockets>>, { ok: true }>["value"]["dockets"][number];
export type DocketTableProps = {
  readonly caption: string; readonly projectId: string; readonly dockets: readonly Docket[]; readonly names: ReadonlyMap<string, string>; readonly currency: string;
};

export function DocketTable({ caption, projectId, dockets, names, currency }: DocketTableProps) {
  const columns: DataColumn<Docket>[] = [
    { key: "number", head: "Docket", isRowHead: true, cell: ({ id, number }) => <span className="whitespace-nowrap"><Link href={paths.hireDocket(projectId, id)}>{number}</Link></span> },
    { key: "kind", head: "Kind", cell: ({ kind, reversal }) => <>{DOCKET_WORDS[kind]}{reversal ? <span className="block text-sm font-semibold text-flag-deep">reversed</span> : null}</> },
    { key: "on", head: "Day", cell: ({ on }) => <DayText day={on} /> },
    { key: "supplier", head: "Supplier", cell: ({ supplierId }) => names.get(supplierId) ?? "" },
    { key: "what", head: "What", cell: (docket) => contentText(docket, currency) },
    { key: "open", head: "Open", cell: ({ open }) => <ul>{open.map((part) => <li key={`${part.code} ${part.itemId ?? ""}`}>{openText(part)}</li>)}</ul> },
    { key: "photos", head: "Photos", isFigure: true, cell: ({ photos }) => photos.length || "" },
  ];
  return <DataTable caption={caption} isCaptionHidden columns={columns} rows={dockets} rowKey={({ id }) => id} />;
}

function contentText({ kind, lines, amount, share, until }: Docket, currency: string): string {
  if (kind === "credit") return `${currency} ${amountText(amount ?? 0, currency)}`;
  const what = lines.map(({ quantity, item }) => (kind === "stand-down" ? item : `${quantity} × ${item}`)).join(", ");
  return kind === "stand-down" ? `${what || "everything"} at ${(share ?? 0) / 100} % until ${until ?? ""}` : what;
}
