import "server-only";
import { importScheduleInput } from "#lib/contracts/columns.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import { brokenRule, conflict, ok } from "#lib/kernel/result.ts";
import { nameKey } from "#lib/trade/schedule/level-order.ts";
import type { ColumnChange, NewGridLine, SchedulePreview } from "#lib/trade/schedule/compare-schedule.ts";
import { recordChange, takeNumbers } from "../gate/change-line.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { newId } from "../platform/new-id.ts";
import { sha256 } from "../platform/secrets.ts";
import { listGridLines, listLevels, listMarks, type GridLineRow } from "../projects/store.ts";
import { placeOnGrid } from "./change-columns.ts";
import { addImport, addSetUpRows, moveLevels, patchColumns, type ColumnPatch } from "./import-store.ts";
import { drawPreview } from "./schedule-preview.ts";
import { addColumnRows } from "./store.ts";

/** A schedule names grid lines but does not space them; until somebody does, they stand this far apart. */
export const ASSUMED_SPACING_MM = 6000;

/** New lines go behind those of their family; where there are none yet, letters run along x and numbers along y. */
function spaceGridLines(existing: readonly GridLineRow[], added: readonly NewGridLine[]) {
  const isLettered = (name: string): boolean => /^[A-Za-z]/.test(name);
  const next = new Map<string, number>();
  return added.map(({ name, family }) => {
    const kin = existing.find((line) => isLettered(line.name) === (family === "lettered"));
    const axis = kin?.axis ?? (family === "lettered" ? "along-x" : "along-y");
    const last = next.get(axis) ?? Math.max(-ASSUMED_SPACING_MM, ...existing.filter((line) => line.axis === axis).map((line) => line.offsetMm));
    next.set(axis, last + ASSUMED_SPACING_MM);
    return { id: newId(), axis, name, offsetMm: last + ASSUMED_SPACING_MM };
  });
}

/** Takes in what the preview showed, whole or not at all. */
export const importSchedule = projectUseCase("columns.importSchedule", "schedule.import", importScheduleInput, async (scope, input) => {
  // Holds other writers of the project, so that it is still the project the preview is compared with.
  await takeNumbers(scope, 1);
  const drawn = await drawPreview(scope, input.fileName, input.file);
  if (!drawn.ok) return drawn;
  const { preview, reading, digest } = drawn.value;
  if (digest !== input.digest) return conflict("schedule preview");
  const created = preview.create.columns.length;
  const changed = new Set(preview.change.columns.map((change) => change.id)).size;
  if (created + changed + preview.create.levels.length + preview.change.levels.length === 0) return brokenRule("nothing-to-import");
  const columnIds = await takeIn(scope, preview);
  const id = newId();
  await addImport(scope, { id, fileName: input.fileName, sha256: sha256(input.file), layout: reading.layout ?? "list", file: input.file, created, changed });
  await recordChange(scope, { kind: "schedule", detail: { importId: id, fileName: input.fileName, created, changed }, columnIds });
  return ok({ created, changed });
});

async function takeIn(scope: ProjectScope, preview: SchedulePreview): Promise<string[]> {
  const { create, change } = preview;
  await moveLevels(scope, change.levels.map((level) => ({ id: level.id, elevationMm: Math.round(level.to) })));
  await addSetUpRows(scope, {
    levels: create.levels.map((level) => ({ id: newId(), name: level.name, elevationMm: Math.round(level.elevation_mm) })),
    gridLines: spaceGridLines(await listGridLines(scope), create.gridLines),
    marks: create.marks.map((mark) => ({ id: newId(), name: mark.name, shape: mark.shape, widthMm: mark.width_mm, depthMm: mark.depth_mm })),
  });

  const levelIds = new Map((await listLevels(scope)).map((level) => [nameKey(level.name), level.id]));
  const markIds = new Map((await listMarks(scope)).map((mark) => [nameKey(mark.name), mark.id]));
  const gridLines = await listGridLines(scope);
  const idIn = (ids: ReadonlyMap<string, string>, name: string): string => {
    const id = ids.get(nameKey(name));
    if (id === undefined) throw new Error(`The preview names ${name}, which is neither in the project nor in the file.`);
    return id;
  };
  const rows = create.columns.map((lift) => ({
    id: newId(), gridRef: lift.gridRef, markId: idIn(markIds, lift.mark), ...placeOnGrid(lift.gridRef, gridLines),
    fromLevelId: idIn(levelIds, lift.fromLevel), toLevelId: idIn(levelIds, lift.toLevel), shape: lift.shape,
    widthMm: lift.width_mm, depthMm: lift.depth_mm, headedBy: "slab", formHeightMm: null,
    concrete: lift.concrete, mainBars: lift.mainBars, remarks: lift.remarks,
  }));
  await addColumnRows(scope, rows);
  const patches = [...groupBy(change.columns, (each) => each.id)].map(([id, changes]) => toPatch(id, changes, (name) => idIn(markIds, name), (name) => idIn(levelIds, name)));
  await patchColumns(scope, patches);
  return [...rows.map((row) => row.id), ...patches.map((patch) => patch.id)];
}

function toPatch(id: string, changes: readonly ColumnChange[], markId: (name: string) => string, levelId: (name: string) => string): ColumnPatch {
  const patch: ColumnPatch = { id };
  for (const { what, to } of changes) {
    if (what === "mark") patch.markId = markId(String(to));
    else if (what === "toLevel") patch.toLevelId = levelId(String(to));
    else if (what === "shape") patch.shape = String(to);
    else if (what === "width") patch.widthMm = Number(to);
    else patch.depthMm = Number(to);
  }
  return patch;
}
