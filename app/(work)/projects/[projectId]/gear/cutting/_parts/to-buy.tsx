import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";

export type StockRow = { readonly key: string; readonly what: string; readonly count: number; readonly fromRack: boolean; readonly each: number; readonly sum: number };

/** What the plan takes from the rack and what has to be bought, with the sum of the latter. */
export function ToBuy({ rows, money }: { readonly rows: readonly StockRow[]; readonly money: (minor: number) => string }) {
  const columns: readonly DataColumn<StockRow>[] = [
    { key: "what", head: "Stock", isRowHead: true, cell: ({ what }) => what },
    { key: "count", head: "Count", isFigure: true, cell: ({ count }) => count },
    { key: "from", head: "From", cell: ({ fromRack }) => (fromRack ? "rack" : "to buy") },
    { key: "each", head: "Each", isFigure: true, cell: ({ each }) => money(each) },
    { key: "sum", head: "Sum", isFigure: true, cell: ({ sum, fromRack }) => (fromRack ? "–" : money(sum)) },
  ];
  const total = rows.reduce((sum, row) => sum + (row.fromRack ? 0 : row.sum), 0);
  return (
    <DataTable
      caption="Stock for this plan" columns={columns} rows={rows} rowKey={({ key }) => key}
      foot={<tr><th scope="row" colSpan={4} className="px-3 py-2 text-left">To buy</th><td className="whitespace-nowrap px-3 py-2 text-right">{money(total)}</td></tr>}
    />
  );
}
