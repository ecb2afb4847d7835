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
  const { companyName, inviterName, role, email, setsNewPassword } = invitation.value;
  if (setsNewPassword) {
    return (
      <div className="flex flex-col gap-5">
        <h1 className="text-2xl">Choose a new password</h1>
        <p>{inviterName} of {companyName} sent this link to <strong className="break-words">{email}</strong>. Every session open under the old password ends.</p>
        <AcceptForm token={token} email={email} setsNewPassword />
      </div>
    );
  }
  return (
    <div className="flex flex-col gap-5">
      <h1 className="text-2xl">Join {companyName}</h1>
      <p>{inviterName} invites you as <strong>{role}</strong>. You will sign in as <strong className="break-words">{email}</strong>.</p>
      <AcceptForm token={token} email={email} />
    </div>
  );
}
