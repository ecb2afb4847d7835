"use client";

import { useRouter } from "next/navigation";
import type { QueriedEntry } from "#lib/contracts/progress.ts";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { wordFinding } from "#app/_ui/wording-findings.ts";
import { actWords } from "#app/_field/ticking/act-words.ts";
import { LiftHoldButton, SettleButtons } from "#app/_field/ticking/event-buttons.tsx";
import type { TickPerson, TickProject } from "#app/_field/ticking/tick-column.ts";

export type ToDecideProps = {
  readonly project: TickProject;
  readonly me: TickPerson;
  readonly columnId: string;
  readonly about: string;
  readonly held: { readonly at: string; readonly reason: string | null } | null;
  readonly queried: readonly QueriedEntry[];
};

/** Why the corner of the sign is red, and the buttons that take the flag off. */
export function ToDecide({ held, queried, ...shared }: ToDecideProps) {
  const router = useRouter();
  const { project } = shared;
  const buttons = { ...shared, onTaken: () => router.refresh() };
  if (held === null && queried.length === 0) return null;
  return (
    <Section title="Settle first" className="no-print">
      <ul className="flex flex-col divide-y divide-rule-soft border-2 border-flag bg-sheet px-4 [&>li]:py-3">
        {held === null ? null : (
          <li>
            <p className="mb-2"><strong className="font-semibold">On hold</strong> since <TimeText at={held.at} timeZone={project.timeZone} />{held.reason ? `: ${held.reason}` : ""}</p>
            <LiftHoldButton {...buttons} />
          </li>
        )}
        {queried.map(({ event, byName, because }) => (
          <li key={event.id}>
            <p><strong className="font-semibold">To be settled:</strong> {actWords(event, project.units)}, <TimeText at={event.happenedAt} timeZone={project.timeZone} />, {byName}</p>
            <p className="mb-2 text-ink-soft">{because ? wordFinding(because, project.timeZone).title : "Nothing speaks against it any more."}</p>
            <SettleButtons {...buttons} eventId={event.id} />
          </li>
        ))}
      </ul>
    </Section>
  );
}
