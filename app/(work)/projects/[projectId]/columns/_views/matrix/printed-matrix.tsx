"use client";

import { useMemo } from "react";
import type { SheetColumn, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { useIsPrinting } from "../state/use-is-printing.ts";
import { idAt, layMatrix } from "./lay-matrix.ts";

/** So many positions fit across a sheet of paper held upright. */
const ACROSS = 16;
/** So many levels stay together on a page; more run on over the next under the same head. */
const ON_ONE_PAGE = 25;

export type PrintedMatrixProps = { readonly columns: readonly SheetColumn[]; readonly levels: readonly SheetLevel[] };

/** On paper the whole matrix, a strip of positions under the other; drawn only while printing. */
export function PrintedMatrix({ columns, levels }: PrintedMatrixProps) {
  const isPrinting = useIsPrinting();
  const drawn = useMemo(() => (isPrinting ? { matrix: layMatrix(columns, columns, levels), byId: new Map(columns.map((column) => [column.id, column])) } : null), [isPrinting, columns, levels]);
  if (!drawn) return null;
  const { matrix, byId } = drawn;
  const strips = Array.from({ length: Math.ceil(matrix.places.length / ACROSS) }, (_, index) => matrix.places.slice(index * ACROSS, (index + 1) * ACROSS));
  return (
    <div className="hidden print:block">
      {strips.map((places, strip) => (
        <table key={places[0]} className={`mb-4 text-xs ${matrix.levels.length <= ON_ONE_PAGE ? "keep" : ""}`}>
          <thead><tr><th className="w-20 pr-2 text-left">Level</th>{places.map((place) => <th key={place} className="px-0.5">{place}</th>)}</tr></thead>
          <tbody>
            {matrix.levels.map((level, row) => (
              <tr key={level.id}>
                <th className="pr-2 text-left font-semibold">{level.name}</th>
                {places.map((place, index) => {
                  const column = byId.get(idAt(matrix, { row, place: strip * ACROSS + index }) ?? "");
                  return <td key={place} className="border p-1 text-center">{column ? <span className="inline-block align-middle"><ColumnSign {...column} size={26} /></span> : null}</td>;
                })}
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </div>
  );
}
