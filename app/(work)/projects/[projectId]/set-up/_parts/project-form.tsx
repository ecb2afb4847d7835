"use client";

import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { ProjectFields } from "../../../_parts/project-fields.tsx";
import { readProject } from "../../../_parts/read-project.ts";
import { changeProjectAction } from "./actions.ts";
import type { SetUp } from "./set-up-page.tsx";

export type ProjectFormProps = Pick<SetUp, "project" | "progressRule"> & { readonly canEdit: boolean };

export function ProjectForm({ project, progressRule, canEdit }: ProjectFormProps) {
  const answered = useAnswer((data) =>
    changeProjectAction({ projectId: project.id, version: project.version, ...readProject(data), progressRule }));
  return (
    <SaveForm answered={answered} label="Save" done="Saved." canEdit={canEdit}>
      <ProjectFields basics={project} />
    </SaveForm>
  );
}
