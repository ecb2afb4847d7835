"use client";

import { useState, useTransition } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { linkNewPasswordAction } from "./actions.ts";
import { InvitationLink } from "./invitation-link.tsx";
import type { Person } from "./person.ts";

/** For a person who lost the password: a link to set a new one. */
export function NewPasswordLink({ person }: { readonly person: Person }) {
  const [token, setToken] = useState<string>();
  const [failure, setFailure] = useState<Failure>();
  const [isPending, start] = useTransition();
  const make = () => start(async () => {
    const linked = await linkNewPasswordAction({ personId: person.id });
    setFailure(linked.ok ? undefined : linked.failure);
    if (linked.ok) setToken(linked.value.token);
  });
  return (
    <div className="flex flex-col items-start gap-3">
      {failure ? <FailureNotice failure={failure} /> : null}
      {token === undefined
        ? <Button isPending={isPending} onPress={make}>Make a link for a new password</Button>
        : <InvitationLink token={token} email={person.email} />}
    </div>
  );
}
