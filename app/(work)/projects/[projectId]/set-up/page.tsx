import type { Metadata } from "next";
import { Section } from "#app/_ui/page/section.tsx";
import { ArchiveButton } from "./_parts/archive-button.tsx";
import { ProjectForm } from "./_parts/project-form.tsx";
import { SetUpPage, type SetUpParams } from "./_parts/set-up-page.tsx";

export const metadata: Metadata = { title: "Set-up" };

export default function ProjectSetUpPage({ params }: SetUpParams) {
  return (
    <SetUpPage params={params} title="Project">
      {({ project, progressRule }, canEdit) => (
        <>
          <ProjectForm project={project} progressRule={progressRule} canEdit={canEdit} />
          {canEdit ? (
            <Section title={project.isArchived ? "Back to work" : "Finished"}>
              <ArchiveButton projectId={project.id} isArchived={project.isArchived} />
            </Section>
          ) : null}
        </>
      )}
    </SetUpPage>
  );
}
