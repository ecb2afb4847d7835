import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getInvoice } from "#lib/server/hire/invoices.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { DataTable } from "#app/_ui/page/data-table.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { Money } from "#app/_ui/value/money.tsx";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../../../own-account.ts";
import { Refused } from "../../../../../refused.tsx";
import { reverseInvoiceAction } from "../../_parts/actions.ts";
import { evidenceFor } from "../../_parts/evidence.ts";
import { gapText } from "../../_parts/charge-words.ts";
import { ReverseForm } from "../../_parts/reverse-form.tsx";
import { DifferenceCard } from "./difference-card.tsx";

export const metadata: Metadata = { title: "Hire invoice" };

type Props = { readonly params: Promise<{ projectId: string; invoiceId: string }> };

export default async function InvoicePage({ params }: Props) {
  const [answer, account] = await Promise.all([getInvoice(await currentCaller(), await params), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, invoice, supplier, groups, totals, gaps, owners, me, today, dockets } = answer.value;
  const { currency } = project;
  const maySettle = account.ok && can(account.value.role, "hire.settle");
  const money = (minor: number) => <Money minor={minor} currency={currency} withCurrency />;
  const differing = groups.filter(({ guess }) => guess !== null);
  const agreed = groups.filter(({ guess }) => guess === null);
  return (
    <Page
      title={`Invoice ${invoice.number}`} subtitle={`${supplier.name} · ${project.name}`}
      facts={[
        { label: "Period", value: <><DayText day={invoice.from} /> to <DayText day={invoice.to} /></> },
        { label: "Asked", value: money(totals.theirs) }, { label: "By our books", value: money(totals.ours) },
        { label: "Asked too much", value: money(totals.over) }, { label: "Not asked for", value: money(totals.under) },
      ]}
      actions={
        <>
          {invoice.queries.length > 0 ? <ButtonLink kind="primary" download href={paths.hireInvoice(project.id, invoice.id, "letter")}>Query letter PDF</ButtonLink> : null}
          {invoice.fileName === null ? null : <ButtonLink download href={paths.hireInvoice(project.id, invoice.id, "file")}>Their file</ButtonLink>}
          <PrintButton />
        </>
      }
    >
      {invoice.reversal ? <Notice kind="problem" title="Reversed.">{invoice.reversal.by}, <TimeText at={invoice.reversal.at} timeZone={project.timeZone} />: {invoice.reversal.reason}</Notice> : null}
      {gaps.length > 0 ? <Notice kind="problem" title="Some days cannot be charged yet, so the comparison is not whole."><ul className="list-disc pl-5">{[...new Set(gaps.map(gapText))].slice(0, 6).map((text) => <li key={text}>{text}</li>)}</ul></Notice> : null}
      <Section title="Differences" note={differing.length === 0 ? "none: it agrees with our dockets" : `${differing.length}, the largest first`}>
        <div className="flex flex-col gap-4">
          {differing.map((group) => (
            <DifferenceCard
              key={group.key} project={{ id: project.id, currency }} invoiceId={invoice.id} group={group} owners={owners} me={me} today={today}
              query={invoice.queries.find(({ groupKey }) => groupKey === group.key) ?? null} canSettle={maySettle && invoice.reversal === null}
              evidence={evidenceFor(group, dockets, invoice.to)}
            />
          ))}
        </div>
      </Section>
      {agreed.length > 0 ? (
        <Section title="What agrees">
          <DataTable
            caption="Lines that agree" isCaptionHidden rows={agreed} rowKey={({ key }) => key}
            columns={[
              { key: "docket", head: "Docket", isRowHead: true, cell: ({ docket }) => docket ?? "–" },
              { key: "item", head: "What", cell: ({ item, theirs }) => item ?? theirs[0]?.text ?? "" },
              { key: "theirs", head: `Asked (${currency})`, isFigure: true, cell: ({ theirAmount }) => <Money minor={theirAmount} currency={currency} /> },
              { key: "ours", head: `By our books (${currency})`, isFigure: true, cell: ({ ourAmount }) => <Money minor={ourAmount} currency={currency} /> },
            ]}
          />
        </Section>
      ) : null}
      {maySettle && invoice.reversal === null ? <div className="no-print"><ReverseForm projectId={project.id} subjectId={invoice.id} what={`invoice ${invoice.number}`} send={reverseInvoiceAction} /></div> : null}
    </Page>
  );
}
