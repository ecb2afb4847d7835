import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { Page } from "#app/_ui/page/page.tsx";
import { ownAccount } from "../../own-account.ts";
import { Refused } from "../../refused.tsx";
import { NewProjectForm } from "./new-project-form.tsx";

export const metadata: Metadata = { title: "New project" };

export default async function NewProjectPage() {
  const account = await ownAccount();
  if (!account.ok) return <Refused failure={account.failure} />;
  if (!can(account.value.role, "project.set-up")) return <Refused failure={{ kind: "not-allowed", permission: "project.set-up" }} />;
  return (
    <Page title="New project" subtitle="Projects">
      <NewProjectForm />
    </Page>
  );
}
