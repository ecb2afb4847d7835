import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getCuttingRule } from "#lib/server/cutting/cutting-rule.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { isExample } from "#app/_ui/message/example-notice.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { lengthFigure } from "#app/_ui/value/format-quantity.ts";
import { paths } from "#app/paths.ts";
import { ownAccount } from "../../../../own-account.ts";
import { Refused } from "../../../../refused.tsx";
import { StockForm } from "./stock-form.tsx";

export const metadata: Metadata = { title: "Stock" };

export default async function StockPage({ params }: { readonly params: Promise<{ projectId: string }> }) {
  const { projectId } = await params;
  const [answer, account] = await Promise.all([getCuttingRule(await currentCaller(), { projectId }), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const { project, cuttingRule, ply } = answer.value;
  const canEdit = account.ok && can(account.value.role, "project.set-up");
  const { units, currency } = project;
  return (
    <Page title="Stock" subtitle={`${project.name}: set-up`}>
      {canEdit ? null : <Notice title="To be read only.">The owner and the office change the set-up.</Notice>}
      {isExample(cuttingRule.source) ? <Notice title="Example prices and saw">They are made up to start from. Put in your own, and the line that names their source, before ordering.</Notice> : null}
      <p className="max-w-prose">
        What <Link href={paths.cutting(projectId)}>cutting plans</Link> cut from. The ply is the one under <Link href={paths.setUpPart(projectId, "shutter")}>Shutter</Link>,
        {` ${ply.label}; panels are made up from pieces no longer than ${lengthFigure(ply.sheetLength, units)} and no wider than ${lengthFigure(ply.sheetWidth, units)}.`}
      </p>
      <StockForm projectId={project.id} version={project.version} edge={{ units, currency }} rule={cuttingRule} canEdit={canEdit} />
    </Page>
  );
}
