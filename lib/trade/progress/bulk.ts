import type { ColumnState } from "./column-state.ts";
import { finding, type Finding } from "./finding.ts";
import { judge } from "./judge.ts";
import type { ProgressRule } from "./progress-rule.ts";
import type { Stage } from "./stages.ts";

/** `eventId` is the id the tick has or will have; left out in a preview. */
export type BulkColumn = {
  readonly columnId: string;
  readonly state: ColumnState;
  readonly rule: ProgressRule;
  readonly eventId?: string;
};
export type BulkTick = {
  readonly stage: Stage;
  readonly happenedAt: string;
  readonly by: string;
  readonly reason: string | null;
};
export type BulkTaken = {
  readonly columnId: string;
  readonly implied: readonly Stage[];
  readonly raises: readonly Finding[];
};
/** `needs-reason` would be taken with a reason; `query` would be stored to be settled; `done` and `refuse` not at all. */
export type BulkSkipped = {
  readonly columnId: string;
  readonly skip: "done" | "needs-reason" | "query" | "refuse";
  readonly because: readonly Finding[];
};
export type BulkOutcome = { readonly taken: readonly BulkTaken[]; readonly skipped: readonly BulkSkipped[] };

/** Ticks one stage on many columns: which take it, and which are left out and why. The order of the columns is kept. */
export function bulk(columns: readonly BulkColumn[], tick: BulkTick, arrivedAt: string): BulkOutcome {
  const taken: BulkTaken[] = [];
  const skipped: BulkSkipped[] = [];
  for (const column of columns) {
    const outcome = tickOne(column, tick, arrivedAt);
    if ("skip" in outcome) skipped.push(outcome);
    else taken.push(outcome);
  }
  return { taken, skipped };
}

function tickOne(column: BulkColumn, tick: BulkTick, arrivedAt: string): BulkTaken | BulkSkipped {
  const { columnId, state, rule } = column;
  const reached = state.reached[tick.stage];
  if (reached !== undefined) {
    const because = [finding("reached-already", { stage: tick.stage, reachedAt: reached.at })];
    return { columnId, skip: "done", because };
  }
  const proposal = { ...tick, kind: "stage-reached", id: column.eventId ?? "", columnId } as const;
  const verdict = judge(state, proposal, rule, arrivedAt);
  switch (verdict.kind) {
    case "accept":
      return { columnId, implied: verdict.implied, raises: verdict.raises };
    case "needs-reason":
      return { columnId, skip: verdict.kind, because: verdict.asks };
    case "query":
    case "refuse":
      return { columnId, skip: verdict.kind, because: [verdict.because] };
  }
}
