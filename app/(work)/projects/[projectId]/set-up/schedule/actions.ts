"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { importSchedule } from "#lib/server/columns/import-schedule.ts";
import { previewSchedule } from "#lib/server/columns/schedule-preview.ts";
import { textOf } from "#app/_ui/form/read-form.ts";
import { paths } from "#app/paths.ts";
import { shortenPreview } from "./preview/shorten-preview.ts";

async function fileIn(data: FormData): Promise<{ projectId: string; fileName: string; file: Uint8Array<ArrayBuffer> }> {
  const given = data.get("file");
  const file = given instanceof File ? given : new File([], "");
  return { projectId: textOf(data, "projectId"), fileName: file.name || "schedule", file: new Uint8Array(await file.arrayBuffer()) };
}

export async function previewScheduleAction(data: FormData) {
  const drawn = await previewSchedule(await currentCaller(), await fileIn(data));
  return drawn.ok ? { ok: true as const, value: shortenPreview(drawn.value) } : drawn;
}

export async function importScheduleAction(data: FormData) {
  const given = await fileIn(data);
  const imported = await importSchedule(await currentCaller(), { ...given, digest: textOf(data, "digest") });
  if (imported.ok) revalidatePath(paths.project(given.projectId), "layout");
  return imported;
}
