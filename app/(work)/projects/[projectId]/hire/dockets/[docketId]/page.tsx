import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getDocket } from "#lib/server/hire/get-hire.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { Link } from "#app/_ui/control/link.tsx";
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
import { reverseDocketAction } from "../../_parts/actions.ts";
import { DOCKET_WORDS, FOLLOWED_BY, GATE_KINDS, openText } from "../../_parts/docket-words.ts";
import { ReverseForm } from "../../_parts/reverse-form.tsx";
import { DocketPhotos } from "./docket-photos.tsx";

export const metadata: Metadata = { title: "Docket" };

type Props = { readonly params: Promise<{ projectId: string; docketId: string }> };

export default async function DocketPage({ params }: Props) {
  const [answer, account] = await Promise.all([getDocket(await currentCaller(), await params), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, docket, supplier, chain, open } = answer.value;
  const may = (permission: "hire.count" | "hire.record"): boolean => account.ok && can(account.value.role, permission);
  const follows = FOLLOWED_BY[docket.kind];
  const mayFollow = follows !== undefined && docket.reversal === null && may(GATE_KINDS.includes(follows) ? "hire.count" : "hire.record");
  const name = `${DOCKET_WORDS[docket.kind].toLowerCase()} ${docket.number}`;
  const hasPaper = docket.kind === "off-hire" || docket.kind === "return";
  return (
    <Page
      title={`${DOCKET_WORDS[docket.kind]} ${docket.number}`} subtitle={`${supplier?.name ?? ""} · ${project.name}`}
      facts={[
        { label: docket.until === null ? "Day" : "First day", value: <DayText day={docket.on} /> },
        ...(docket.until === null ? [] : [{ label: "Last day", value: <DayText day={docket.until} /> }]),
        { label: "Time", value: <TimeText at={docket.happenedAt} timeZone={project.timeZone} /> },
        ...(docket.name === null ? [] : [{ label: "With", value: docket.name }]),
        ...(docket.amount === null ? [] : [{ label: "Amount", value: <Money minor={docket.amount} currency={project.currency} withCurrency /> }]),
        ...(docket.share === null ? [] : [{ label: "Charged at", value: `${docket.share / 100} %` }]),
        { label: "Entered by", value: <>{docket.by}, <TimeText at={docket.recordedAt} timeZone={project.timeZone} /></> },
      ]}
      actions={
        <>
          {mayFollow && follows ? (
            <ButtonLink kind="primary" size="glove" href={paths.hirePart(project.id, "dockets/new", { kind: follows, answers: follows === "off-hire" || follows === "credit" ? undefined : docket.id, supplier: docket.supplierId })}>
              {GATE_KINDS.includes(follows) ? `Count the ${follows}` : `Enter ${DOCKET_WORDS[follows].toLowerCase()}`}
            </ButtonLink>
          ) : null}
          {hasPaper ? <ButtonLink download href={paths.hireDocketPaper(project.id, docket.id)}>{docket.kind === "off-hire" ? "Off-hire notice" : "Return docket"} PDF</ButtonLink> : null}
          <PrintButton />
        </>
      }
    >
      {docket.reversal ? (
        <Notice kind="problem" title="Reversed.">{docket.reversal.by}, <TimeText at={docket.reversal.at} timeZone={project.timeZone} />: {docket.reversal.reason}</Notice>
      ) : null}
      {open.length > 0 ? <Notice title="Open"><ul className="list-disc pl-5">{open.map((part) => <li key={`${part.code} ${part.itemId ?? ""}`}>{openText(part)}</li>)}</ul></Notice> : null}
      {docket.lines.length > 0 ? (
        <DataTable
          caption="Pieces" rows={docket.lines} rowKey={({ itemId }) => itemId}
          columns={[
            { key: "item", head: "Item", isRowHead: true, cell: ({ item }) => item },
            { key: "quantity", head: "Pieces", isFigure: true, cell: ({ quantity }) => quantity },
            { key: "short", head: "Short", isFigure: true, cell: ({ short }) => short || "" },
            { key: "damaged", head: "Damaged", isFigure: true, cell: ({ damaged }) => damaged || "" },
            { key: "dirty", head: "Dirty", isFigure: true, cell: ({ dirty }) => dirty || "" },
          ]}
        />
      ) : null}
      {docket.note ? <p className="max-w-prose whitespace-pre-line">{docket.note}</p> : null}
      {chain.length > 0 ? (
        <Section title="Chain" note="what it answers and what answers it">
          <ul className="flex flex-col gap-2">
            {chain.map(({ id, kind, number, on, reversal }) => (
              <li key={id}>{DOCKET_WORDS[kind]} <Link href={paths.hireDocket(project.id, id)}>{number}</Link>, <DayText day={on} />{reversal ? ", reversed" : ""}</li>
            ))}
          </ul>
        </Section>
      ) : null}
      <DocketPhotos projectId={project.id} docketId={docket.id} timeZone={project.timeZone} photos={docket.photos} canAdd={may("hire.count")} />
      {may("hire.record") && docket.reversal === null ? <div className="no-print"><ReverseForm projectId={project.id} subjectId={docket.id} what={name} send={reverseDocketAction} /></div> : null}
    </Page>
  );
}
