import { cutsByStage } from "#lib/trade/planning/sheets/cut-stages.ts";
import type { Sheet, SheetLayout, SheetPlan } from "#lib/trade/planning/sheets/sheet-order.ts";
import { SheetLayoutDrawing } from "#app/_ui/drawing/cutting/sheet-layout.tsx";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";
import { cutRows } from "./cut-rows.ts";
import { pieceLabel, type Pieces } from "./piece-words.ts";

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

type Shown = { readonly pieces: Pieces; readonly units: Units };
export type SheetFiguresProps = Shown & { readonly plan: SheetPlan; readonly sheets: readonly Sheet[] };

/** Every way a sheet is cut, with how many are cut alike. */
export function SheetFigures({ plan, sheets, ...shown }: SheetFiguresProps) {
  let before = 0;
  const numbered = plan.layouts.map((layout) => {
    const first = before + 1;
    before += layout.count;
    return { layout, first, last: before };
  });
  return (
    <div className="flex flex-col gap-6 print:gap-3">
      {numbered.map(({ layout, first, last }) => {
        const sheet = sheets.find(({ id }) => id === layout.sheetId);
        const title = first === last ? `Sheet ${first}` : `Sheets ${first} to ${last}, cut alike`;
        return sheet ? <SheetFigure key={first} title={title} sheet={sheet} layout={layout} {...shown} /> : null;
      })}
    </div>
  );
}

function SheetFigure({ title, sheet, layout, pieces, units }: Shown & { readonly title: string; readonly sheet: Sheet; readonly layout: SheetLayout }) {
  const size = (value: number): string => lengthFigure(value, units);
  const cuts = cutsByStage(sheet, layout);
  const wordsOf = ({ partId }: { readonly partId: string }) => {
    const piece = pieces[partId];
    return piece ? { label: pieceLabel(piece), size: `${size(piece.lengthMm)} × ${size(piece.widthMm)}` } : { label: partId, size: "" };
  };
  const rows = cutRows(cuts);
  return (
    <figure aria-label={title} className="keep min-w-0 border-2 border-ink bg-sheet print:border">
      <figcaption className="flex flex-wrap items-baseline justify-between gap-x-4 border-b border-ink px-3 py-1.5">
        <strong className="font-semibold">{title}</strong>
        <span className="text-sm text-ink-soft">{`${counted(layout.parts.length, "piece")}, ${counted(cuts.length, "cut")}, ${counted(rows.length, "setting")} of the fence`}</span>
      </figcaption>
      <div tabIndex={0} role="group" aria-label={`${title}: drawing`} className="overflow-x-auto p-2 print:overflow-visible print:p-1">
        <SheetLayoutDrawing sheet={sheet} layout={layout} cuts={cuts} wordsOf={wordsOf} lengthText={size} title={title} />
      </div>
      <ol className="flex flex-wrap gap-x-5 gap-y-1 border-t border-ink px-3 py-2 text-sm print:text-xs">
        {rows.map(({ first, last, what, fenceMm }) => (
          <li key={first} className="whitespace-nowrap"><span className="font-semibold">{first === last ? first : `${first}–${last}`}</span>{` ${what} at ${size(fenceMm)}`}</li>
        ))}
      </ol>
    </figure>
  );
}
