import { counts } from "#lib/trade/progress/column-state.ts";
import { STAGES } from "#lib/trade/progress/stages.ts";
import type { SheetColumn } from "#lib/contracts/columns-sheet.ts";
import { Quantity } from "#app/_ui/value/quantity.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import type { Amounts } from "../sheet/shown-amounts.ts";

export type StageCountsProps = { readonly columns: readonly SheetColumn[]; readonly amounts: Amounts; readonly units: Units };

/** How many of the shown columns stand at which stage, and what they measure. */
export function StageCounts({ columns, amounts, units }: StageCountsProps) {
  const { at, flagged, total } = counts(columns);
  const cells = [{ words: "not started", count: at.nothing }, ...STAGES.map((stage) => ({ words: stage, count: at[stage] })), { words: "queried or held", count: flagged }];
  return (
    <div className="flex flex-wrap items-baseline gap-x-5 gap-y-1 border-2 border-ink bg-sheet px-4 py-2">
      <p role="status" className="font-semibold">{total} {total === 1 ? "column" : "columns"} shown</p>
      <ul aria-label="By stage" className="flex flex-wrap gap-x-4 gap-y-1 text-sm">
        {cells.map(({ words, count }) => <li key={words} className={count === 0 ? "text-ink-soft max-sm:hidden" : ""}><strong>{count}</strong> {words}</li>)}
      </ul>
      <p className="text-sm">
        Contact area <Quantity value={amounts.contactArea_m2} unit="m2" units={units} />, concrete <Quantity value={amounts.volume_m3} unit="m3" units={units} />
        {amounts.unknown > 0 ? <> (without {amounts.unknown} whose form height is not known)</> : null}
      </p>
    </div>
  );
}
