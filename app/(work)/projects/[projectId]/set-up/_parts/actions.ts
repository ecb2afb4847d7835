"use server";

import { revalidatePath } from "next/cache";
import type { Result } from "#lib/kernel/result.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import {
  archiveProject, changePourConditions, changeProject, changeShutterRule,
} from "#lib/server/projects/projects.ts";
import { saveGridLines, saveLevels, saveMarks } from "#lib/server/projects/save-lists.ts";
import { paths } from "#app/paths.ts";

/** What the page shows has changed: by this save, or by somebody else's that came first. */
const isNews = (saved: Result<unknown>): boolean => saved.ok || saved.failure.kind === "conflict";
const redraw = (projectId: string): void => revalidatePath(paths.project(projectId), "layout");

export async function changeProjectAction(input: Parameters<typeof changeProject>[1]) {
  const changed = await changeProject(await currentCaller(), input);
  if (changed.ok) redraw(input.projectId);
  return changed;
}

export async function archiveProjectAction(input: Parameters<typeof archiveProject>[1]) {
  const changed = await archiveProject(await currentCaller(), input);
  if (changed.ok) redraw(input.projectId);
  return changed;
}

export async function changeShutterRuleAction(input: Parameters<typeof changeShutterRule>[1]) {
  const changed = await changeShutterRule(await currentCaller(), input);
  if (changed.ok) redraw(input.projectId);
  return changed;
}

export async function changePourConditionsAction(input: Parameters<typeof changePourConditions>[1]) {
  const changed = await changePourConditions(await currentCaller(), input);
  if (changed.ok) redraw(input.projectId);
  return changed;
}

export async function saveLevelsAction(input: Parameters<typeof saveLevels>[1]) {
  const saved = await saveLevels(await currentCaller(), input);
  if (isNews(saved)) redraw(input.projectId);
  return saved;
}

export async function saveGridLinesAction(input: Parameters<typeof saveGridLines>[1]) {
  const saved = await saveGridLines(await currentCaller(), input);
  if (isNews(saved)) redraw(input.projectId);
  return saved;
}

export async function saveMarksAction(input: Parameters<typeof saveMarks>[1]) {
  const saved = await saveMarks(await currentCaller(), input);
  if (isNews(saved)) redraw(input.projectId);
  return saved;
}
