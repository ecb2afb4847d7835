import { importSchedule } from "#lib/server/columns/import-schedule.ts";
import { getColumnsSheet } from "#lib/server/columns/columns-sheet.ts";
import { previewSchedule } from "#lib/server/columns/schedule-preview.ts";
import { createProject } from "#lib/server/projects/projects.ts";
import { readSheetRows } from "#lib/contracts/columns-sheet.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { PROJECT } from "#tests/support/builders/a-project.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

let count = 0;
export const anEmptyProject = async (by: Caller): Promise<string> => valueOf(await createProject(by, { ...PROJECT, name: `Import ${(count += 1)}` })).id;

type File = { readonly projectId: string; readonly fileName: string; readonly file: Uint8Array<ArrayBuffer> };
export const aFile = (projectId: string, file: Uint8Array<ArrayBuffer>, fileName = "schedule.csv"): File => ({ projectId, fileName, file });

/** Preview, then the same file confirmed. */
export async function importFile(by: Caller, file: File) {
  const { digest } = valueOf(await previewSchedule(by, file));
  return importSchedule(by, { ...file, digest });
}

/** The project's columns as plainly as a schedule would put them. */
export async function columnsOf(by: Caller, projectId: string) {
  const sheet = valueOf(await getColumnsSheet(by, { projectId }));
  const level = (id: string) => sheet.levels.find((each) => each.id === id);
  return readSheetRows(sheet).map((column) => ({
    id: column.id, gridRef: column.gridRef, mark: sheet.marks.find(({ id }) => id === column.markId)?.name, shape: column.shape,
    width_mm: column.width_mm, depth_mm: column.depth_mm, fromLevel: level(column.fromLevelId)?.name, toLevel: level(column.toLevelId)?.name,
    fromElevation_mm: level(column.fromLevelId)?.elevationMm, toElevation_mm: level(column.toLevelId)?.elevationMm,
  }));
}

export const levelsOf = async (by: Caller, projectId: string): Promise<[string, number][]> =>
  valueOf(await getColumnsSheet(by, { projectId })).levels.map(({ name, elevationMm }) => [name, elevationMm]);
