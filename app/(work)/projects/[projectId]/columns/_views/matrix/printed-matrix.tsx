"use client";

import { useEffect, useMemo, useState } from "react";
import { flushSync } from "react-dom";
import type { SheetColumn, SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { matrixOf } from "#app/(work)/projects/[projectId]/columns/_views/place-columns.ts";

const ACROSS = 20;

/** On paper the whole matrix, twenty positions to a strip; drawn only while printing. */
export function PrintedMatrix({ columns, levels }: { readonly columns: readonly SheetColumn[]; readonly levels: readonly SheetLevel[] }) {
  const [isPrinting, setPrinting] = useState(false);
  useEffect(() => {
    const begin = () => flushSync(() => setPrinting(true));
    const end = () => setPrinting(false);
    window.addEventListener("beforeprint", begin);
    window.addEventListener("afterprint", end);
    return () => {
      window.removeEventListener("beforeprint", begin);
      window.removeEventListener("afterprint", end);
    };
  }, []);
  const matrix = useMemo(() => (isPrinting ? matrixOf(columns, levels) : null), [isPrinting, columns, levels]);
  if (!matrix) return null;
  const strips = Array.from({ length: Math.ceil(matrix.places.length / ACROSS) }, (_, index) => matrix.places.slice(index * ACROSS, (index + 1) * ACROSS));
  return (
    <div className="hidden print:block">
      {strips.map((places) => (
        <table key={places[0]} className="keep mb-4 text-xs">
          <thead><tr><th className="pr-2 text-left">Level</th>{places.map((place) => <th key={place} className="px-1">{place}</th>)}</tr></thead>
          <tbody>
            {matrix.levels.map((level) => (
              <tr key={level.id}>
                <th className="pr-2 text-left">{level.name}</th>
                {places.map((place) => {
                  const column = matrix.at(level.id, place);
                  return <td key={place} className="border p-0.5">{column ? <ColumnSign {...column} size={26} /> : null}</td>;
                })}
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </div>
  );
}
