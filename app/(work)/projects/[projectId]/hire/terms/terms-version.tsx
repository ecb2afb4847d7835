import type { getTerms } from "#lib/server/hire/get-hire.ts";
import { DataTable } from "#app/_ui/page/data-table.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { amountText, rateText } from "#app/_ui/value/money.tsx";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { reverseTermsAction } from "../_parts/actions.ts";
import { ReverseForm } from "../_parts/reverse-form.tsx";
import { termsText } from "../_parts/terms-words.ts";

type Version = Extract<Awaited<ReturnType<typeof getTerms>>, { ok: true }>["value"]["terms"][number];
export type TermsVersionProps = {
  readonly projectId: string; readonly timeZone: string; readonly version: Version; readonly isInForce: boolean; readonly isAhead: boolean; readonly maySettle: boolean;
};

/** One version in words and figures; the one in force lies open, earlier ones can be opened. */
export function TermsVersion({ projectId, timeZone, version, isInForce, isAhead, maySettle }: TermsVersionProps) {
  const { currency, reversal } = version;
  const price = (minor: number | null): string => (minor === null ? "–" : amountText(minor, currency));
  const standing = reversal ? "reversed" : isInForce ? "in force" : isAhead ? "ahead" : "earlier";
  return (
    <details open={isInForce || isAhead} className="border-2 border-ink bg-sheet">
      <summary className="min-h-hand cursor-pointer px-4 py-2 font-semibold">Terms from <DayText day={version.validFrom} />: {standing}</summary>
      <div className="flex flex-col gap-4 border-t-2 border-ink p-4">
        {reversal ? <p className="border-l-4 border-flag pl-2">Reversed by {reversal.by}, <TimeText at={reversal.at} timeZone={timeZone} />: {reversal.reason}</p> : null}
        <ul className="list-disc pl-5">{termsText({ ...version, workingWeekdays: [...version.workingWeekdays], holidays: [...version.holidays], ladder: version.ladder as never }, currency).map((text) => <li key={text}>{text}</li>)}</ul>
        <DataTable
          caption={`Rates and prices a piece, in ${currency}`} rows={version.rates} rowKey={({ itemId }) => itemId}
          columns={[
            { key: "item", head: "Item", isRowHead: true, cell: ({ item, supplierName }) => <>{item}{supplierName === null ? null : <span className="block text-sm font-normal text-ink-soft">{supplierName}</span>}</> },
            { key: "day", head: "Day", isFigure: true, cell: ({ perDay }) => rateText(perDay, currency) },
            { key: "week", head: "Week", isFigure: true, cell: ({ perWeek }) => rateText(perWeek, currency) },
            { key: "month", head: "Month", isFigure: true, cell: ({ perMonth }) => rateText(perMonth, currency) },
            { key: "minimum", head: "Least days", isFigure: true, cell: ({ minimumDays }) => minimumDays || "–" },
            { key: "loss", head: "Loss", isFigure: true, cell: ({ lossPrice }) => price(lossPrice) },
            { key: "damage", head: "Damage", isFigure: true, cell: ({ damagePrice }) => price(damagePrice) },
            { key: "cleaning", head: "Cleaning", isFigure: true, cell: ({ cleaningPrice }) => price(cleaningPrice) },
          ]}
        />
        <p className="text-sm text-ink-soft">Entered by {version.by}, <TimeText at={version.recordedAt} timeZone={timeZone} /></p>
        {maySettle && !reversal ? <div className="no-print"><ReverseForm projectId={projectId} subjectId={version.id} what={`terms from ${version.validFrom}`} send={reverseTermsAction} /></div> : null}
      </div>
    </details>
  );
}
