import type { ClampLayoutTold } from "#lib/contracts/workings/clamp-layout.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { lengthFigure, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { percent } from "#app/_ui/value/working-words.ts";
import { LEFT_OUT } from "../../_parts/calculator.ts";
import { ELEMENTS } from "./clamp-layout-words.ts";

type Row = ClampLayoutTold["forces"][number] & { readonly index: number; readonly gapBelow: number; readonly rest: ClampLayoutTold["left_out"][number] | undefined };

/** From the top down, as they stand on the drawing, each with what happens where it is left out. */
export function ClampRows({ told, units, query }: { readonly told: ClampLayoutTold; readonly units: Units; readonly query: URLSearchParams }) {
  const rows = told.forces
    .map((force, index): Row => ({ ...force, index, gapBelow: force.height_mm - (told.forces[index - 1]?.height_mm ?? 0), rest: told.left_out.find(({ height_mm }) => height_mm === force.height_mm) }))
    .reverse();
  const columns: readonly DataColumn<Row>[] = [
    { key: "number", head: "No.", isRowHead: true, cell: ({ index }) => index + 1 },
    { key: "height", head: "Height", isFigure: true, cell: ({ height_mm }) => <strong className="font-semibold">{lengthFigure(height_mm, units)}</strong> },
    { key: "gap", head: "Gap below", isFigure: true, cell: ({ gapBelow }) => lengthFigure(gapBelow, units) },
    { key: "across", head: "Force A, C", isFigure: true, cell: ({ across_kN }) => quantityText(across_kN, "kN", units) },
    { key: "along", head: "Force B, D", isFigure: true, cell: ({ along_kN }) => quantityText(along_kN, "kN", units) },
    { key: "use", head: "Used", isFigure: true, cell: ({ utilisation }) => <span className={utilisation > 1 ? "font-bold text-flag-deep" : ""}>{percent(utilisation)}</span> },
    ...(told.left_out.length === 0 ? [] : [{ key: "without", head: "Left out", cell: ({ index, rest }: Row) => <WithoutIt index={index} rest={rest} query={query} /> }]),
  ];
  return <DataTable caption="Clamps, from the top down" columns={columns} rows={rows} rowKey={({ index }) => String(index)} />;
}

function WithoutIt({ index, rest, query }: { readonly index: number; readonly rest: Row["rest"]; readonly query: URLSearchParams }) {
  if (rest === undefined) return "no answer";
  const asked = new URLSearchParams(query);
  asked.set(LEFT_OUT, String(index));
  return (
    <>
      <span className={`whitespace-nowrap ${rest.passes ? "" : "font-semibold text-flag-deep"}`}>{rest.passes ? "still holds" : <>{ELEMENTS[rest.worst].toLowerCase()}<span className="print:hidden"> breaks</span></>}, {percent(rest.utilisation)}</span>{" "}
      <Link href={`?${asked.toString()}#${LEFT_OUT}`} className="no-print inline-flex min-h-8 items-center" aria-label={`Show the layout without clamp ${index + 1}`}>show</Link>
    </>
  );
}
