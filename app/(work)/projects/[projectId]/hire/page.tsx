import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getOnHire } from "#lib/server/hire/get-hire.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { Money } from "#app/_ui/value/money.tsx";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../own-account.ts";
import { Refused } from "../../../refused.tsx";
import { AsOfForm } from "./_parts/as-of-form.tsx";
import { SupplierOnHire } from "./_parts/supplier-on-hire.tsx";
import { TableLinks } from "./_parts/table-links.tsx";

export const metadata: Metadata = { title: "On hire" };

type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<{ on?: string }> };

export default async function OnHirePage({ params, searchParams }: Props) {
  const [{ projectId }, { on: asked }] = [await params, await searchParams];
  const [answer, account] = await Promise.all([getOnHire(await currentCaller(), { projectId, on: asked || undefined }), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, suppliers, on, today } = answer.value;
  const sum = (of: (supplier: (typeof suppliers)[number]) => number): number => suppliers.reduce((total, supplier) => total + of(supplier), 0);
  const money = (minor: number) => <Money minor={minor} currency={project.currency} withCurrency />;
  const may = (permission: "hire.count" | "hire.record" | "hire.settle"): boolean => account.ok && can(account.value.role, permission);
  const isEmpty = suppliers.every(({ hasDockets }) => !hasDockets);
  return (
    <Page
      title="On hire" subtitle={project.name}
      facts={isEmpty ? [] : [
        { label: on === today ? "Today" : "As of", value: <DayText day={on} /> },
        { label: "Pieces charged", value: sum(({ rows }) => rows.reduce((pieces, { quantity }) => pieces + quantity, 0)).toLocaleString("en") },
        { label: "Cost to date", value: money(sum(({ costToDate }) => costToDate)) },
        { label: "This month so far", value: money(sum(({ monthToDate }) => monthToDate)) },
        { label: "Rest of the month, if nothing goes back", value: money(sum(({ restOfMonth }) => restOfMonth)) },
      ]}
      actions={
        <>
          {may("hire.count") && suppliers.length > 0 ? <ButtonLink size="glove" kind="primary" href={paths.hirePart(project.id, "dockets/new", { kind: "delivery" })}>Count a delivery</ButtonLink> : null}
          {may("hire.count") && !isEmpty ? <ButtonLink size="glove" kind="primary" href={paths.hirePart(project.id, "dockets/new", { kind: "return" })}>Count a return</ButtonLink> : null}
          {may("hire.record") && !isEmpty ? <ButtonLink size="glove" href={paths.hirePart(project.id, "dockets/new", { kind: "off-hire" })}>Call off</ButtonLink> : null}
        </>
      }
    >
      {isEmpty ? (
        <EmptyState
          title={suppliers.length === 0 ? "No supplier yet" : "Nothing has been delivered yet"}
          actions={suppliers.length === 0 && may("hire.settle") ? <ButtonLink kind="primary" href={paths.hirePart(project.id, "terms")}>Enter a supplier and its terms</ButtonLink> : null}
        >
          Gear stands here from the day its delivery is counted, with its days, what it has cost and what it costs next. Terms come first, because they say which days are charged.
        </EmptyState>
      ) : (
        <>
          <div className="no-print flex flex-wrap items-end justify-between gap-3">
            <AsOfForm action={paths.hire(project.id)} on={on} />
            <div className="hidden flex-wrap gap-2 sm:flex"><TableLinks projectId={project.id} what="on-hire" /><TableLinks projectId={project.id} what="charges" label="Charges" /><PrintButton /></div>
          </div>
          {suppliers.filter(({ hasDockets }) => hasDockets).map((supplier) => (
            <SupplierOnHire key={supplier.id} projectId={project.id} currency={project.currency} supplier={supplier} on={on} />
          ))}
        </>
      )}
    </Page>
  );
}
