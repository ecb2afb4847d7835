"use client";

import { useRouter } from "next/navigation";
import { can } from "#lib/access/permissions.ts";
import type { Finding } from "#lib/trade/progress/finding.ts";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { wordFinding } from "#app/_ui/wording-findings.ts";
import { actWords } from "#app/_field/ticking/act-words.ts";
import { AcknowledgeButton, SettleButtons, WithdrawButton } from "#app/_field/ticking/event-buttons.tsx";
import type { TickPerson, TickProject } from "#app/_field/ticking/tick-column.ts";
import { changeWords } from "./change-words.ts";
import type { ChangeEntry, EventEntry, HistoryEntry } from "./history-entries.ts";

export type RaisedException = Finding & { readonly eventId: string; readonly acknowledged: boolean };

export type HistoryListProps = {
  readonly project: TickProject;
  readonly me: TickPerson;
  readonly columnId: string;
  /** "A4, Level 2". */
  readonly about: string;
  readonly entries: readonly HistoryEntry[];
  readonly toAcknowledge: readonly RaisedException[];
};

type Shared = Omit<HistoryListProps, "entries"> & { readonly onTaken: () => void };

export function HistoryList({ entries, ...rest }: HistoryListProps) {
  const router = useRouter();
  const shared: Shared = { ...rest, onTaken: () => router.refresh() };
  return (
    <ol reversed className="border-2 border-ink bg-sheet">
      {entries.map((entry) => (
        <li key={entry.kind === "event" ? entry.event.id : `change ${entry.seq}`} className="border-b border-rule-soft px-3 py-2 last:border-b-0 sm:px-4">
          {entry.kind === "event" ? <EventLine entry={entry} shared={shared} /> : <ChangeLine entry={entry} shared={shared} />}
        </li>
      ))}
    </ol>
  );
}

const FATES = { "stands": null, "queried": "to be settled", "set-aside": "set aside", "withdrawn": "withdrawn" } as const;

function EventLine({ entry, shared }: { readonly entry: EventEntry; readonly shared: Shared }) {
  const { event, fate, target } = entry;
  const { project, me, columnId, about, onTaken } = shared;
  const words = actWords(event, project.units);
  const own = shared.toAcknowledge.filter(({ eventId }) => eventId === event.id && fate === "stands");
  const buttons = { project, me, columnId, about, eventId: event.id, onTaken };
  const isOut = fate === "withdrawn" || fate === "set-aside";
  const isOpen = own.some(({ acknowledged }) => !acknowledged);
  return (
    <div className="flex flex-col gap-2 sm:flex-row sm:items-start sm:justify-between sm:gap-4">
      <div className="min-w-0">
        <p>
          <strong className={`inline-block font-semibold first-letter:uppercase ${isOut ? "line-through" : ""}`}>{words}</strong>
          {target ? <span className="text-ink-soft">: “{actWords(target, project.units)}”, <TimeText at={target.happenedAt} timeZone={project.timeZone} /></span> : null}
          {FATES[fate] ? <span className={`ml-2 border px-1 text-sm font-semibold ${fate === "queried" ? "border-flag text-flag-deep" : "border-edge"}`}>{FATES[fate]}</span> : null}
        </p>
        <EventNotes entry={entry} exceptions={own} timeZone={project.timeZone} />
      </div>
      <div className="flex min-w-0 flex-wrap gap-2 sm:justify-end">
        {fate === "queried" ? <SettleButtons {...buttons} /> : null}
        {isOpen && can(me.role, "exception.acknowledge") ? <AcknowledgeButton {...buttons} /> : null}
        {isOut ? null : <WithdrawButton {...buttons} entry={words} />}
      </div>
    </div>
  );
}

type EventNotesProps = { readonly entry: EventEntry; readonly exceptions: readonly RaisedException[]; readonly timeZone: string };

function EventNotes({ entry: { event, fate, arrivedLate, because }, exceptions, timeZone }: EventNotesProps) {
  return (
    <>
      <p><TimeText at={event.happenedAt} timeZone={timeZone} />, {event.byName}</p>
      {arrivedLate ? <p className="text-sm text-ink-soft">Arrived <TimeText at={arrivedLate} timeZone={timeZone} /></p> : null}
      {event.reason ? <p>Reason: {event.reason}</p> : null}
      {fate === "queried" ? <p className="font-semibold text-flag-deep">{because ? wordFinding(because, timeZone).title : "Nothing speaks against it any more; settle it."}</p> : null}
      {exceptions.map((exception) => (
        <p key={exception.code} className="text-flag-deep">Exception: {wordFinding(exception, timeZone).title}{exception.acknowledged ? " Seen by the owner." : ""}</p>
      ))}
    </>
  );
}

function ChangeLine({ entry: { change }, shared: { project } }: { readonly entry: ChangeEntry; readonly shared: Shared }) {
  const { title, lines, reason } = changeWords(change.detail, project.units);
  return (
    <>
      <p><strong className="font-semibold">{title}</strong>{lines.length > 0 ? <span className="text-ink-soft">: {lines.join("; ")}</span> : null}</p>
      <p><TimeText at={change.at} timeZone={project.timeZone} />, {change.by}</p>
      {reason ? <p>Reason: {reason}</p> : null}
    </>
  );
}
