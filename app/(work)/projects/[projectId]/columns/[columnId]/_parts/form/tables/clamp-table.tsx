import type { ClampLayout } from "#lib/trade/shutter/form-set.ts";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { Quantity } from "#app/_ui/value/quantity.tsx";
import { lengthFigure, quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { clampRows, type ClampRow } from "./clamp-rows.ts";
import { cutSize } from "./cut-size.ts";
import { percent } from "#app/_ui/value/working-words.ts";

export type ClampTableProps = { readonly clamps: ClampLayout; readonly formHeight: number; readonly units: Units };

/** More clamps than this would take too much of the printed page as a table; they are listed in two columns there. */
const MOST_AS_TABLE = 8;
const isLong = (count: number): boolean => count > MOST_AS_TABLE;

/** How many rows the clamps take on paper. */
export const printedRows = (count: number): number => (isLong(count) ? Math.ceil(count / 2) + 1 : count);

/** Clamps from the top down, as they stand on the drawing; heights are of the bar's centre above the foot of the form. */
export function ClampTable({ clamps, formHeight, units }: ClampTableProps) {
  const force = (value: number) => <Quantity value={value} unit="kN" units={units} />;
  const columns: readonly DataColumn<ClampRow>[] = [
    { key: "number", head: "No.", isRowHead: true, cell: ({ number }) => number },
    { key: "height", head: "Height", isFigure: true, cell: ({ height }) => <strong className="font-semibold">{lengthFigure(height, units)}</strong> },
    { key: "gap", head: "Gap below", isFigure: true, cell: ({ gapBelow }) => cutSize(gapBelow, units) },
    { key: "ac", head: "Force A, C", isFigure: true, cell: ({ facesAC }) => force(facesAC) },
    { key: "bd", head: "Force B, D", isFigure: true, cell: ({ facesBD }) => force(facesBD) },
    { key: "use", head: "Used", isFigure: true, cell: ({ utilisation }) => percent(utilisation) },
  ];
  const { kind, heights, reason } = clamps;
  const top = heights.at(-1) ?? 0;
  const rows = clampRows(clamps);
  const caption = `${heights.length} clamps: ${kind.name}, up to ${quantityText(kind.sideCapacity, "kN", units)} per side`;
  return (
    <div>
      <div className={isLong(rows.length) ? "print:hidden" : ""}>
        <DataTable caption={caption} columns={columns} rows={rows} rowKey={({ number }) => String(number)} />
      </div>
      {isLong(rows.length) ? <ClampLines caption={caption} rows={rows} units={units} /> : null}
      <p className="mt-1 text-sm text-ink-soft">
        Heights above the foot of the form{units === "us" ? "" : ", mm"}; top clamp {cutSize(formHeight - top, units)} below the top of the form. {reason}
      </p>
    </div>
  );
}

function ClampLines({ caption, rows, units }: { readonly caption: string; readonly rows: readonly ClampRow[]; readonly units: Units }) {
  return (
    <div className="hidden border border-ink px-1 print:block">
      <p>{caption}; height, gap below, larger force, used</p>
      <ol className="columns-2 gap-3">
        {rows.map(({ number, height, gapBelow, facesAC, facesBD, utilisation }) => (
          <li key={number} className="grid grid-cols-[1.4em_1.2fr_1fr_1.3fr_0.9fr] gap-1 text-right text-[7pt] leading-tight">
            <span>{number}</span><strong>{lengthFigure(height, units)}</strong><span>{cutSize(gapBelow, units)}</span>
            <span>{quantityText(Math.max(facesAC, facesBD), "kN", units)}</span><span>{percent(utilisation)}</span>
          </li>
        ))}
      </ol>
    </div>
  );
}
