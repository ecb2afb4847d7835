"use client";

import { useMemo, useState } from "react";
import type { TodayColumn } from "#lib/contracts/progress.ts";
import type { Plumbing } from "#lib/trade/progress/stages.ts";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { Tabs } from "#app/_ui/page/tabs.tsx";
import { TickPanel } from "#app/_field/tick-panel.tsx";
import type { TickPerson, TickProject } from "#app/_field/ticking/tick-column.ts";
import { useLive } from "#app/_field/use-live.ts";
import { useTicks } from "#app/_field/use-ticks.ts";
import { paths } from "#app/paths.ts";
import { blockWords } from "./block-words.ts";
import { ColumnRow } from "./column-row.tsx";
import { EveningUnsent } from "./evening-unsent.tsx";
import { blocksNow, eveningGroups, isToSettle, withNews, workGroups, type RowGroup, type TodayRow } from "./group-columns.ts";
import { RowGroupSection } from "./row-group-section.tsx";
import { SettleCard } from "./settle-card.tsx";
import { useNews } from "./use-news.ts";
import { useSiteClock } from "./use-site-clock.ts";

export type TodayBoardProps = {
  readonly project: TickProject & { readonly lastSeq: number };
  readonly me: TickPerson;
  readonly plumbing: Plumbing;
  readonly columns: readonly TodayColumn[];
  readonly readAt: string;
};

/** What is next, what blocks it, and the panel to record it. */
export function TodayBoard({ project, me, plumbing, columns, readAt }: TodayBoardProps) {
  const now = useSiteClock(readAt);
  const news = useNews(project.lastSeq);
  const ticks = useTicks({ projectId: project.id, personId: me.id, personName: me.name, plumbing });
  useLive({ projectId: project.id, since: project.lastSeq, onMessage: (message) => news.hear(message.seq, message.columns) });
  const [selected, setSelected] = useState<ReadonlySet<string>>(new Set());

  const rows = columns.map((column): TodayRow => {
    const heard = news.of(column.id) ?? column;
    const expected = ticks.expect({ id: column.id, done: heard.done, flagged: heard.flagged });
    const isWaiting = ticks.pending.some(({ event }) => event.columnId === column.id);
    return withNews(column, expected, isWaiting, plumbing);
  });
  const toSettle = rows.filter((row) => isToSettle(row, me.role === "owner"));
  const chosen = useMemo(() => rows.filter(({ id }) => selected.has(id)), [rows, selected]);

  const select = (ids: readonly string[], isSelected: boolean) => setSelected((before) => {
    const after = new Set(before);
    for (const id of ids) if (isSelected) after.add(id); else after.delete(id);
    return after;
  });
  const draw = (row: TodayRow) => (
    <ColumnRow
      key={row.id} row={row} words={blockWords(row.next, blocksNow(row, now), now, project.timeZone)} units={project.units}
      href={paths.column(project.id, row.id)} isSelected={selected.has(row.id)} onToggle={() => select([row.id], !selected.has(row.id))}
    />
  );
  const list = (groups: readonly RowGroup[]) => groups.map((group) => (
    <RowGroupSection key={group.key} group={group} selected={selected} onSelect={select} draw={draw} />
  ));
  const settle = toSettle.length === 0 ? null : (
    <Section title="Settle first" note={`${toSettle.length} held, contradicted or against a rule`}>
      <ul className="grid gap-3 lg:grid-cols-2">
        {toSettle.map((row) => (
          <SettleCard
            key={row.id} row={row} project={project} me={me} now={now} href={paths.column(project.id, row.id)}
            onTaken={(answer) => news.hear(answer.seq, answer.columns)}
          />
        ))}
      </ul>
    </Section>
  );
  const work = workGroups(rows, now);
  const evening = eveningGroups(rows);
  return (
    <div className={chosen.length > 0 ? "pb-72" : ""}>
      <Tabs
        label="Time of day"
        items={[
          { id: "next", label: "What is next", content: <div className="flex flex-col gap-6">{settle}{list(work)}{work.length === 0 && settle === null ? <AllDone /> : null}</div> },
          { id: "evening", label: "End of the day", content: <div className="flex flex-col gap-6"><EveningUnsent personId={me.id} />{settle}{list(evening)}{evening.length === 0 ? <Notice kind="done" title="Nothing is left half done.">No column stands unclamped, waits in its form or lacks a reading.</Notice> : null}</div> },
        ]}
      />
      <TickPanel
        project={project} me={me} plumbing={plumbing} columns={chosen} onTaken={(answer) => news.hear(answer.seq, answer.columns)}
        onSelectOnly={(ids) => setSelected(new Set(ids))} onClear={() => setSelected(new Set())}
      />
    </div>
  );
}

const AllDone = () => (
  <EmptyState title="Every column is stripped">Nothing is open on this project. New columns appear here once they are in the schedule.</EmptyState>
);
