import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getInvoices } from "#lib/server/hire/invoices.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { Link } from "#app/_ui/control/link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { DataTable } from "#app/_ui/page/data-table.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { Money } from "#app/_ui/value/money.tsx";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../../own-account.ts";
import { Refused } from "../../../../refused.tsx";
import { TableLinks } from "../_parts/table-links.tsx";

export const metadata: Metadata = { title: "Hire invoices" };

export default async function InvoicesPage({ params }: { readonly params: Promise<{ projectId: string }> }) {
  const { projectId } = await params;
  const [answer, account] = await Promise.all([getInvoices(await currentCaller(), { projectId }), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, invoices, suppliers } = answer.value;
  const { currency } = project;
  const maySettle = account.ok && can(account.value.role, "hire.settle");
  const money = (minor: number) => <Money minor={minor} currency={currency} />;
  const enter = maySettle && suppliers.length > 0
    ? <><ButtonLink kind="primary" href={paths.hirePart(project.id, "invoices/new")}>Import an invoice</ButtonLink><ButtonLink href={paths.hirePart(project.id, "invoices/new", { by: "hand" })}>Type one in</ButtonLink></>
    : null;
  return (
    <Page title="Hire invoices" subtitle={project.name} actions={<>{enter}{invoices.length > 0 ? <TableLinks projectId={project.id} what="invoices" /> : null}<PrintButton /></>}>
      <DataTable
        caption="Invoices, the latest first" isCaptionHidden rows={invoices} rowKey={({ id }) => id}
        empty={<EmptyState title="No invoice yet" actions={enter}>A supplier&apos;s invoice, imported or typed in, is laid beside the charges of our own dockets, and every difference gets an amount and a probable reason.</EmptyState>}
        columns={[
          { key: "number", head: "Invoice", isRowHead: true, cell: ({ id, number, reversal }) => <span className="whitespace-nowrap"><Link href={paths.hireInvoice(project.id, id)}>{number}</Link>{reversal ? <span className="block text-sm text-flag-deep">reversed</span> : null}</span> },
          { key: "supplier", head: "Supplier", cell: ({ supplier }) => supplier },
          { key: "period", head: "Period", cell: ({ from, to }) => <><DayText day={from} /> to <DayText day={to} /></> },
          { key: "theirs", head: `Asked (${currency})`, isFigure: true, cell: ({ theirs }) => money(theirs) },
          { key: "ours", head: `By our books (${currency})`, isFigure: true, cell: ({ ours }) => money(ours) },
          { key: "over", head: `Asked too much (${currency})`, isFigure: true, cell: ({ over }) => money(over) },
          { key: "queries", head: "Open queries", isFigure: true, cell: ({ queries }) => queries.filter(({ status }) => status === "open" || status === "sent").length || "" },
        ]}
      />
    </Page>
  );
}
