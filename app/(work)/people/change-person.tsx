"use client";

import { useState, useTransition } from "react";
import { isRole } from "#lib/access/roles.ts";
import type { Failure, Result } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { ConfirmButton } from "#app/_ui/control/confirm-button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { changeRoleAction, setPersonActiveAction } from "./actions.ts";
import { NewPasswordLink } from "./new-password-link.tsx";
import type { Person } from "./person.ts";
import { ROLE_CHOICES } from "./role-choices.ts";

/** Another role, or an end to signing in. */
export function ChangePerson({ person }: { readonly person: Person }) {
  const [isOpen, setOpen] = useState(false);
  const [role, setRole] = useState(person.role);
  const [failure, setFailure] = useState<Failure>();
  const [isPending, start] = useTransition();
  const send = (action: () => Promise<Result<null>>) => start(async () => {
    const answer = await action();
    setFailure(answer.ok ? undefined : answer.failure);
    if (answer.ok) setOpen(false);
  });
  const setActive = (isActive: boolean) => send(() => setPersonActiveAction({ personId: person.id, isActive }));
  const show = (next: boolean) => {
    setOpen(next);
    setRole(person.role);
    setFailure(undefined);
  };
  return (
    <>
      <Button aria-label={`Change ${person.name}`} onPress={() => show(true)}>Change</Button>
      <Dialog title={person.name} isOpen={isOpen} onOpenChange={show}>
        {(close) => (
          <div className="flex flex-col gap-5">
            {failure ? <FailureNotice failure={failure} /> : null}
            <ChoiceGroup name="role" label="Role" choices={ROLE_CHOICES} value={role} onChange={setRole} hint="Holds from this person's next step on." />
            <div className="flex flex-wrap justify-end gap-3">
              <Button onPress={close}>Leave it as it is</Button>
              <Button kind="primary" isPending={isPending} isDisabled={role === person.role} onPress={() => { if (isRole(role)) send(() => changeRoleAction({ personId: person.id, role })); }}>
                Change the role
              </Button>
            </div>
            {person.isActive ? <div className="border-t-2 border-ink pt-4"><NewPasswordLink person={person} /></div> : null}
            <div className="border-t-2 border-ink pt-4"><SignInStanding person={person} isPending={isPending} onSet={setActive} /></div>
          </div>
        )}
      </Dialog>
    </>
  );
}

type SignInStandingProps = { readonly person: Person; readonly isPending: boolean; readonly onSet: (isActive: boolean) => void };

function SignInStanding({ person, isPending, onSet }: SignInStandingProps) {
  if (!person.isActive) return <Button isPending={isPending} onPress={() => onSet(true)}>Open the sign-in again</Button>;
  return (
    <ConfirmButton
      title={`Close the sign-in of ${person.name}?`}
      explain="Every session of theirs ends at the next step. What they recorded stays, under their name. It can be opened again."
      confirmLabel="Close the sign-in"
      isPending={isPending}
      onConfirm={() => onSet(false)}
    >
      Close the sign-in
    </ConfirmButton>
  );
}
