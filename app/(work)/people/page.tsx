import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { currentCaller } from "#lib/server/gate/session.ts";
import { listPeople } from "#lib/server/people/manage-people.ts";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { ownAccount } from "../own-account.ts";
import { Refused } from "../refused.tsx";
import { InviteForm } from "./invite-form.tsx";
import { OpenInvitations } from "./open-invitations.tsx";
import { PeopleTable } from "./people-table.tsx";

export const metadata: Metadata = { title: "People" };

export default async function PeoplePage() {
  const [answer, account] = await Promise.all([listPeople(await currentCaller(), {}), ownAccount()]);
  if (!answer.ok) return <Refused failure={answer.failure} />;
  if (!account.ok) return <Refused failure={account.failure} />;
  const mayManage = can(account.value.role, "people.manage");
  const { people, invitations } = answer.value;
  return (
    <Page title="People" subtitle={account.value.companyName}>
      {mayManage ? null : <Notice title="To be read only.">The owner invites people and changes their roles.</Notice>}
      <PeopleTable people={people} ownId={account.value.id} mayManage={mayManage} />
      {mayManage ? (
        <>
          <Section title="Invite somebody"><InviteForm /></Section>
          <Section title="Open invitations">
            {invitations.length === 0
              ? <p className="text-ink-soft">None. An invitation stands here until it is taken, taken back, or seven days old.</p>
              : <OpenInvitations invitations={invitations} />}
          </Section>
        </>
      ) : null}
    </Page>
  );
}
