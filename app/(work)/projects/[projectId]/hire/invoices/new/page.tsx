import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getInvoices } from "#lib/server/hire/invoices.ts";
import { Page } from "#app/_ui/page/page.tsx";
import { ownAccount } from "../../../../../own-account.ts";
import { Refused } from "../../../../../refused.tsx";
import { HandForm } from "./hand-form.tsx";
import { ImportForm } from "./import-form.tsx";

export const metadata: Metadata = { title: "New invoice" };

type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<{ by?: string }> };

export default async function NewInvoicePage({ params, searchParams }: Props) {
  const [{ projectId }, { by }] = [await params, await searchParams];
  const [answer, account] = await Promise.all([getInvoices(await currentCaller(), { projectId }), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  if (account.ok && !can(account.value.role, "hire.settle")) return <Refused failure={{ kind: "not-allowed", permission: "hire.settle" }} />;
  const { project, suppliers, items, today } = answer.value;
  const given = { project: { id: project.id, currency: project.currency }, suppliers, today };
  return (
    <Page title={by === "hand" ? "Type in an invoice" : "Import an invoice"} subtitle={project.name}>
      {by === "hand" ? <HandForm {...given} items={items} /> : (
        <>
          <p className="max-w-prose">
            CSV or XLSX with one row of headings: item or description and amount, and as many of docket, charge, quantity, from, to, days and rate as the supplier gives. Totals and tax are passed over.
          </p>
          <ImportForm {...given} />
        </>
      )}
    </Page>
  );
}
