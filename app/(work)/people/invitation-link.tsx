"use client";

import { ShownOnce } from "#app/_ui/message/shown-once.tsx";
import { paths } from "#app/paths.ts";

export type InvitationLinkProps = { readonly token: string; readonly email: string };

/** The link of a fresh invitation or for a new password. */
export function InvitationLink({ token, email }: InvitationLinkProps) {
  return (
    <ShownOnce
      title={`Send this link to ${email}. It is shown only now.`} label="The link" text={`${window.location.origin}${paths.invitation(token)}`} copyLabel="Copy the link"
      note="It works once, within seven days. Whoever holds it can come in, so send it to nobody else."
    />
  );
}
