import type { Check } from "#lib/trade/shutter/form-set.ts";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";
import { checkValue, percent } from "#app/_ui/value/working-words.ts";

const ELEMENTS: Readonly<Record<Check["element"], string>> = { ply: "Ply", backing: "Backing timber", clamp: "Clamp", arm: "Clamp arm", wedge: "Wedge" };

/** Every check of the form set: what is asked, what can be carried, and where. */
export function CheckTable({ checks, units }: { readonly checks: readonly Check[]; readonly units: Units }) {
  const sources = [...new Set(checks.map(({ source }) => source))];
  const columns: readonly DataColumn<Check>[] = [
    { key: "element", head: "Part", isRowHead: true, cell: ({ element, faces }) => <>{ELEMENTS[element]} <span className="whitespace-nowrap font-normal text-ink-soft">faces {faces}</span></> },
    { key: "what", head: "Check", cell: ({ what }) => what },
    { key: "demand", head: "Demand", isFigure: true, cell: ({ demand, unit }) => checkValue(demand, unit, units) },
    { key: "capacity", head: "Allowed", isFigure: true, cell: ({ capacity, unit }) => checkValue(capacity, unit, units) },
    { key: "use", head: "Used", isFigure: true, cell: ({ utilisation }) => <strong className="font-semibold">{percent(utilisation)}</strong> },
    { key: "at", head: "Height", isFigure: true, cell: ({ at }) => (at === 0 ? "foot" : lengthFigure(Math.round(at), units)) },
    { key: "source", head: "Source", isFigure: true, cell: ({ source }) => `(${sources.indexOf(source) + 1})` },
  ];
  return (
    <>
      <DataTable caption="Checks" isCaptionHidden columns={columns} rows={checks} rowKey={({ element, what, faces }) => `${element} ${what} ${faces}`} />
      <ol aria-label="Sources" className="mt-2 text-sm text-ink-soft">
        {sources.map((source, index) => <li key={source}>({index + 1}) {source}</li>)}
      </ol>
    </>
  );
}
