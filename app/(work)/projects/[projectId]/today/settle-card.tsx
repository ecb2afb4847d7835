"use client";

import { Link } from "#app/_ui/control/link.tsx";
import type { RecordAnswer } from "#lib/contracts/progress.ts";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { wordFinding } from "#app/_ui/wording-findings.ts";
import { actWords } from "#app/_field/ticking/act-words.ts";
import { AcknowledgeButton, LiftHoldButton, SettleButtons } from "#app/_field/ticking/event-buttons.tsx";
import { columnName, type TickPerson, type TickProject } from "#app/_field/ticking/tick-column.ts";
import { paths } from "#app/paths.ts";
import { siteTime } from "./block-words.ts";
import type { TodayRow } from "./group-columns.ts";

export type SettleCardProps = {
  readonly row: TodayRow;
  readonly project: TickProject;
  readonly me: TickPerson;
  readonly now: string;
  readonly href: string;
  readonly onTaken: (answer: RecordAnswer) => void;
};

/** A column that somebody has to decide about: held, contradicted, or a rule broken. */
export function SettleCard({ row, project, me, now, href, onTaken }: SettleCardProps) {
  const about = columnName(row);
  const shared = { project, me, columnId: row.id, about, onTaken };
  const at = (instant: string) => siteTime(instant, now, project.timeZone);
  return (
    <li className="border-2 border-flag bg-sheet">
      <div className="flex items-center gap-3 border-b border-rule-soft px-3 py-1">
        <ColumnSign shape={row.shape} width_mm={row.widthMm} depth_mm={row.depthMm} done={row.done} flagged={row.flagged} size={44} />
        <h3 className="grow text-lg">{about}</h3>
        <Link href={href} prefetch={false} aria-label={`Open ${about}`} className="no-print flex min-h-glove min-w-glove items-center justify-center font-semibold">Open</Link>
      </div>
      <div className="flex flex-col divide-y divide-rule-soft px-3 [&>*]:py-3">
        {row.held ? (
          <div>
            <p><strong className="font-semibold">On hold</strong> since {at(row.held.at)}{row.held.reason ? `: ${row.held.reason}` : ""}</p>
            <div className="no-print mt-2"><LiftHoldButton {...shared} /></div>
          </div>
        ) : null}
        {row.queried.map(({ event, byName, because }) => (
          <div key={event.id}>
            <p><strong className="font-semibold">To be settled:</strong> {actWords(event, project.units)}, {at(event.happenedAt)}, by {byName}</p>
            <p className="mb-2 text-ink-soft">{because ? wordFinding(because, project.timeZone).title : "Nothing speaks against it any more."}</p>
            <div className="no-print"><SettleButtons {...shared} eventId={event.id} /></div>
          </div>
        ))}
        {me.role === "owner" ? row.exceptions.map((exception) => (
          <div key={`${exception.eventId} ${exception.code}`} className="flex items-start justify-between gap-3">
            <div>
              <p><strong className="font-semibold">Exception:</strong> {wordFinding(exception, project.timeZone).title}</p>
              <p className="text-ink-soft">{exception.reason ? `Reason given: ${exception.reason}` : "No reason was given."}</p>
            </div>
            <div className="no-print"><AcknowledgeButton {...shared} eventId={exception.eventId} /></div>
          </div>
        )) : null}
      </div>
    </li>
  );
}

export type SettleSectionProps = Omit<SettleCardProps, "row" | "href"> & { readonly rows: readonly TodayRow[] };

/** What has to be decided before anything else; nothing when there is nothing to decide. */
export function SettleSection({ rows, ...shared }: SettleSectionProps) {
  if (rows.length === 0) return null;
  return (
    <Section title="Settle first" note={`${rows.length} held, contradicted or against a rule`}>
      <ul className="grid gap-3 lg:grid-cols-2">
        {rows.map((row) => <SettleCard key={row.id} {...shared} row={row} href={paths.column(shared.project.id, row.id)} />)}
      </ul>
    </Section>
  );
}
