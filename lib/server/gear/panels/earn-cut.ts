import "server-only";
import { hasDone } from "#lib/trade/progress/stages.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { newId } from "../../platform/new-id.ts";
import { takeEvents } from "../../progress/take-events.ts";
import { addAssignment, endAssignment } from "./set-store.ts";

type Set = { readonly id: string; readonly name: string };

/** A made set closes the column, which is cut thereby without cutting. */
export async function assignMadeSet(scope: ProjectScope, set: Set, column: { readonly id: string; readonly done: number }, happenedAt: string) {
  let cutEventId: string | null = null;
  if (!hasDone(column.done, "cut")) {
    const event = { kind: "stage-reached" as const, stage: "cut" as const, id: newId(), columnId: column.id, happenedAt, reason: `Form set ${set.name} was made already` };
    const { answers } = await takeEvents(scope, [event], true);
    if (answers[0]?.outcome === "accepted" || answers[0]?.outcome === "queried") cutEventId = event.id;
  }
  const assignment = await addAssignment(scope, { setId: set.id, columnId: column.id, assignedAt: happenedAt, cutEventId });
  return { ...assignment, earnedCut: cutEventId !== null };
}

/** The set is taken off, and the cut it had earned goes with it. */
export async function takeSetOff(scope: ProjectScope, { id, columnId, cutEventId }: { readonly id: string; readonly columnId: string; readonly cutEventId: string | null }, reason: string): Promise<void> {
  if (cutEventId !== null) await takeEvents(scope, [{ kind: "withdrawn", id: newId(), columnId, eventId: cutEventId, happenedAt: scope.now, reason }], true);
  await endAssignment(scope, id);
}
