import type { ColumnState } from "./column-state.ts";
import { missingGates, stripFromOf, type ProgressRule } from "./progress-rule.ts";
import { epochOf } from "./site-event.ts";
import { hasDone, STAGES, type Gate, type Stage } from "./stages.ts";

/** "strip time" lasts until `stripFrom`; with no `stripFrom` the pour or its strip time is not known. */
export type Block = "held" | "queried" | "strip time" | Gate;
export type Next = {
  /** Null when the column is finished. */
  readonly stage: Stage | null;
  readonly blockedBy: readonly Block[];
  readonly stripFrom: string | null;
};

/** What is next for a column, and what stands in its way at `now`. */
export function next(state: ColumnState, rule: ProgressRule, now: string): Next {
  const stripFrom = stripFromOf(state.pouredAt, rule);
  const stage = nextStage(state.done, rule);
  if (stage === null) return { stage, blockedBy: state.queried.length > 0 ? ["queried"] : [], stripFrom };
  const tooYoung = stage === "stripped" && (stripFrom === null || epochOf(now) < epochOf(stripFrom));
  const blockedBy: readonly Block[] = [
    ...(state.held === null ? [] : (["held"] as const)),
    ...(state.queried.length === 0 ? [] : (["queried"] as const)),
    ...missingGates(state, stage, null, rule),
    ...(tooYoung ? (["strip time"] as const) : []),
  ];
  return { stage, blockedBy, stripFrom };
}

/** A crew that plumbs as the concrete goes in pours next after clamping, and plumbs then if it has not yet. */
export function nextStage(done: number, { plumbing }: Pick<ProgressRule, "plumbing">): Stage | null {
  const open = STAGES.filter((stage) => !hasDone(done, stage));
  const pourFirst = plumbing === "during-pour" && !hasDone(done, "poured");
  return open.find((stage) => !(pourFirst && stage === "plumbed")) ?? null;
}
