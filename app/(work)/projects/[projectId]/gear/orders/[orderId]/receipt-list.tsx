import type { OrderPage } from "#lib/server/gear/orders/get-orders.ts";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { ReverseForm } from "../../../hire/_parts/reverse-form.tsx";
import { reverseReceiptAction } from "../_parts/actions.ts";

type Props = {
  readonly projectId: string; readonly timeZone: string; readonly receipts: OrderPage["order"]["receipts"]; readonly nameOf: (itemId: string) => string; readonly canReverse: boolean;
};

/** What came, docket by docket; one taken back stays in sight. */
export function ReceiptList({ projectId, timeZone, receipts, nameOf, canReverse }: Props) {
  return (
    <ol className="flex flex-col border-2 border-ink bg-sheet">
      {receipts.map(({ id, number, on, by, place, reason, reversal, lines }) => (
        <li key={id} className={`flex flex-wrap items-start justify-between gap-x-4 gap-y-2 border-b border-rule-soft px-4 py-3 last:border-b-0 ${reversal ? "text-ink-soft" : ""}`}>
          <div className="min-w-0 grow basis-72">
            <p><strong className="font-semibold">Docket {number}</strong>, <DayText day={on} />{reversal ? <span className="ml-2 border border-current px-1 text-xs font-bold uppercase tracking-wider">reversed</span> : null}</p>
            <ul className={reversal ? "line-through" : ""}>
              {lines.map(({ itemId, taken, short, refused }) => (
                <li key={itemId}>{[taken > 0 ? `${taken} taken` : "none taken", ...(short > 0 ? [`${short} short`] : []), ...(refused > 0 ? [`${refused} sent back`] : [])].join(", ")}: {nameOf(itemId)}</li>
              ))}
            </ul>
            {reason ? <p className="text-sm text-ink-soft">{reason}</p> : null}
            <p className="text-sm text-ink-soft">Counted by {by}{place ? `, to ${place}` : ""}</p>
            {reversal ? <p className="text-sm">Reversed by {reversal.by}, <TimeText at={reversal.at} timeZone={timeZone} />: {reversal.reason}</p> : null}
          </div>
          {canReverse && !reversal ? <ReverseForm projectId={projectId} subjectId={id} what={`docket ${number}`} send={reverseReceiptAction} /> : null}
        </li>
      ))}
    </ol>
  );
}
