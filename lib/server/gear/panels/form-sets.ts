import "server-only";
import { assignSetInput, saveFormSetInput, unassignSetInput } from "#lib/contracts/gear.ts";
import { brokenRule, notFound, ok } from "#lib/kernel/result.ts";
import { panelLife } from "#lib/trade/gear/panel-life.ts";
import { misfits } from "#lib/trade/gear/set-fit.ts";
import { foldColumn } from "#lib/trade/progress/column-state.ts";
import { hasDone } from "#lib/trade/progress/stages.ts";
import { columnForm } from "../../columns/column-form.ts";
import { findColumn } from "../../columns/store.ts";
import { takeNumbers } from "../../gate/change-line.ts";
import type { ProjectScope } from "../../gate/scope.ts";
import { projectUseCase } from "../../gate/use-case.ts";
import { clashOf } from "../../platform/db.ts";
import { toProgressRule } from "../../progress/rule.ts";
import { listEventsOf } from "../../progress/store.ts";
import { listClampKindRows } from "../../projects/clamp-store.ts";
import { projectHead, readRules } from "../../projects/project-head.ts";
import { readProject } from "../../projects/store.ts";
import { endReserved, listHolders, listReserved } from "../reserved/reserved-store.ts";
import { letGearFollow } from "../ticks/follow-ticks.ts";
import { listPanels } from "./panel-store.ts";
import { assignMadeSet, takeSetOff } from "./earn-cut.ts";
import { findAssignment, findSet, writeSet } from "./set-store.ts";

/** Which panels make a set; those left out are free again. */
export const saveFormSet = projectUseCase("gear.saveFormSet", "gear.move", saveFormSetInput, async (scope, { setId, name, panels }) => {
  const rows = await listPanels(scope, { itemIds: panels.map(({ itemId }) => itemId) });
  if (rows.length < panels.length) return notFound("panel");
  const elsewhere = rows.find((panel) => panel.setId !== null && panel.setId !== setId);
  if (elsewhere) return brokenRule("panel-in-other-set", { panel: elsewhere.name, set: elsewhere.set ?? "" });
  const ended = rows.find((panel) => panelLife(panel, panel.events, panel.strippedAt).ended);
  if (ended) return brokenRule("panel-ended", { panel: ended.name, how: panelLife(ended, ended.events, ended.strippedAt).ended?.kind ?? "" });
  try {
    const id = await writeSet(scope, setId, name, panels);
    return id === null ? notFound("form set") : ok({ id });
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("set-name-taken", { name });
    throw error;
  }
});

/** A made set closes the column: it is cut without cutting, and its panels go along once the column is stood. */
export const assignSet = projectUseCase("gear.assignSet", "gear.move", assignSetInput, async (scope, { setId, columnId, happenedAt }) => {
  const [set, column] = [await findSet(scope, setId), await findColumn(scope, columnId)];
  if (!set) return notFound("form set");
  if (!column) return notFound("column");
  if (hasDone(column.done, "stripped")) return brokenRule("column-stripped-already", { column: column.gridRef });
  // Holds whoever accepts a reuse plan meanwhile.
  await takeNumbers(scope, 1);
  const [holder] = (await listHolders(scope, set.panels.map(({ itemId }) => itemId))).filter((each) => each.columnId !== columnId);
  if (holder) return brokenRule("set-spoken-for", { panel: holder.panel, set: set.name, column: holder.column, level: holder.level });
  const row = await readProject(scope);
  const rules = readRules(row);
  const { formSet } = columnForm(column, rules, await listClampKindRows(scope));
  if (!formSet.ok) return brokenRule("column-without-form", { column: column.gridRef });
  const wanted = formSet.value.panels.map(({ face, width, height }) => ({ face, widthMm: width, heightMm: height }));
  const [misfit] = misfits(wanted, set.panels.map(({ face, panel }) => ({ face, widthMm: panel.widthMm, heightMm: panel.heightMm })));
  if (misfit) return brokenRule("set-does-not-fit", { set: set.name, column: column.gridRef, ...misfit });

  try {
    const assignment = await assignMadeSet(scope, set, column, happenedAt);
    await endOther(scope, columnId, set.panels.map(({ itemId }) => itemId));
    if (hasDone(column.done, "stood")) {
      const rule = toProgressRule(rules.progressRule, projectHead(row));
      await letGearFollow(scope, new Map([[columnId, foldColumn(await listEventsOf(scope, [columnId]), rule)]]), rules);
    }
    return ok(assignment);
  } catch (error) {
    if (clashOf(error) === "duplicate") return brokenRule("column-has-set", { column: column.gridRef });
    throw error;
  }
});

/** What was spoken for by the column and is not in the set it got instead is free again. */
async function endOther(scope: ProjectScope, columnId: string, itemIds: readonly string[]): Promise<void> {
  const other = (await listReserved(scope, [columnId])).filter(({ itemId }) => itemId === null || !itemIds.includes(itemId));
  if (other.length > 0) await endReserved(scope, other.map(({ id }) => id), "superseded", null);
}

/** Takes the set off a column that it has not been stood on; the cut it earned goes with it. */
export const unassignSet = projectUseCase("gear.unassignSet", "gear.move", unassignSetInput, async (scope, { assignmentId, reason }) => {
  const assignment = await findAssignment(scope, assignmentId);
  if (!assignment) return notFound("assignment");
  if (hasDone(assignment.column.done, "stood")) return brokenRule("set-stands-on-column", { column: assignment.column.gridRef });
  await takeSetOff(scope, assignment, reason);
  await endReserved(scope, (await listReserved(scope, [assignment.columnId])).map(({ id }) => id), "withdrawn", reason);
  return ok(null);
});
