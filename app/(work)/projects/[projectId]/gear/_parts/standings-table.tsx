import { Link } from "#app/_ui/control/link.tsx";
import { DataTable } from "#app/_ui/page/data-table.tsx";
import { paths } from "#app/paths.ts";
import { layStandings, type Standing } from "./standings.ts";

export function StandingsTable({ projectId, standings, caption }: { readonly projectId: string; readonly standings: readonly Standing[]; readonly caption: string }) {
  const { headings, rows } = layStandings(standings);
  return (
    <DataTable
      caption={caption} rows={rows} rowKey={({ key }) => key}
      columns={[
        { key: "item", head: "Item", isRowHead: true, cell: ({ itemId, name }) => <Link href={itemId === null ? paths.gearPanels(projectId) : paths.gearItem(projectId, itemId)} className="inline-flex min-h-hand items-center sm:min-h-0">{name}</Link> },
        { key: "all", head: "At hand", isFigure: true, cell: ({ onSite }) => <strong>{onSite}</strong> },
        ...headings.map(({ key, label }) => ({ key, head: label, isFigure: true, cell: ({ at }: { at: ReadonlyMap<string, number> }) => at.get(key) ?? "–" })),
      ]}
    />
  );
}
