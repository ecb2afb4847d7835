import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getTerms } from "#lib/server/hire/get-hire.ts";
import { Page } from "#app/_ui/page/page.tsx";
import { ownAccount } from "../../../../../own-account.ts";
import { Refused } from "../../../../../refused.tsx";
import { TermsForm } from "./terms-form.tsx";

export const metadata: Metadata = { title: "New terms" };

type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<{ supplier?: string }> };

export default async function NewTermsPage({ params, searchParams }: Props) {
  const [{ projectId }, { supplier: asked }] = [await params, await searchParams];
  const [answer, account] = await Promise.all([getTerms(await currentCaller(), { projectId }), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  if (account.ok && !can(account.value.role, "hire.settle")) return <Refused failure={{ kind: "not-allowed", permission: "hire.settle" }} />;
  const { project, suppliers, items, terms, today } = answer.value;
  const supplier = suppliers.find(({ id, isRetired }) => id === asked && !isRetired);
  if (!supplier) return <Refused failure={{ kind: "not-found", what: "supplier" }} />;
  const latest = terms.find(({ supplierId, reversal }) => supplierId === supplier.id && reversal === null);
  return (
    <Page title={`Terms of ${supplier.name}`} subtitle={project.name}>
      <p className="max-w-prose">
        Enter them as they stand on the quotation or the conditions of hire. They hold from the day given until newer ones; what was charged before stays as it was.
      </p>
      <TermsForm project={{ id: project.id, currency: project.currency }} supplierId={supplier.id} today={today} items={items} latest={latest ?? null} />
    </Page>
  );
}
