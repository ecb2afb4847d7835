"use client";

import { useState } from "react";
import type { RecordAnswer, TodayColumn } from "#lib/contracts/progress.ts";
import type { Plumbing } from "#lib/trade/progress/stages.ts";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
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
import { SettleSection } from "./settle-card.tsx";
import { useNews, type NewsOfColumns } from "./use-news.ts";
import { useSiteClock } from "./use-site-clock.ts";

export type TodayBoardProps = {
  readonly project: TickProject & { readonly lastSeq: number };
  readonly me: TickPerson;
  readonly plumbing: Plumbing;
  readonly columns: readonly TodayColumn[];
  readonly readAt: string;
};

/** The columns as they stand now: what others ticked and what waits on this phone is counted in. */
function useRows({ project, me, plumbing, columns }: TodayBoardProps, newsOf: NewsOfColumns["of"]): readonly TodayRow[] {
  const ticks = useTicks({ projectId: project.id, personId: me.id, personName: me.name, plumbing });
  const waiting = new Set(ticks.pending.map(({ event }) => event.columnId));
  return columns.map((column) => {
    const { done, flagged } = newsOf(column.id) ?? column;
    return withNews(column, ticks.expect({ id: column.id, done, flagged }), waiting.has(column.id), plumbing);
  });
}

function useSelection() {
  const [selected, setSelected] = useState<ReadonlySet<string>>(new Set());
  const select = (ids: readonly string[], isSelected: boolean) => setSelected((before) => {
    const after = new Set(before);
    for (const id of ids) if (isSelected) after.add(id); else after.delete(id);
    return after;
  });
  return { selected, setSelected, select };
}

/** What is next, what blocks it, and the panel to record it. */
export function TodayBoard(props: TodayBoardProps) {
  const { project, me, plumbing, readAt } = props;
  const now = useSiteClock(readAt);
  const news = useNews(project.lastSeq);
  useLive({ projectId: project.id, since: project.lastSeq, onMessage: (message) => news.hear(message.seq, message.columns) });
  const { selected, setSelected, select } = useSelection();
  const rows = useRows(props, news.of);
  const chosen = rows.filter(({ id }) => selected.has(id));

  const draw = (row: TodayRow) => (
    <ColumnRow
      key={row.id} row={row} words={blockWords(row.next, blocksNow(row, now), now, project.timeZone)} units={project.units}
      href={paths.column(project.id, row.id)} isSelected={selected.has(row.id)} onToggle={() => select([row.id], !selected.has(row.id))}
    />
  );
  const list = (groups: readonly RowGroup[]) => groups.map((group) => (
    <RowGroupSection key={group.key} group={group} selected={selected} onSelect={select} draw={draw} />
  ));
  const hearAnswer = (answer: RecordAnswer) => news.hear(answer.seq, answer.columns);
  const settle = <SettleSection project={project} me={me} rows={rows.filter((row) => isToSettle(row, me.role === "owner"))} now={now} onTaken={hearAnswer} />;
  const work = workGroups(rows, now);
  const evening = eveningGroups(rows);
  return (
    <div className={chosen.length > 0 ? "pb-72" : ""}>
      <Tabs
        label="Time of day"
        items={[
          { id: "next", label: "What is next", content: <div className="flex flex-col gap-6">{settle}{list(work)}{work.length === 0 && !rows.some((row) => isToSettle(row, me.role === "owner")) ? <AllDone /> : null}</div> },
          { id: "evening", label: "End of the day", content: <div className="flex flex-col gap-6"><EveningUnsent personId={me.id} />{settle}{list(evening)}{evening.length === 0 ? <Notice kind="done" title="Nothing is left half done.">No column stands unclamped, waits in its form or lacks a reading.</Notice> : null}</div> },
        ]}
      />
      <TickPanel
        project={project} me={me} plumbing={plumbing} columns={chosen} onTaken={hearAnswer}
        onSelectOnly={(ids) => setSelected(new Set(ids))} onClear={() => setSelected(new Set())}
      />
    </div>
  );
}

const AllDone = () => (
  <EmptyState title="Every column is stripped">Nothing is open on this project. New columns appear here once they are in the schedule.</EmptyState>
);
