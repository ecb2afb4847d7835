import type { TodayColumn } from "#lib/contracts/progress.ts";
import { nextStage, type Next } from "#lib/trade/progress/next.ts";
import { hasDone, type Plumbing, type Stage } from "#lib/trade/progress/stages.ts";

/** A column as it is drawn: what was heard or saved since the page was read is counted in. */
export type TodayRow = TodayColumn & { /** Recorded on this phone and not sent yet. */ readonly isAhead: boolean };

export type RowGroup = {
  readonly key: string;
  readonly title: string;
  readonly note: string;
  readonly rows: readonly TodayRow[];
  /** Long lists of small importance stay shut until asked for. */
  readonly isFolded?: boolean;
};

/** A column after news of it: what is next follows from its stages; what blocks it is known only for the stage the server spoke of. */
export function withNews(column: TodayColumn, news: { readonly done: number; readonly flagged: boolean }, isAhead: boolean, plumbing: Plumbing): TodayRow {
  const stage = nextStage(news.done, { plumbing });
  const next: Next = stage === column.next.stage ? column.next : { stage, blockedBy: stage === "stripped" ? ["strip time"] : [], stripFrom: column.next.stripFrom };
  return { ...column, ...news, next, isAhead };
}

/** What stands in the way at this moment: a strip time that has run out meanwhile does not. */
export function blocksNow({ next }: Pick<TodayColumn, "next">, now: string): Next["blockedBy"] {
  const isOldEnough = next.stripFrom !== null && Date.parse(next.stripFrom) <= Date.parse(now);
  return next.blockedBy.filter((block) => block !== "strip time" || !isOldEnough);
}

export const isToSettle = (row: TodayColumn, isOwner: boolean): boolean =>
  row.held !== null || row.queried.length > 0 || (isOwner && row.exceptions.length > 0);

const READY: readonly { stage: Stage; title: string; note: string }[] = [
  { stage: "stripped", title: "Ready to strip", note: "strip time is over" },
  { stage: "poured", title: "Ready to pour", note: "releases are given" },
  { stage: "plumbed", title: "Plumb", note: "" },
  { stage: "clamped", title: "Clamp", note: "stood, no clamps yet" },
  { stage: "stood", title: "Stand", note: "panels are cut" },
  { stage: "cut", title: "Cut", note: "nothing yet" },
];

const group = (key: string, title: string, note: string, rows: readonly TodayRow[], isFolded = false): RowGroup[] =>
  rows.length === 0 ? [] : [{ key, title, note, rows, isFolded }];

const byStripTime = (left: TodayRow, right: TodayRow): number => (left.next.stripFrom ?? "~").localeCompare(right.next.stripFrom ?? "~");

/** The work of the day: what can be done now by stage, then what waits and for what. */
export function workGroups(rows: readonly TodayRow[], now: string): RowGroup[] {
  const ready = rows.filter((row) => row.next.stage !== null && blocksNow(row, now).length === 0);
  const waiting = rows.filter((row) => row.next.stage !== null && blocksNow(row, now).length > 0 && !row.flagged);
  const young = waiting.filter((row) => blocksNow(row, now).includes("strip time"));
  return [
    ...READY.flatMap(({ stage, title, note }) => group(stage, title, note, ready.filter((row) => row.next.stage === stage))),
    ...group("strip-later", "Strip later", "strip time still runs", [...young].sort(byStripTime)),
    ...group("release", "Waiting for a release", "ask for it, then tick the gate", waiting.filter((row) => !young.includes(row))),
    ...group("reading", "Reading after the pour", "not taken yet", rows.filter((row) => row.asksForReading), true),
  ];
}

/** What is left at the end of the day. */
export function eveningGroups(rows: readonly TodayRow[]): RowGroup[] {
  const at = (reached: Stage, open: Stage) => rows.filter(({ done }) => hasDone(done, reached) && !hasDone(done, open));
  return [
    ...group("loose", "Stood, not clamped", "brace them before leaving", at("stood", "clamped")),
    ...group("unpoured", "Clamped, not poured", "", at("clamped", "poured")),
    ...group("unread", "Poured, no reading", "read them while somebody is there", rows.filter((row) => row.asksForReading && !hasDone(row.done, "stripped"))),
    ...group("in-form", "In the form overnight", "poured, not stripped", at("poured", "stripped")),
  ];
}

