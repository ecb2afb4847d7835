import type { CuttingLine, CuttingPart } from "#lib/trade/shutter/form-set.ts";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { cutSize } from "./cut-size.ts";

const PARTS: Readonly<Record<CuttingPart, string>> = {
  "ply": "Ply", "backing": "Backing timber", "fillet": "Fillet", "base-cleat": "Base cleat", "joint-cleat": "Joint cleat",
};

/** Every piece of the form set, identical ones counted together. */
export function CuttingTable({ cutting, units }: { readonly cutting: readonly CuttingLine[]; readonly units: Units }) {
  const size = (value: number): string => cutSize(value, units);
  const columns: readonly DataColumn<CuttingLine>[] = [
    { key: "part", head: "Piece", isRowHead: true, cell: ({ part, material }) => <><span className="whitespace-nowrap">{PARTS[part]}</span><span className="block text-sm font-normal text-ink-soft print:hidden">{material}</span></> },
    { key: "count", head: "Count", isFigure: true, cell: ({ count }) => count },
    { key: "length", head: "Length", isFigure: true, cell: ({ length }) => size(length) },
    { key: "width", head: "Width", isFigure: true, cell: ({ width }) => size(width) },
    { key: "thickness", head: "Thick", isFigure: true, cell: ({ thickness }) => size(thickness) },
    { key: "faces", head: "Faces", cell: ({ faces }) => <span className="whitespace-nowrap">{faces.join(" ")}</span> },
  ];
  return (
    <DataTable
      caption={`Cutting list${units === "us" ? "" : ", mm"}`} columns={columns} rows={cutting}
      rowKey={({ part, length, width, thickness }) => `${part} ${length} ${width} ${thickness}`}
    />
  );
}
