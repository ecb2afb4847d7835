import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { DOCKET_KINDS } from "#lib/contracts/hire/dockets.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getDockets } from "#lib/server/hire/get-hire.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../../own-account.ts";
import { Refused } from "../../../../refused.tsx";
import { DOCKET_WORDS, GATE_KINDS } from "../_parts/docket-words.ts";
import { TableLinks } from "../_parts/table-links.tsx";
import { DocketTable } from "./docket-table.tsx";

export const metadata: Metadata = { title: "Dockets" };

type Props = { readonly params: Promise<{ projectId: string }> };

export default async function DocketsPage({ params }: Props) {
  const { projectId } = await params;
  const [answer, account] = await Promise.all([getDockets(await currentCaller(), { projectId }), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, dockets, suppliers } = answer.value;
  const mayRecord = account.ok && can(account.value.role, "hire.record");
  const open = dockets.filter((docket) => docket.open.length > 0);
  const names = new Map(suppliers.map(({ id, name }) => [id, name]));
  const kinds = DOCKET_KINDS.filter((kind) => GATE_KINDS.includes(kind) || mayRecord);
  return (
    <Page title="Dockets" subtitle={project.name} facts={[{ label: "Dockets", value: dockets.length }, { label: "With something open", value: open.length }]} actions={<PrintButton />}>
      {suppliers.length === 0 ? (
        <EmptyState title="No supplier yet" actions={<ButtonLink href={paths.hirePart(project.id, "terms")}>Terms and suppliers</ButtonLink>}>
          Orders, deliveries, off-hire calls and returns stand here in one chain once the office has entered a supplier.
        </EmptyState>
      ) : (
        <nav aria-label="Enter a docket" className="no-print grid grid-cols-2 gap-2 sm:flex sm:flex-wrap">
          {kinds.map((kind) => (
            <ButtonLink key={kind} size={GATE_KINDS.includes(kind) ? "glove" : "hand"} kind={GATE_KINDS.includes(kind) ? "primary" : "plain"} href={paths.hirePart(project.id, "dockets/new", { kind })}>
              {GATE_KINDS.includes(kind) ? `Count a ${kind}` : DOCKET_WORDS[kind]}
            </ButtonLink>
          ))}
        </nav>
      )}
      {open.length > 0 ? (
        <Section title="Open"><DocketTable caption="Dockets with something open" projectId={project.id} dockets={open} names={names} currency={project.currency} /></Section>
      ) : null}
      {dockets.length > 0 ? (
        <Section title="All dockets" note="the latest first" actions={<TableLinks projectId={project.id} what="dockets" />}>
          <DocketTable caption="All dockets" projectId={project.id} dockets={dockets} names={names} currency={project.currency} />
        </Section>
      ) : null}
    </Page>
  );
}
