import "server-only";
import { addColumnsInput, changeColumnInput, changeMarkOnLevelInput, removeColumnsInput } from "#lib/contracts/columns.ts";
import { brokenRule, conflict, invalid, notFound, ok, type Problem } from "#lib/kernel/result.ts";
import { hasDone } from "#lib/trade/progress/stages.ts";
import { placeKey, splitGridRef } from "#lib/trade/schedule/grid-names.ts";
import { recordChange } from "../gate/change-line.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { newId } from "../platform/new-id.ts";
import { listGridLines, listLevels, listMarks, type GridLineRow } from "../projects/store.ts";
import { addColumnRows, changeColumnRow, changeColumnRows, findColumn, listColumnsOf, listTaken } from "./store.ts";

const sized = <T extends { shape: string; widthMm: number; depthMm: number }>(given: T) => ({
  shape: given.shape, widthMm: given.widthMm, depthMm: given.shape === "circle" ? given.widthMm : given.depthMm,
});

/** The grid lines a reference stands on; null where it names none, and the column is listed but not drawn on the plan. */
export function placeOnGrid(gridRef: string, gridLines: readonly GridLineRow[]) {
  const crossing = splitGridRef(gridRef);
  const names = crossing ? [crossing.lettered.toUpperCase(), crossing.numbered.toUpperCase()] : [];
  const on = (axis: string) => gridLines.find((line) => line.axis === axis && names.includes(line.name.toUpperCase()))?.id ?? null;
  return { gridXId: on("along-x"), gridYId: on("along-y") };
}

export const addColumns = projectUseCase("columns.addColumns", "column.change", addColumnsInput, async (scope, input) => {
  const levels = await listLevels(scope);
  const [from, to] = [levels.find((each) => each.id === input.fromLevelId), levels.find((each) => each.id === input.toLevelId)];
  const mark = (await listMarks(scope)).find((each) => each.id === input.markId);
  if (!from || !to) return notFound("level");
  if (!mark) return notFound("mark");
  if (to.elevationMm <= from.elevationMm) return brokenRule("level-not-above", { from: from.name, to: to.name });
  const taken = new Set((await listTaken(scope, from.id)).map((row) => placeKey(row.gridRef)));
  const problems = input.gridRefs.flatMap((gridRef, index): Problem[] => {
    const message = taken.has(placeKey(gridRef)) ? `${gridRef} already has a column from ${from.name}.` : null;
    taken.add(placeKey(gridRef));
    return message === null ? [] : [{ field: `gridRefs.${index}`, message }];
  });
  if (problems.length > 0) return invalid(...problems);
  const gridLines = await listGridLines(scope);
  const rows = input.gridRefs.map((gridRef) => ({
    id: newId(), gridRef, markId: mark.id, fromLevelId: from.id, toLevelId: to.id, ...sized(mark),
    headedBy: input.headedBy, formHeightMm: input.formHeightMm, ...placeOnGrid(gridRef, gridLines),
  }));
  await addColumnRows(scope, rows);
  const columnIds = rows.map((row) => row.id);
  await recordChange(scope, { kind: "schedule", detail: { added: rows.length, mark: mark.name, from: from.name }, columnIds });
  return ok({ columnIds });
});

export const changeColumn = projectUseCase("columns.changeColumn", "column.change", changeColumnInput, async (scope, input) => {
  const column = await findColumn(scope, input.columnId);
  if (!column) return notFound("column");
  if (hasDone(column.done, "stood") && input.reason === null) return brokenRule("column-already-stood", { column: column.gridRef });
  const next = { ...sized(input), headedBy: input.headedBy, formHeightMm: input.formHeightMm, concrete: input.concrete, remarks: input.remarks };
  const before = Object.fromEntries(Object.keys(next).map((key) => [key, column[key as keyof typeof next]]));
  if (!(await changeColumnRow(scope, column.id, input.version, next))) return conflict("column");
  await recordChange(scope, { kind: "schedule", detail: { changed: column.gridRef, before, after: next, reason: input.reason }, columnIds: [column.id] });
  return ok(null);
});

/** Size and height of a mark on one lift or from it up; columns already stood keep theirs, and are counted in the answer. */
export const changeMarkOnLevel = projectUseCase("columns.changeMarkOnLevel", "column.change", changeMarkOnLevelInput, async (scope, input) => {
  const levels = await listLevels(scope);
  const start = levels.findIndex((level) => level.id === input.fromLevelId);
  if (start < 0) return notFound("level");
  const fromLevelIds = levels.slice(start, input.andAbove ? undefined : start + 1).map((level) => level.id);
  const columns = await listColumnsOf(scope, { markId: input.markId, fromLevelIds });
  const open = columns.filter((column) => !hasDone(column.done, "stood"));
  if (columns.length === 0) return notFound("column");
  const next = { ...sized(input), headedBy: input.headedBy, formHeightMm: input.formHeightMm };
  await changeColumnRows(scope, open.map((column) => column.id), next);
  const columnIds = open.map((column) => column.id);
  if (open.length > 0) await recordChange(scope, { kind: "schedule", detail: { changed: open.length, after: next }, columnIds });
  return ok({ changed: open.length, left: columns.filter((column) => hasDone(column.done, "stood")).map((column) => column.gridRef) });
});

/** Takes columns out of the schedule; their record stays. One that has been stood must be set back first. */
export const removeColumns = projectUseCase("columns.removeColumns", "column.change", removeColumnsInput, async (scope, input) => {
  const columns = await listColumnsOf(scope, { ids: input.columnIds });
  if (columns.length !== new Set(input.columnIds).size) return notFound("column");
  const stood = columns.filter((column) => hasDone(column.done, "stood"));
  if (stood.length > 0) return brokenRule("column-already-stood", { column: stood.map((column) => column.gridRef).slice(0, 5).join(", ") });
  await changeColumnRows(scope, input.columnIds, { removedAt: scope.now });
  await recordChange(scope, { kind: "schedule", detail: { removed: columns.length, reason: input.reason }, columnIds: input.columnIds });
  return ok({ removed: columns.length });
});
