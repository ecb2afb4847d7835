import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getTerms } from "#lib/server/hire/get-hire.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../../own-account.ts";
import { Refused } from "../../../../refused.tsx";
import { TableLinks } from "../_parts/table-links.tsx";
import { SupplierForm } from "./supplier-form.tsx";
import { TermsVersion } from "./terms-version.tsx";

export const metadata: Metadata = { title: "Terms and suppliers" };

export default async function TermsPage({ params }: { readonly params: Promise<{ projectId: string }> }) {
  const { projectId } = await params;
  const [answer, account] = await Promise.all([getTerms(await currentCaller(), { projectId }), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, suppliers, terms, today } = answer.value;
  const maySettle = account.ok && can(account.value.role, "hire.settle");
  return (
    <Page title="Terms and suppliers" subtitle={project.name} actions={<>{terms.length > 0 ? <TableLinks projectId={project.id} what="terms" label="Rates" /> : null}<PrintButton /></>}>
      {suppliers.length === 0 ? (
        <EmptyState title="No supplier yet">
          {maySettle ? "Enter who you hire from, then the terms on their quotation: which days are charged, at which rates, and what is lost or damaged." : "The office enters who you hire from and the terms on their quotation."}
        </EmptyState>
      ) : null}
      {suppliers.filter(({ isRetired }) => !isRetired).map((supplier) => {
        const own = terms.filter(({ supplierId }) => supplierId === supplier.id);
        const inForce = own.find(({ validFrom, reversal }) => reversal === null && validFrom <= today);
        return (
          <Section
            key={supplier.id} title={supplier.name} note={[supplier.contact, supplier.phone, supplier.email].filter((part) => part !== null).join(" · ")}
            actions={maySettle ? <><ButtonLink kind={own.length === 0 ? "primary" : "plain"} href={paths.hirePart(project.id, "terms/new", { supplier: supplier.id })}>Enter {own.length === 0 ? "the" : "new"} terms</ButtonLink><SupplierForm projectId={project.id} supplier={supplier} /></> : null}
          >
            <div className="flex flex-col gap-4">
              {own.length === 0 ? <p className="border-2 border-dashed border-edge bg-sheet p-4 text-ink-soft">No terms yet: days on hire from {supplier.name} cannot be charged until there are.</p> : null}
              {own.map((version) => (
                <TermsVersion key={version.id} projectId={project.id} timeZone={project.timeZone} version={version} isInForce={version === inForce} isAhead={version.validFrom > today} maySettle={maySettle} />
              ))}
            </div>
          </Section>
        );
      })}
      {maySettle ? <div className="no-print"><SupplierForm projectId={project.id} supplier={null} /></div> : null}
    </Page>
  );
}
