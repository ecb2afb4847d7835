import "server-only";
import type { LiveMessage } from "#lib/contracts/columns-sheet.ts";
import { changesSinceInput } from "#lib/contracts/progress.ts";
import { ok } from "#lib/kernel/result.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { listChangesSince, listStates, readLastSeq } from "./store.ts";

const MOST_LINES = 100;
const MOST_COLUMNS = 1500;

export type Changes = { /** Everything up to here is in the answer or was known before. */ readonly seq: number; readonly messages: readonly LiveMessage[] };

/** What changed after `since`, for a screen to catch up. Too far behind, it is told to read the whole sheet again. */
export const readChanges = projectUseCase("progress.readChanges", "progress.read", changesSinceInput, async (scope, { since }) => {
  const lastSeq = await readLastSeq(scope);
  const lines = await listChangesSince(scope, since, MOST_LINES + 1);
  const columnIds = [...new Set(lines.flatMap((line) => line.columnIds))];
  const last = lines.at(-1);
  const seq = Math.max(lastSeq, Number(last?.seq ?? 0));
  if (last && (lines.length > MOST_LINES || columnIds.length > MOST_COLUMNS)) {
    const reread: LiveMessage = { seq, kind: "schedule", by: last.person.name, columns: [] };
    return ok<Changes>({ seq, messages: [reread] });
  }
  const states = new Map((await listStates(scope, columnIds)).map((state) => [state.id, state]));
  const messages = lines.map((line): LiveMessage => ({
    seq: Number(line.seq),
    kind: line.kind as LiveMessage["kind"],
    by: line.person.name,
    columns: line.kind === "progress" ? line.columnIds.flatMap((id) => states.get(id) ?? []) : [],
  }));
  return ok<Changes>({ seq, messages });
});
