import type { Metadata } from "next";
import { Link } from "#app/_ui/control/link.tsx";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { listClampKinds } from "#lib/server/projects/clamp-kinds.ts";
import { listProjects } from "#lib/server/projects/projects.ts";
import { Caution } from "#app/_ui/message/caution.tsx";
import { ExampleNotice } from "#app/_ui/message/example-notice.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../own-account.ts";
import { Refused } from "../refused.tsx";
import { ClampKinds } from "./clamp-kinds.tsx";

export const metadata: Metadata = { title: "Clamp kinds" };

type Props = { readonly searchParams: Promise<Record<string, string | string[] | undefined>> };

/** The company has no units of its own: those asked for, else the ones all its open projects share. */
function unitsFor(asked: unknown, projects: readonly { units: Units; isArchived: boolean }[]): Units {
  if (asked === "us" || asked === "metric") return asked;
  const open = projects.filter((project) => !project.isArchived);
  return open.length > 0 && open.every((project) => project.units === "us") ? "us" : "metric";
}

export default async function ClampsPage({ searchParams }: Props) {
  const caller = await currentCaller();
  const [answer, projects, account] = await Promise.all([listClampKinds(caller, {}), listProjects(caller, {}), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const canEdit = account.ok && can(account.value.role, "clamp-kind.change");
  const units = unitsFor((await searchParams)["units"], projects.ok ? projects.value : []);
  const examples = answer.value.filter((kind) => kind.isExample).map((kind) => kind.name);
  return (
    <Page title="Clamp kinds" subtitle="For all projects">
      <p className="max-w-prose">
        The clamps the company hires or owns. Only kinds with the hirer&rsquo;s stated capacity belong here: the layout of every column rests on it.
        {" "}<Link href={paths.clamps(units === "us" ? "metric" : "us")}>{units === "us" ? "Show in metric" : "Show in US customary"}</Link>
      </p>
      {canEdit ? null : <Notice title="To be read only.">The owner and the office change the clamp kinds.</Notice>}
      <ExampleNotice what={examples} />
      <ClampKinds key={units} kinds={answer.value} units={units} canEdit={canEdit} />
      <Caution of="clamp layout" />
    </Page>
  );
}
