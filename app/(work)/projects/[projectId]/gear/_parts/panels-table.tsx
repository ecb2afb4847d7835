import type { PanelsPage } from "#lib/server/gear/pages/get-panels.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { DataTable } from "#app/_ui/page/data-table.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { Quantity } from "#app/_ui/value/quantity.tsx";
import { paths } from "#app/paths.ts";
import { moneyText } from "./money.ts";

type Panel = PanelsPage["panels"][number];

const standing = ({ life }: Panel): string =>
  life.ended ? life.ended.kind : life.demoted ? "demoted" : life.turnedAt ? "turned" : life.uses > 0 ? "in use" : "new";

export function PanelsTable({ projectId, panels, units }: { readonly projectId: string; readonly panels: readonly Panel[]; readonly units: Units }) {
  return (
    <DataTable
      caption="Panels, each one by itself" rows={panels} rowKey={({ itemId }) => itemId}
      columns={[
        { key: "name", head: "Panel", isRowHead: true, cell: ({ itemId, name }) => <Link href={paths.gearPanel(projectId, itemId)} className="inline-flex min-h-hand items-center sm:min-h-0">{name}</Link> },
        { key: "size", head: "Width × height", isFigure: true, cell: ({ widthMm, heightMm }) => <><Quantity value={widthMm} unit="mm" units={units} /> × <Quantity value={heightMm} unit="mm" units={units} /></> },
        { key: "place", head: "Where", cell: ({ place, placeKind }) => (placeKind === "column" ? `Column ${place}` : (place ?? "nowhere")) },
        { key: "set", head: "Set", cell: ({ set, face }) => (set === null ? "–" : `${set}, face ${face}`) },
        { key: "uses", head: "Uses", isFigure: true, cell: ({ life }) => life.uses },
        { key: "repairs", head: "Repairs", isFigure: true, cell: ({ life }) => life.repairs },
        { key: "standing", head: "Standing", cell: standing },
        { key: "cost", head: "Cost per use", isFigure: true, cell: ({ life, currency }) => (life.costPerUse === null ? "–" : moneyText(life.costPerUse, currency)) },
      ]}
    />
  );
}
