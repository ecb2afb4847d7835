import type { ReactNode } from "react";
import { can, type Permission } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { getSetUp } from "#lib/server/projects/get-set-up.ts";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { ownAccount } from "../../../../own-account.ts";
import { Refused } from "../../../../refused.tsx";

export type SetUp = Extract<Awaited<ReturnType<typeof getSetUp>>, { ok: true }>["value"];
export type SetUpParams = { readonly params: Promise<{ projectId: string }> };

export type SetUpPageProps = SetUpParams & {
  readonly title: string;
  readonly permission?: Permission;
  readonly children: (setUp: SetUp, canEdit: boolean) => ReactNode;
};

/** A page of the set-up: reads it once, and says so where a person may look but not change. */
export async function SetUpPage({ params, title, permission = "project.set-up", children }: SetUpPageProps) {
  const { projectId } = await params;
  const [answer, account] = await Promise.all([getSetUp(await currentCaller(), { projectId }), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  const canEdit = account.ok && can(account.value.role, permission);
  return (
    <Page title={title} subtitle={`${answer.value.project.name}: set-up`}>
      {canEdit ? null : <Notice title="To be read only.">The owner and the office change the set-up.</Notice>}
      {children(answer.value, canEdit)}
    </Page>
  );
}
