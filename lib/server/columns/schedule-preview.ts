import "server-only";
import { scheduleFileInput } from "#lib/contracts/columns.ts";
import { ok, type Result } from "#lib/kernel/result.ts";
import { compareSchedule, type SchedulePreview } from "#lib/trade/schedule/compare-schedule.ts";
import type { ScheduleReading } from "#lib/trade/schedule/lift.ts";
import { readSchedule } from "#lib/trade/schedule/read-schedule.ts";
import type { ProjectScope } from "../gate/scope.ts";
import { projectUseCase } from "../gate/use-case.ts";
import { sha256 } from "../platform/secrets.ts";
import { readProject } from "../projects/store.ts";
import { readKnownSchedule } from "./import-store.ts";
import { readSheet } from "./read-sheet.ts";

export type DrawnPreview = {
  readonly reading: Omit<ScheduleReading, "lifts">;
  readonly preview: SchedulePreview;
  /** Stands for this file against the project as it is now; a change of either gives another. */
  readonly digest: string;
};

/** Reads the file and compares it with the project; writes nothing. */
export async function drawPreview(scope: ProjectScope, fileName: string, file: Uint8Array): Promise<Result<DrawnPreview>> {
  const sheets = await readSheet(file, fileName);
  if (!sheets.ok) return sheets;
  const project = await readProject(scope);
  const known = await readKnownSchedule(scope);
  const { lifts: _, ...reading } = readSchedule(sheets.value, project.units === "us" ? "us" : "metric", known.levels);
  const preview = compareSchedule(known, { ...reading, lifts: _ });
  return ok({ reading, preview, digest: sha256(sha256(file) + JSON.stringify(preview)) });
}

export const previewSchedule = projectUseCase("columns.previewSchedule", "schedule.import", scheduleFileInput, (scope, { fileName, file }) =>
  drawPreview(scope, fileName, file),
);
