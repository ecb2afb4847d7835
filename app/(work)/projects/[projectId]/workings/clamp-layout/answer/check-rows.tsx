import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";
import { checkValue, percent } from "#app/_ui/value/working-words.ts";
import { ELEMENTS, SIDES, type LayoutCheck } from "./clamp-layout-words.ts";

/** Every element where it is worst. */
export function CheckRows({ checks, units }: { readonly checks: readonly LayoutCheck[]; readonly units: Units }) {
  const columns: readonly DataColumn<LayoutCheck>[] = [
    { key: "element", head: "Part", isRowHead: true, cell: ({ element, what, side }) => <>{ELEMENTS[element]} <span className="whitespace-nowrap font-normal text-ink-soft">{side === null ? what : SIDES[side]}</span></> },
    { key: "demand", head: "Demand", isFigure: true, cell: ({ demand, unit }) => checkValue(demand, unit, units) },
    { key: "capacity", head: "Allowed", isFigure: true, cell: ({ capacity, unit }) => checkValue(capacity, unit, units) },
    { key: "use", head: "Used", isFigure: true, cell: ({ utilisation }) => <strong className={utilisation > 1 ? "text-flag-deep" : "font-semibold"}>{percent(utilisation)}</strong> },
    { key: "at", head: "Height", isFigure: true, cell: ({ at_mm }) => lengthFigure(Math.round(at_mm), units) },
  ];
  return <DataTable caption="Every part where it is worst" columns={columns} rows={checks} rowKey={({ element, what, side }) => `${element} ${what} ${side ?? ""}`} />;
}
