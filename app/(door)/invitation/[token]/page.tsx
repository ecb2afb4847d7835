import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readInvitation } from "#lib/server/people/invitations.ts";
import { AcceptForm } from "./accept-form.tsx";

export const metadata: Metadata = { title: "Invitation", referrer: "no-referrer", robots: { index: false } };

type Props = { readonly params: Promise<{ token: string }> };

export default async function InvitationPage({ params }: Props) {
  const { token } = await params;
  const invitation = await readInvitation({ token });
  if (!invitation.ok) notFound();
  const { companyName, inviterName, role, email } = invitation.value;
  return (
    <div className="flex flex-col gap-5">
      <h1 className="text-2xl">Join {companyName}</h1>
      <p>{inviterName} invites you as <strong>{role}</strong>. You will sign in as <strong className="break-words">{email}</strong>.</p>
      <AcceptForm token={token} email={email} />
    </div>
  );
}
