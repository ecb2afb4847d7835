import "server-only";
import { withdrawReservedInput } from "#lib/contracts/planning/reuse.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { hasDone } from "#lib/trade/progress/stages.ts";
import { recordChange } from "../../gate/change-line.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { takeSetOff } from "../../gear/panels/earn-cut.ts";
import { findAssignment } from "../../gear/panels/set-store.ts";
import { endReserved, listReserved, listReservedColumns } from "../../gear/reserved/reserved-store.ts";

/** Frees panels that were spoken for; a column that had its set from them loses it, and the cut it earned. */
export const withdrawReserved = projectUseCase("cutting.withdrawReserved", "reuse.accept", withdrawReservedInput, async (scope, { reservationIds, reason }) => {
  const seq = await recordChange(scope, { kind: "set-up", detail: { panels: "free again", lines: reservationIds.length, reason } });
  const lines = (await listReserved(scope)).filter(({ id }) => reservationIds.includes(id));
  if (lines.length < reservationIds.length) return notFound("line of the reuse plan");
  const columns = await listReservedColumns(scope, [...new Set(lines.map(({ columnId }) => columnId))]);
  for (const { id, done, assignmentId, setItems } of columns) {
    const own = lines.filter(({ columnId }) => columnId === id);
    if (!own.some(({ face, itemId }) => itemId !== null && setItems?.[face] === itemId)) continue;
    if (hasDone(done, "stood")) return brokenRule("set-stands-on-column", { column: own[0]?.gridRef ?? "" });
    const assignment = assignmentId === null ? null : await findAssignment(scope, assignmentId);
    if (assignment) await takeSetOff(scope, assignment, reason);
  }
  await endReserved(scope, lines.map(({ id }) => id), "withdrawn", reason);
  return ok({ seq });
});
