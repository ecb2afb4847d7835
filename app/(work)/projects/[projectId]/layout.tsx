import type { Metadata } from "next";
import { cache, type ReactNode } from "react";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getProject } from "#lib/server/projects/get-set-up.ts";
import { NavBar } from "#app/_ui/page/nav-bar.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { FieldLine } from "#app/_field/field-line.tsx";
import { KeepPages } from "#app/_field/keep-pages.tsx";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../own-account.ts";
import { Refused } from "../../refused.tsx";

type Props = { readonly params: Promise<{ projectId: string }>; readonly children: ReactNode };

/** Once for a request, though title and page both ask. */
const projectOf = cache(async (projectId: string) => getProject(await currentCaller(), { projectId }));
const readProject = async (params: Props["params"]) => projectOf((await params).projectId);

export async function generateMetadata({ params }: Pick<Props, "params">): Promise<Metadata> {
  const project = await readProject(params);
  const name = project.ok ? project.value.name : "Shutterwright";
  return { title: { template: `%s · ${name}`, default: name } };
}

export default async function ProjectLayout({ params, children }: Props) {
  const project = await readProject(params);
  if (!project.ok) return <Refused failure={project.failure} />;
  const account = await ownAccount();
  if (!account.ok) return <Refused failure={account.failure} />;
  const { id, name, isArchived, timeZone, units } = project.value;
  const pages = [
    { href: paths.today(id), label: "Today" },
    { href: paths.columns(id), label: "Columns" },
    { href: paths.pours(id), label: "Pours" },
    { href: paths.gear(id), label: "Gear" },
    { href: paths.hire(id), label: "Hire" },
    { href: paths.workings(id), label: "Workings" },
    { href: paths.setUp(id), label: "Set-up" },
  ];
  return (
    <>
      <KeepPages others={[paths.today(id), paths.columns(id), paths.gather(id)]} />
      <FieldLine project={{ id, timeZone, units }} me={{ id: account.value.id, name: account.value.name, role: account.value.role }} />
      <NavBar label={name} items={pages} />
      {isArchived ? (
        <div className="no-print mx-auto max-w-7xl px-3 pt-3 sm:px-6">
          <Notice title="This project is archived.">Nothing is lost; it stands at the end of the list of projects.</Notice>
        </div>
      ) : null}
      {children}
    </>
  );
}
