import type { Metadata } from "next";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { currentCaller } from "#lib/server/gate/session.ts";
import { listTokens } from "#lib/server/people/access-tokens.ts";
import { ownAccount } from "../own-account.ts";
import { Refused } from "../refused.tsx";
import { PasswordForm } from "./password-form.tsx";
import { Tokens } from "./tokens/tokens.tsx";

export const metadata: Metadata = { title: "Account" };

export default async function AccountPage() {
  const [account, tokens] = await Promise.all([ownAccount(), listTokens(await currentCaller(), {})]);
  if (!account.ok) return <Refused failure={account.failure} />;
  if (!tokens.ok) return <Refused failure={tokens.failure} />;
  const { name, email, role, companyName } = account.value;
  return (
    <Page title={name} subtitle="Account" facts={[{ label: "E-mail", value: email }, { label: "Role", value: role }, { label: "Company", value: companyName }]}>
      <Section title="Change the password"><PasswordForm email={email} /></Section>
      <Section title="Tokens for programs"><Tokens tokens={tokens.value} /></Section>
    </Page>
  );
}
