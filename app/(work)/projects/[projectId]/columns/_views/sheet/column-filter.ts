import type { SheetColumn } from "#lib/contracts/columns-sheet.ts";
import { hasDone, stageOf, STAGES, type Stage } from "#lib/trade/progress/stages.ts";

/** What is shown: `at:` the furthest stage reached, `not:` a stage not reached yet. */
export type StageFilter = "" | "at:nothing" | `at:${Stage}` | `not:${Stage}`;
export type ColumnFilter = {
  readonly stage: StageFilter;
  readonly markId: string;
  readonly gridLineId: string;
  readonly flagged: boolean;
  readonly text: string;
};
export const NO_FILTER: ColumnFilter = { stage: "", markId: "", gridLineId: "", flagged: false, text: "" };

export const STAGE_FILTERS: readonly { readonly value: StageFilter; readonly label: string }[] = [
  { value: "", label: "Every stage" },
  { value: "at:nothing", label: "Not started" },
  ...STAGES.map((stage) => ({ value: `at:${stage}` as const, label: `At ${stage}` })),
  ...STAGES.map((stage) => ({ value: `not:${stage}` as const, label: `Not yet ${stage}` })),
];
const isStageFilter = (text: string): text is StageFilter => STAGE_FILTERS.some(({ value }) => value === text);

function passesStage(done: number, filter: StageFilter): boolean {
  if (filter === "") return true;
  if (filter.startsWith("at:")) return `at:${stageOf(done) ?? "nothing"}` === filter;
  return !STAGES.some((stage) => `not:${stage}` === filter && hasDone(done, stage));
}

/** Somebody who looks for b4 means B/4; case, spaces and strokes do not matter. */
const plain = (text: string): string => text.replace(/[\s/\\-]/g, "").toUpperCase();

/** One of several references, as typed with commas between. */
function isLookedFor(gridRef: string, text: string): boolean {
  const wanted = text.split(/[,;]/).map(plain).filter((part) => part !== "");
  return wanted.length === 0 || wanted.some((part) => plain(gridRef).includes(part));
}

export function passes(column: SheetColumn, filter: ColumnFilter): boolean {
  return (
    passesStage(column.done, filter.stage) &&
    (filter.markId === "" || column.markId === filter.markId) &&
    (filter.gridLineId === "" || column.gridXId === filter.gridLineId || column.gridYId === filter.gridLineId) &&
    (!filter.flagged || column.flagged) &&
    isLookedFor(column.gridRef, filter.text)
  );
}

export const isFiltering = (filter: ColumnFilter): boolean =>
  filter.stage !== "" || filter.markId !== "" || filter.gridLineId !== "" || filter.flagged || filter.text !== "";

/** Stands in the address for all levels at once. */
export const EVERY_LEVEL = "every";

export const VIEWS = ["plan", "levels", "list"] as const;
export type View = (typeof VIEWS)[number];
/** All that the address says about the page, so that it can be sent to somebody. */
export type Shown = { readonly view: View | ""; readonly levelId: string; readonly filter: ColumnFilter };

export function readShown(query: URLSearchParams): Shown {
  const view = query.get("view") ?? "";
  const stage = query.get("stage") ?? "";
  const filter: ColumnFilter = {
    stage: isStageFilter(stage) ? stage : "",
    markId: query.get("mark") ?? "",
    gridLineId: query.get("line") ?? "",
    flagged: query.get("flagged") === "1",
    text: (query.get("find") ?? "").slice(0, 40),
  };
  return { view: VIEWS.find((known) => known === view) ?? "", levelId: query.get("level") ?? "", filter };
}

export function writeShown({ view, levelId, filter }: Shown): string {
  const pairs: [string, string][] = [
    ["view", view], ["level", levelId], ["stage", filter.stage], ["mark", filter.markId], ["line", filter.gridLineId],
    ["flagged", filter.flagged ? "1" : ""], ["find", filter.text],
  ];
  return new URLSearchParams(pairs.filter(([, value]) => value !== "")).toString();
}
