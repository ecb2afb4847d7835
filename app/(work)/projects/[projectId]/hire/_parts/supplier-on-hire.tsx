import type { getOnHire } from "#lib/server/hire/get-hire.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { Link } from "#app/_ui/control/link.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { Money } from "#app/_ui/value/money.tsx";
import { paths } from "#app/paths.ts";
import { gapText } from "./charge-words.ts";

type OnHire = Extract<Awaited<ReturnType<typeof getOnHire>>, { ok: true }>["value"]["suppliers"][number];
type Row = OnHire["rows"][number];

export type SupplierOnHireProps = { readonly projectId: string; readonly currency: string; readonly supplier: OnHire; readonly on: string };

export function SupplierOnHire({ projectId, currency, supplier, on }: SupplierOnHireProps) {
  const month = { from: `${on.slice(0, 7)}-01`, to: on };
  return (
    <Section
      title={supplier.name}
      note={<>cost to date <Money minor={supplier.costToDate} currency={currency} withCurrency /></>}
      actions={<ButtonLink download href={paths.hirePart(projectId, "statement", { supplier: supplier.id, ...month })}>Statement of the month</ButtonLink>}
    >
      <div className="flex flex-col gap-3">
        {supplier.gaps.length > 0 ? (
          <Notice kind="problem" title="Some days cannot be charged yet.">
            <ul className="list-disc pl-5">{[...new Set(supplier.gaps.map(gapText))].slice(0, 6).map((text) => <li key={text}>{text}</li>)}</ul>
          </Notice>
        ) : null}
        <DataTable
          caption={`On hire from ${supplier.name}, the longest first`} isCaptionHidden columns={columnsFor(projectId, currency)} rows={supplier.rows}
          rowKey={(row) => `${row.docketId} ${row.itemId} ${row.endsOn ?? ""} ${row.isMissing}`}
          empty={<p className="border-2 border-dashed border-edge bg-sheet p-4 text-ink-soft">Everything from {supplier.name} has gone back.</p>}
        />
      </div>
    </Section>
  );
}

const columnsFor = (projectId: string, currency: string): DataColumn<Row>[] => [
  { key: "item", head: "Item", isRowHead: true, cell: ({ item, isMissing }) => <>{item}{isMissing ? <span className="block text-sm text-flag-deep">missing, unsettled</span> : null}</> },
  { key: "quantity", head: "Pieces", isFigure: true, cell: ({ quantity }) => quantity.toLocaleString("en") },
  { key: "docket", head: "Docket", cell: ({ docketId, docket }) => <Link href={paths.hireDocket(projectId, docketId)}>{docket}</Link> },
  { key: "since", head: "Charged since", cell: ({ since }) => <DayText day={since} /> },
  { key: "days", head: "Days", isFigure: true, cell: ({ days }) => days },
  { key: "cost", head: `Cost to date (${currency})`, isFigure: true, cell: ({ costToDate }) => <Money minor={costToDate} currency={currency} /> },
  { key: "next", head: `Next charge (${currency})`, cell: (row) => <NextCharge row={row} currency={currency} /> },
];

function NextCharge({ row, currency }: { readonly row: Row; readonly currency: string }) {
  return (
    <span className="flex flex-col">
      {row.next === null ? <span className="text-ink-soft">none to come</span> : <span><Money minor={row.next.amount} currency={currency} /> on <DayText day={row.next.on} /></span>}
      {row.endsOn === null ? null : <span className="text-sm text-ink-soft">called off, last day <DayText day={row.endsOn} /></span>}
    </span>
  );
}
