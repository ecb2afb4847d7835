import "server-only";
import { groupBy } from "#lib/kernel/group-by.ts";
import { foldColumn } from "#lib/trade/progress/column-state.ts";
import type { ProgressRule } from "#lib/trade/progress/progress-rule.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { keepStates, listColumnIdsWithEvents, listEventsOf } from "./store.ts";

const AT_ONCE = 500;

/** Folds every column anew: what counts as implied or as an exception depends on the project's rule. */
export async function refoldProject(scope: ProjectScope, rule: ProgressRule): Promise<void> {
  const ids = await listColumnIdsWithEvents(scope);
  for (let start = 0; start < ids.length; start += AT_ONCE) {
    const events = groupBy(await listEventsOf(scope, ids.slice(start, start + AT_ONCE)), (event) => event.columnId);
    await keepStates(scope, new Map([...events].map(([id, own]) => [id, foldColumn(own, rule)])));
  }
}
