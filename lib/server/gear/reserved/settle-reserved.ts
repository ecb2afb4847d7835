import "server-only";
import { groupBy } from "#lib/kernel/group-by.ts";
import { outcomeOf, setAtHand, type Ending, type Reserved, type ReservedColumn, type ReservedPanel } from "#lib/trade/gear/reserved.ts";
import { misfits } from "#lib/trade/gear/set-fit.ts";
import { hasDone } from "#lib/trade/progress/stages.ts";
import { columnForm } from "../../columns/column-form.ts";
import { findColumn } from "../../columns/store.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { listClampKindRows } from "../../projects/clamp-store.ts";
import { readRules } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { assignMadeSet, takeSetOff } from "../panels/earn-cut.ts";
import { findAssignment, listHeldPanels, makeSetOf } from "../panels/set-store.ts";
import { readReservedPanels } from "./reserved-lines.ts";
import { bindReserved, endReserved, hasReserved, listReserved, listReservedColumns, listServed, reopenServed } from "./reserved-store.ts";

type State = { readonly lines: readonly Reserved[]; readonly columns: ReadonlyMap<string, ReservedColumn & { readonly done: number; readonly assignmentId: string | null }>; readonly panels: ReadonlyMap<string, ReservedPanel> };

async function readState(scope: ProjectScope): Promise<State> {
  const lines = await listReserved(scope);
  const columnIds = [...new Set(lines.flatMap(({ columnId, afterColumnId }) => [columnId, ...(afterColumnId ? [afterColumnId] : [])]))];
  const columns = new Map((await listReservedColumns(scope, columnIds)).map((row) => [row.id, { ...row, isStood: hasDone(row.done, "stood"), isStripped: hasDone(row.done, "stripped") }]));
  const panels = await readReservedPanels(scope, [...new Set(lines.flatMap(({ itemId }) => itemId ?? []))]);
  return { lines, columns, panels };
}

/**
 * Brings what is spoken for into line with what the site and the ledger say now, in the transaction that changed them:
 * lines end or learn which panel they get, a column whose whole set lies there gets it and is cut thereby, and one that
 * lost a panel loses the set again. Costs one question where nothing is spoken for.
 */
export async function settleReserved(scope: ProjectScope): Promise<void> {
  if (!(await hasReserved(scope))) return;
  await reopenServed(scope);
  let state = await readState(scope);
  // What one column is done with another begins with, so this goes on while anything changes.
  for (let round = 0; round < 3 && (await settleOnce(scope, state)); round += 1) state = await readState(scope);
  await makeUpSets(scope, state);
}

async function settleOnce(scope: ProjectScope, { lines, columns, panels }: State): Promise<boolean> {
  const served = new Map((await listServed(scope, lines.flatMap(({ afterColumnId }) => afterColumnId ?? []))).map(({ columnId, face, itemId }) => [`${columnId} ${face}`, itemId]));
  const known = {
    column: (id: string) => columns.get(id), panel: (id: string) => panels.get(id),
    cameOff: (columnId: string, face: string) => served.get(`${columnId} ${face}`) ?? columns.get(columnId)?.setItems?.[face] ?? null,
  };
  const outcomes = lines.flatMap((line) => outcomeOf(line, known) ?? []);
  for (const outcome of outcomes) if ("ending" in outcome) await end(scope, outcome.ending, { lines, columns, panels });
  for (const outcome of outcomes) if ("binding" in outcome) await bindReserved(scope, outcome.binding);
  return outcomes.length > 0;
}

async function end(scope: ProjectScope, { id, as, reason }: Ending, { lines, columns }: State): Promise<void> {
  await endReserved(scope, [id], as, reason);
  const line = lines.find((each) => each.id === id);
  const column = columns.get(line?.columnId ?? "");
  if (as === "fallen" && line && column && line.itemId !== null && column.setItems?.[line.face] === line.itemId) await loosen(scope, column.assignmentId, reason ?? "");
}

async function loosen(scope: ProjectScope, assignmentId: string | null, reason: string): Promise<void> {
  const assignment = assignmentId === null ? null : await findAssignment(scope, assignmentId);
  if (assignment) await takeSetOff(scope, assignment, reason);
}

/** A column whose whole set is on site gets it; one whose set went elsewhere loses it again. */
async function makeUpSets(scope: ProjectScope, { lines, columns, panels }: State): Promise<void> {
  const held = await listHeldPanels(scope);
  for (const [columnId, own] of groupBy(lines, (line) => line.columnId)) {
    const column = columns.get(columnId);
    if (!column) continue;
    const set = setAtHand(own, (id) => panels.get(id));
    const hasOwnSet = own.some(({ face, itemId }) => itemId !== null && column.setItems?.[face] === itemId);
    if (!set && hasOwnSet) await loosen(scope, column.assignmentId, "Its panels are not all on site any more");
    const isFree = column.assignmentId === null && !set?.some(({ itemId }) => held.some((each) => each.itemId === itemId && each.columnId !== columnId));
    if (set && isFree) await makeUpSet(scope, columnId, set, own);
  }
}

async function makeUpSet(scope: ProjectScope, columnId: string, set: NonNullable<ReturnType<typeof setAtHand>>, own: readonly Reserved[]): Promise<void> {
  const row = await findColumn(scope, columnId);
  if (!row) return;
  const { formSet } = columnForm(row, readRules(await readProject(scope)), await listClampKindRows(scope));
  const faces = formSet.ok ? formSet.value.panels.map(({ face, width, height }) => ({ face, widthMm: width, heightMm: height })) : own.map(({ face }) => ({ face, widthMm: 0, heightMm: 0 }));
  const wrong = misfits(faces, set);
  for (const { face, wanted, given } of wrong) await endReserved(scope, own.filter((line) => line.face === face).map(({ id }) => id), "fallen", `Face ${face} asks for ${wanted} now, the panel is ${given}`);
  if (wrong.length === 0) await assignMadeSet(scope, await makeSetOf(scope, set), { id: columnId, done: row.done }, scope.now);
}
