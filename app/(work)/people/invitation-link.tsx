"use client";

import { useId, useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { paths } from "#app/paths.ts";

export type InvitationLinkProps = { readonly token: string; readonly email: string };

/** The link of a fresh invitation or for a new password. It is shown this once: the server keeps only its print. */
export function InvitationLink({ token, email }: InvitationLinkProps) {
  const id = useId();
  const [copied, setCopied] = useState<"yes" | "no" | undefined>(undefined);
  const link = `${window.location.origin}${paths.invitation(token)}`;
  const copy = () => navigator.clipboard.writeText(link).then(() => setCopied("yes"), () => setCopied("no"));
  return (
    <Notice title={`Send this link to ${email}. It is shown only now.`}>
      <label htmlFor={id} className="mt-2 block font-semibold">The link</label>
      <div className="mt-1 flex flex-wrap gap-3">
        <input id={id} readOnly value={link} onFocus={(event) => event.target.select()} className="min-h-hand min-w-0 grow border-2 border-edge bg-sheet px-3 font-mono text-sm" />
        <Button kind="primary" onPress={() => void copy()}>Copy the link</Button>
      </div>
      <p aria-live="polite" className="mt-2 text-sm">
        {copied === "yes" ? "Copied." : copied === "no" ? "Copying is not allowed here: select the link and copy it by hand." : "It works once, within seven days. Whoever holds it can come in, so send it to nobody else."}
      </p>
    </Notice>
  );
}
