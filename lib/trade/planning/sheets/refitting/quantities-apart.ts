import type { Asking } from "#lib/kernel/linear-model.ts";
import { sheetAreaBound } from "../bounds/sheet-area-bound.ts";
import { refit } from "./refit.ts";
import { emptySet, type Filled, type Refitting, type SheetSet } from "./sheet-set.ts";

/**
 * Parts wanted equally often, as those of one form set are, on the fewest sheets of their own that their area allows, all
 * cut the same way; for one quantity after another as long as the goal has room. What goes on none of them is left.
 */
export function* eachQuantityApart(task: Refitting, rounds: number, seen: (sheet: Filled) => void): Asking<SheetSet> {
  const { problem, goal } = task;
  const all = emptySet(problem);
  for (const quantity of [...new Set(problem.demand)].sort((a, b) => b - a)) {
    const once = { ...problem, demand: problem.demand.map((count) => (count === quantity ? 1 : 0)) };
    const own = { ...problem, demand: problem.demand.map((count) => (count === quantity ? count : 0)) };
    const cost = quantity * sheetAreaBound(once);
    if (all.cost + cost > goal) continue;
    const set = yield* refit({ ...task, problem: own, goal: cost }, emptySet(own), rounds, seen);
    all.sheets.push(...set.sheets);
    all.cost += set.cost;
    for (const [type, count] of own.demand.entries()) all.left[type] = (all.left[type] ?? 0) - count + (set.left[type] ?? 0);
    all.leftArea += set.leftArea - emptySet(own).leftArea;
  }
  return all;
}
