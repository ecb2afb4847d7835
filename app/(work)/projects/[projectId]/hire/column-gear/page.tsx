import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getColumnGear } from "#lib/server/returns/column-gear.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { Link } from "#app/_ui/control/link.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../../own-account.ts";
import { Refused } from "../../../../refused.tsx";
import { GearForm } from "./gear-form.tsx";

export const metadata: Metadata = { title: "Gear per column" };

export default async function ColumnGearPage({ params }: { readonly params: Promise<{ projectId: string }> }) {
  const { projectId } = await params;
  const [answer, account] = await Promise.all([getColumnGear(await currentCaller(), { projectId }), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, items, levels, rows } = answer.value;
  const canEdit = account.ok && can(account.value.role, "project.set-up");
  return (
    <Page title="Gear per column" subtitle={project.name}>
      {canEdit ? null : <Notice title="To be read only.">The owner and the office change the set-up.</Notice>}
      <p className="max-w-prose">
        What a column holds from the day it is stood until it is stripped, beside the clamps and wedges of its clamp layout. <Link href={paths.returnPlan(project.id)}>Return plans</Link> count it.
        Take the numbers from the formwork&rsquo;s design: nothing here works out how many props a form needs, and a row is no leave to use fewer. An empty limit is none; a column on a limit belongs below it.
      </p>
      {items.length === 0 ? (
        <EmptyState title="No props, bars or other gear yet" actions={<ButtonLink href={paths.gear(project.id)}>Gear</ButtonLink>}>Add the item under Gear first, then say here how many a column holds.</EmptyState>
      ) : (
        <GearForm projectId={project.id} version={project.version} units={project.units} items={items} levels={levels} rows={rows} canEdit={canEdit} />
      )}
    </Page>
  );
}
