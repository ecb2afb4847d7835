import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { DOCKET_KINDS, type DocketKind } from "#lib/contracts/hire/dockets.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getDockets, getOnHire, getTerms } from "#lib/server/hire/get-hire.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { instantWords } from "#app/_ui/value/time-words.ts";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../../../own-account.ts";
import { Refused } from "../../../../../refused.tsx";
import { DOCKET_WORDS, GATE_KINDS } from "../../_parts/docket-words.ts";
import { DocketDesk } from "./docket-desk.tsx";
import { answeringKind, offeredItems } from "./offered.ts";

export const metadata: Metadata = { title: "Docket" };

type Props = { readonly params: Promise<{ projectId: string }>; readonly searchParams: Promise<{ kind?: string; supplier?: string; answers?: string }> };
const isKind = (text: string | undefined): text is DocketKind => (DOCKET_KINDS as readonly string[]).includes(text ?? "");

export default async function NewDocketPage({ params, searchParams }: Props) {
  const [{ projectId }, query] = [await params, await searchParams];
  const caller = await currentCaller();
  const [book, terms, standing, account] = await Promise.all([getDockets(caller, { projectId }), getTerms(caller, { projectId }), getOnHire(caller, { projectId }), ownAccount()]);
  if (!book.ok) return <Refused failure={book.failure} />;
  if (!terms.ok) return <Refused failure={terms.failure} />;
  if (!standing.ok) return <Refused failure={standing.failure} />;
  const kind: DocketKind = isKind(query.kind) ? query.kind : "delivery";
  const isGate = GATE_KINDS.includes(kind);
  const permission = isGate ? "hire.count" : "hire.record";
  if (account.ok && !can(account.value.role, permission)) return <Refused failure={{ kind: "not-allowed", permission }} />;
  const { project, suppliers, today } = book.value;
  const answered = book.value.dockets.find(({ id, reversal }) => id === query.answers && reversal === null);
  const open = suppliers.filter(({ isRetired }) => !isRetired);
  const asked = open.find(({ id }) => id === (answered?.supplierId ?? query.supplier)) ?? open[0];
  const wanted = answeringKind(kind);
  const now = instantWords(new Date().toISOString(), project.timeZone).time;
  return (
    <Page title={isGate ? `Count a ${kind}` : DOCKET_WORDS[kind]} subtitle={project.name}>
      {asked === undefined ? (
        <EmptyState title="No supplier yet" actions={<ButtonLink href={paths.hirePart(project.id, "terms")}>Terms and suppliers</ButtonLink>}>The office enters suppliers and their terms first.</EmptyState>
      ) : (
        <>
          {open.length > 1 && !answered ? (
            <nav aria-label="Supplier" className="flex flex-wrap gap-2">
              {open.map(({ id, name }) => <ButtonLink key={id} size="glove" kind={id === asked.id ? "primary" : "plain"} href={paths.hirePart(project.id, "dockets/new", { kind, supplier: id })}>{name}</ButtonLink>)}
            </nav>
          ) : null}
          <DocketDesk personId={account.ok ? account.value.id : ""}
            key={`${kind} ${asked.id} ${answered?.id ?? ""}`} kind={kind} today={today} now={now} supplier={{ id: asked.id, name: asked.name }} answersId={answered?.id ?? null}
            project={{ id: project.id, timeZone: project.timeZone, currency: project.currency }}
            items={offeredItems({ kind, supplierId: asked.id, book: book.value, terms: terms.value, standing: standing.value, answered })}
            answerable={wanted === null ? [] : book.value.dockets
              .filter((docket) => docket.supplierId === asked.id && docket.kind === wanted && docket.reversal === null)
              .map(({ id, number, on }) => ({ id, number, on }))}
          />
        </>
      )}
    </Page>
  );
}
