import type { ReactNode } from "react";
import { ownAccount } from "./own-account.ts";
import { Refused } from "./refused.tsx";
import { WorkHeader } from "./work-header.tsx";

export const dynamic = "force-dynamic";

export default async function WorkLayout({ children }: { readonly children: ReactNode }) {
  const account = await ownAccount();
  if (!account.ok) return <Refused failure={account.failure} />;
  const { companyName, name, role } = account.value;
  return (
    <>
      <WorkHeader companyName={companyName} name={name} role={role} />
      {children}
    </>
  );
}
