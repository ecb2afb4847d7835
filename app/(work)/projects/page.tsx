import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { listProjects } from "#lib/server/projects/projects.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../own-account.ts";
import { Refused } from "../refused.tsx";
import { ProjectCard } from "./_parts/project-card.tsx";

export const metadata: Metadata = { title: "Projects" };

export default async function ProjectsPage() {
  const [answer, account] = await Promise.all([listProjects(await currentCaller(), {}), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const maySetUp = account.ok && can(account.value.role, "project.set-up");
  const newProject = maySetUp ? <ButtonLink href={paths.newProject()} kind="primary">New project</ButtonLink> : null;
  const open = answer.value.filter((project) => !project.isArchived);
  const archived = answer.value.filter((project) => project.isArchived);
  return (
    <Page title="Projects" actions={open.length > 0 ? newProject : null}>
      {open.length === 0 ? (
        <EmptyState title="No project yet" actions={newProject}>
          {maySetUp
            ? "Start one: name, site and units. Then its levels, grid and column schedule go in, by form or from a file."
            : "The owner or the office starts one; it will stand here."}
        </EmptyState>
      ) : (
        <ul className="flex flex-col gap-4">{open.map((project) => <li key={project.id}><ProjectCard {...project} /></li>)}</ul>
      )}
      {archived.length > 0 ? (
        <Section title="Archived">
          <ul className="flex flex-col gap-4">{archived.map((project) => <li key={project.id}><ProjectCard {...project} /></li>)}</ul>
        </Section>
      ) : null}
    </Page>
  );
}
