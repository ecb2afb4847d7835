import type { Panel } from "#lib/trade/shutter/form-set.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { Quantity } from "#app/_ui/value/quantity.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { cutSize } from "./cut-size.ts";

type PanelKind = Panel & { readonly faces: string };

/** Panels that are alike in everything are told once: "A, C". */
function alike(panels: readonly Panel[]): readonly PanelKind[] {
  const kinds = groupBy(panels, ({ width, height, timberCount, timberCentres, weight }) => [width, height, timberCount, timberCentres, Math.round(weight * 10)].join(" "));
  return [...kinds.values()].flatMap((own) => (own[0] ? [{ ...own[0], faces: own.map(({ face }) => face).join(", ") }] : []));
}

/** The four panels: overall size, timbers and weight. */
export function PanelTable({ panels, units }: { readonly panels: readonly Panel[]; readonly units: Units }) {
  const columns: readonly DataColumn<PanelKind>[] = [
    { key: "face", head: "Panel", isRowHead: true, cell: ({ faces }) => faces },
    { key: "size", head: "Ply size", isFigure: true, cell: ({ width, height }) => `${cutSize(width, units)} × ${cutSize(height, units)}` },
    { key: "timbers", head: "Timbers, centres", isFigure: true, cell: ({ timberCount, timberCentres }) => `${timberCount} at ${cutSize(timberCentres, units)}` },
    { key: "weight", head: "Each", isFigure: true, cell: ({ weight }) => <Quantity value={weight} unit="kg" units={units} /> },
  ];
  return <DataTable caption={`Panels${units === "us" ? "" : ", mm"}`} columns={columns} rows={alike(panels)} rowKey={({ faces }) => faces} />;
}
