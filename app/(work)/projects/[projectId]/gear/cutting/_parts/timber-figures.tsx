import { groupBy } from "#lib/kernel/group-by.ts";
import type { TimberLayout, TimberPlan, TimberStock } from "#lib/trade/planning/timber/timber-order.ts";
import { TimberBar } from "#app/_ui/drawing/cutting/timber-bar.tsx";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";
import { labelOfPart, type Pieces } from "./piece-words.ts";

export type TimberFiguresProps = { readonly plan: TimberPlan; readonly stock: readonly TimberStock[]; readonly pieces: Pieces; readonly units: Units };

/** Stock lengths as bars, equal ones once with their count. */
export function TimberFigures({ plan, stock, pieces, units }: TimberFiguresProps) {
  const size = (value: number): string => lengthFigure(value, units);
  const lengthOf = (stockId: string): number => stock.find(({ id }) => id === stockId)?.lengthMm ?? 0;
  const longestMm = Math.max(1, ...plan.layouts.map(({ stockId }) => lengthOf(stockId)));
  return (
    <ul className="border-2 border-ink bg-sheet print:border">
      {plan.layouts.map((layout, index) => (
        <li key={index} className="keep flex items-center gap-3 border-b border-rule-soft px-3 py-1.5 last:border-b-0 print:py-0.5">
          <span className="w-20 shrink-0 text-right"><strong className="font-semibold">{layout.count}</strong>{` × ${size(lengthOf(layout.stockId))}`}</span>
          <div tabIndex={0} role="group" aria-label={`${layout.count} of ${size(lengthOf(layout.stockId))}: drawing`} className="min-w-0 grow overflow-x-auto print:overflow-visible">
            <TimberBar layout={layout} stockMm={lengthOf(layout.stockId)} longestMm={longestMm} lengthText={size} labelOf={labelOfPart(pieces)} />
            <p className="text-sm text-ink-soft print:text-xs">{cutsInWords(layout, labelOfPart(pieces), size)}</p>
          </div>
        </li>
      ))}
    </ul>
  );
}

/** In cutting order, equal pieces together: the bar has no room to name the short ones. */
function cutsInWords({ cuts }: TimberLayout, labelOf: (partId: string) => string, size: (valueMm: number) => string): string {
  const alike = groupBy(cuts, ({ partId }) => partId);
  return [...alike].map(([partId, same]) => `${same.length} × ${size(same[0]?.lengthMm ?? 0)} ${labelOf(partId)}`).join(", ");
}
