import "server-only";
import { acceptReuseInput, type ReuseLine } from "#lib/contracts/planning/reuse.ts";
import { brokenRule, ok, type Fail, type Failure } from "#lib/kernel/result.ts";
import { takeLines, type ChosenLine, type LineFault } from "#lib/trade/planning/reuse/chosen-lines.ts";
import type { PanelUse } from "#lib/trade/planning/reuse/reuse-order.ts";
import { recordChange } from "../../gate/change-line.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { addReserved, endReserved, listHolders, listReserved, type NewReserved } from "../../gear/reserved/reserved-store.ts";
import { settleReserved } from "../../gear/reserved/settle-reserved.ts";
import { faceKey } from "./panels-at-hand.ts";
import { reuseTask, type ReuseTask } from "./reuse-task.ts";

/**
 * Lines of a plan as they were shown are held against what is known now, and speak for their panels; one that no longer
 * holds refuses all. A plan of the whole takes the place of the lines accepted before, but for columns that have their set.
 */
export const acceptReuse = projectUseCase("cutting.acceptReuse", "reuse.accept", acceptReuseInput, async (scope, { lines, whole }) => {
  // Holds other writers of the project, ticks among them, until what is spoken for is written.
  const seq = await recordChange(scope, { kind: "set-up", detail: { panels: "spoken for", lines: lines.length } });
  const task = await reuseTask(scope, whole);
  const taken = takeLines(task.order, lines.map((line) => asChosen(line, task)));
  if (!taken.ok) return refusalOf(scope, task, taken.failure);
  if (whole) {
    const before = task.accepted.filter(({ columnId }) => !task.kept.has(columnId));
    await endReserved(scope, before.map(({ id }) => id), "superseded", null);
  }
  const rows = taken.value.map((use) => asReserved(use, task));
  const [lost] = await addReserved(scope, rows);
  if (lost) return clashOf(scope, lost, task);
  await settleReserved(scope);
  return ok({ seq, lines: rows.length });
});

function asChosen({ columnId, face, source }: ReuseLine, { order }: ReuseTask): ChosenLine {
  const demandId = faceKey(columnId, face);
  if (source.kind === "panel") return { demandId, source: { kind: "panel", panelId: source.itemId } };
  if (source.kind === "new") return { demandId, source };
  // What comes off a face accepted before stands among the panels, by the name of that face.
  const earlier = faceKey(source.columnId, source.face);
  return { demandId, source: order.panels.some(({ id }) => id === earlier) ? { kind: "panel", panelId: earlier } : { kind: "after", demandId: earlier } };
}

function asReserved({ demandId, source, cutDown }: PanelUse, { wanted }: ReuseTask): NewReserved {
  const face = wanted[demandId];
  if (!face) throw new Error("A line of a plan asks for a face that was not planned.");
  const { columnId, widthMm, heightMm } = face;
  const own = { columnId, face: face.face, widthMm, heightMm, cutDown, itemId: null, afterColumnId: null, afterFace: null };
  if (source.kind === "new") return { ...own, source: "new" };
  const from = source.kind === "panel" ? source.panelId : source.demandId;
  const [id, afterFace] = from.split(" ");
  return afterFace === undefined ? { ...own, source: "panel", itemId: id ?? null } : { ...own, source: "after", afterColumnId: id ?? null, afterFace };
}

async function refusalOf(scope: ProjectScope, task: ReuseTask, { demandId, source, why }: LineFault): Promise<Fail<Failure>> {
  const at = task.wanted[demandId];
  const [columnId = "", letter = ""] = demandId.split(" ");
  const held = task.accepted.find((line) => line.columnId === columnId && line.face === letter);
  if (why === "face-gone" && held) return brokenRule("face-spoken-for", { column: held.gridRef, level: held.level, face: letter, panel: panelWords(held), by: held.acceptedBy });
  if (why === "face-gone" || !at) return brokenRule("face-wants-nothing", { column: at?.column ?? "The column", face: letter });
  const column = { column: at.column, level: at.level, face: at.face };
  if (why === "earlier-not-chosen") return brokenRule("earlier-line-not-chosen", { ...column, earlier: source.kind === "after" ? task.wanted[source.demandId]?.column ?? "an earlier column" : "" });
  const named = source.kind === "panel" ? task.names[source.panelId]?.name : undefined;
  if (why === "panel-gone") {
    const [holder] = source.kind === "panel" ? await listHolders(scope, [source.panelId]) : [];
    return holder ? spokenFor(holder) : brokenRule("panel-serves-no-more", { ...column, panel: named ?? "The panel" });
  }
  return brokenRule(why === "not-back" ? "panel-back-too-late" : why === "worn-out" ? "panel-worn-out" : "panel-too-small", { ...column, panel: named ?? "The panel" });
}

/** Refused by the database: somebody else's line was first. */
async function clashOf(scope: ProjectScope, lost: NewReserved, { wanted }: ReuseTask): Promise<Fail<Failure>> {
  const [holder] = lost.itemId === null ? [] : await listHolders(scope, [lost.itemId]);
  if (holder) return spokenFor(holder);
  const lines = await listReserved(scope);
  const same = lines.find((line) => line.columnId === lost.columnId && line.face === lost.face);
  if (same) return brokenRule("face-spoken-for", { column: same.gridRef, level: same.level, face: same.face, panel: panelWords(same), by: same.acceptedBy });
  const follower = lines.find((line) => line.afterColumnId === lost.afterColumnId && line.afterFace === lost.afterFace);
  return brokenRule("yield-spoken-for", {
    column: follower?.gridRef ?? "another column", level: follower?.level ?? "", face: lost.afterFace ?? "", earlier: wanted[faceKey(lost.afterColumnId ?? "", lost.afterFace ?? "")]?.column ?? follower?.after ?? "an earlier column",
  });
}

const spokenFor = ({ panel, column, level, face, project }: { panel: string; column: string; level: string; face: string; project: string }) =>
  brokenRule("panel-spoken-for", { panel, column, level, face, project });
const panelWords = ({ panel, after, afterFace }: { panel: string | null; after: string | null; afterFace: string | null }): string =>
  panel ?? (after ? `what comes off ${after}, face ${afterFace ?? ""}` : "a new panel");
