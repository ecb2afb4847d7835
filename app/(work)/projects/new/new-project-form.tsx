"use client";

import { useRouter } from "next/navigation";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { paths } from "#app/paths.ts";
import { ProjectFields } from "../_parts/project-fields.tsx";
import { readProject } from "../_parts/read-project.ts";
import { createProjectAction } from "./actions.ts";

export function NewProjectForm() {
  const router = useRouter();
  const answered = useAnswer(async (data) => {
    const created = await createProjectAction(readProject(data));
    if (created.ok) router.push(paths.setUpPart(created.value.id, "levels"));
    return created;
  });
  return (
    <SaveForm answered={answered} label="Start the project" done="Started; opening its levels.">
      <ProjectFields />
    </SaveForm>
  );
}
