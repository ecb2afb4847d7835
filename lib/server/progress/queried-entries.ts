import "server-only";
import type { QueriedEntry } from "#lib/contracts/progress.ts";
import type { ColumnState } from "#lib/trade/progress/column-state.ts";
import type { Finding } from "#lib/trade/progress/finding.ts";
import { judge } from "#lib/trade/progress/judge.ts";
import type { ProgressRule } from "#lib/trade/progress/progress-rule.ts";
import type { SiteEvent } from "#lib/trade/progress/site-event.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { listEventsById } from "./store.ts";

function speaksAgainst(state: ColumnState, event: SiteEvent, rule: ProgressRule): Finding | null {
  const verdict = judge(state, event, rule, event.arrivedAt);
  if (verdict.kind === "accept") return null;
  return verdict.kind === "needs-reason" ? (verdict.asks[0] ?? null) : verdict.because;
}

/** The entries to be settled of these columns, by column. */
export async function listQueriedEntries(
  scope: ProjectScope, columns: readonly { readonly id: string; readonly state: ColumnState }[], rule: ProgressRule,
): Promise<ReadonlyMap<string, readonly QueriedEntry[]>> {
  const ids = columns.flatMap(({ state }) => state.queried);
  const found = ids.length === 0 ? [] : await listEventsById(scope, ids);
  return new Map(columns.map(({ id, state }) => [
    id,
    found.filter(({ event }) => event.columnId === id).map(({ event, byName }) => ({ event, byName, because: speaksAgainst(state, event, rule) })),
  ]));
}
