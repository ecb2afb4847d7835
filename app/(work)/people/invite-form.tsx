"use client";

import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { choiceOf, textOf } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { ROLES } from "#lib/access/roles.ts";
import { invitePersonAction } from "./actions.ts";
import { InvitationLink } from "./invitation-link.tsx";
import { ROLE_CHOICES } from "./role-choices.ts";

export function InviteForm() {
  const answered = useAnswer(async (data) => {
    const email = textOf(data, "email");
    const invited = await invitePersonAction({ email, role: choiceOf(data, "role", ROLES) });
    return invited.ok ? { ok: true, value: { ...invited.value, email } } : invited;
  });
  return (
    <div className="flex flex-col gap-5">
      <SaveForm answered={answered} label="Make the invitation" done="The link is below.">
        <div className="max-w-lg"><TextField name="email" label="E-mail" type="email" hint="They sign in with it" autoComplete="off" isRequired /></div>
        <ChoiceGroup name="role" label="Role" choices={ROLE_CHOICES} defaultValue="leading hand" />
      </SaveForm>
      {answered.value ? <InvitationLink key={answered.value.token} token={answered.value.token} email={answered.value.email} /> : null}
    </div>
  );
}
