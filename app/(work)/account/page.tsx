import type { Metadata } from "next";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { ownAccount } from "../own-account.ts";
import { Refused } from "../refused.tsx";
import { PasswordForm } from "./password-form.tsx";

export const metadata: Metadata = { title: "Account" };

export default async function AccountPage() {
  const account = await ownAccount();
  if (!account.ok) return <Refused failure={account.failure} />;
  const { name, email, role, companyName } = account.value;
  return (
    <Page title={name} subtitle="Account" facts={[{ label: "E-mail", value: email }, { label: "Role", value: role }, { label: "Company", value: companyName }]}>
      <Section title="Change the password"><PasswordForm email={email} /></Section>
    </Page>
  );
}
