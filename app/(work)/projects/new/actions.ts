"use server";

import { revalidatePath } from "next/cache";
import { currentCaller } from "#lib/server/gate/session.ts";
import { createProject } from "#lib/server/projects/projects.ts";
import { paths } from "#app/paths.ts";

export async function createProjectAction(input: Parameters<typeof createProject>[1]) {
  const created = await createProject(await currentCaller(), input);
  if (created.ok) revalidatePath(paths.projects());
  return created;
}
