"use client";

import type { RecordAnswer } from "#lib/contracts/progress.ts";
import { nextStage } from "#lib/trade/progress/next.ts";
import { hasDone } from "#lib/trade/progress/stages.ts";
import type { ColumnPage } from "./column-page.ts";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { signWords } from "#app/_ui/drawing/sign/sign-words.ts";
import { Section } from "#app/_ui/page/section.tsx";
import { TickPanel } from "#app/_field/tick-panel.tsx";
import type { TickColumn, TickPerson } from "#app/_field/ticking/tick-column.ts";
import type { SignState } from "#app/_field/outbox/expected-sign.ts";
import { useLive } from "#app/_field/use-live.ts";
import { useTicks } from "#app/_field/use-ticks.ts";
import { blockWords, siteTime } from "../../../today/block-words.ts";
import { blocksNow } from "../../../today/group-columns.ts";
import { useNews } from "../../../today/use-news.ts";
import { useSiteClock } from "../../../today/use-site-clock.ts";

export type ColumnNowProps = {
  readonly page: Pick<ColumnPage, "project" | "column" | "next" | "progressRule" | "readAt"> & {
    readonly state: Pick<ColumnPage["state"], "done" | "flagged" | "pouredAt" | "asksForReading">;
  };
  readonly me: TickPerson;
};

/** What is known of the column this moment: as read, as heard since, and with what waits on this phone. */
function useColumnNow({ page, me }: ColumnNowProps) {
  const { project, column, state, progressRule: { plumbing } } = page;
  const news = useNews(project.lastSeq);
  const ticks = useTicks({ projectId: project.id, personId: me.id, personName: me.name, plumbing });
  // Set-up and schedule change the form set too, so anything that happens in the project may concern this page.
  useLive({
    projectId: project.id, since: project.lastSeq,
    onMessage: ({ seq, kind, columns }) => {
      const own = columns.filter(({ id }) => id === column.id);
      if (own.length > 0 || kind !== "progress") news.hear(seq, own);
    },
  });
  const heard = news.of(column.id) ?? { done: state.done, flagged: state.flagged };
  return { sign: ticks.expect({ id: column.id, ...heard }), hear: (answer: RecordAnswer) => news.hear(answer.seq, answer.columns) };
}

/** Where the column stands, what is next and what blocks it; and the panel to record it. */
export function ColumnNow({ page, me }: ColumnNowProps) {
  const { project, column, progressRule: { plumbing } } = page;
  const { sign, hear } = useColumnNow({ page, me });
  const tickColumn: TickColumn = {
    id: column.id, gridRef: column.gridRef, mark: column.mark.name, level: column.fromLevel.name,
    shape: column.shape, widthMm: column.widthMm, depthMm: column.depthMm, done: sign.done, flagged: sign.flagged,
  };
  return (
    <Section title="Now" className="no-print">
      <div className="grid grid-cols-1 gap-4 lg:grid-cols-[20rem_minmax(0,1fr)]">
        <div className="flex items-center gap-5 border-2 border-ink bg-sheet p-4" aria-live="polite">
          <ColumnSign shape={column.shape} width_mm={column.widthMm} depth_mm={column.depthMm} done={sign.done} flagged={sign.flagged} size={96} />
          <div className="min-w-0">
            <p className="text-xl font-semibold first-letter:uppercase">{signWords(sign.done, sign.flagged)}</p>
            {sign.isAhead ? <p className="text-sm text-ink-soft">Saved on this phone, not sent yet.</p> : null}
            <WhatNext page={page} sign={sign} />
          </div>
        </div>
        <div className="border-2 border-ink bg-sheet p-3">
          <TickPanel
            project={{ id: project.id, timeZone: project.timeZone, units: project.units }}
            me={me} plumbing={plumbing} columns={[tickColumn]} placement="inline" onTaken={hear}
          />
        </div>
      </div>
    </Section>
  );
}

function WhatNext({ page, sign }: { readonly page: ColumnNowProps["page"]; readonly sign: SignState }) {
  const { project: { timeZone }, state, next, progressRule: { plumbing, stripAfterHours }, readAt } = page;
  const now = useSiteClock(readAt);
  // What blocks the stage after next is known only once the page is read again.
  const isNewer = sign.done !== state.done || sign.flagged !== state.flagged;
  return (
    <>
      <NextWords
        stage={isNewer ? nextStage(sign.done, { plumbing }) : next.stage}
        blocks={isNewer ? [] : blockWords(next, blocksNow({ next }, now), now, timeZone)}
      />
      {state.asksForReading && !isNewer ? <p>No reading since the pour yet.</p> : null}
      {state.pouredAt === null ? null : <p className="text-sm text-ink-soft">Poured {siteTime(state.pouredAt, now, timeZone)}</p>}
      {next.stripFrom === null || hasDone(sign.done, "stripped") ? null : (
        <p className="text-sm text-ink-soft">
          Strip not before {siteTime(next.stripFrom, now, timeZone)}: {stripAfterHours} h after the pour, by the project&rsquo;s rule. Cold or slow concrete needs longer: the engineer decides.
        </p>
      )}
    </>
  );
}

function NextWords({ stage, blocks }: { readonly stage: string | null; readonly blocks: readonly string[] }) {
  if (stage === null) return <p>Nothing more to do.</p>;
  return (
    <>
      <p>Next: <strong className="font-semibold">{stage}</strong></p>
      {blocks.length > 0 ? <p className="font-semibold text-flag-deep">In the way: {blocks.join("; ")}</p> : null}
    </>
  );
}
