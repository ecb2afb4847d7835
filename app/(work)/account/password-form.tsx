"use client";

import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { enter } from "#app/(door)/enter.ts";
import { NewPasswordField } from "#app/(door)/new-password-field.tsx";
import { paths } from "#app/paths.ts";
import { changePasswordAction } from "./actions.ts";

export function PasswordForm({ email }: { readonly email: string }) {
  const answered = useAnswer(async (data) => {
    const next = textOf(data, "next");
    const changed = await changePasswordAction({ current: textOf(data, "current"), next });
    // The change ended every session, this one too; the new password opens this one again.
    if (changed.ok && (await enter(email, next))) window.location.assign(paths.signIn(paths.account(), { email }));
    return changed;
  });
  return (
    <div className="max-w-lg">
      <SaveForm answered={answered} label="Change the password" done="Changed. Everywhere else you are signed out.">
        <input type="text" name="username" autoComplete="username" value={email} readOnly hidden />
        <TextField name="current" label="Current password" type="password" autoComplete="current-password" isRequired />
        <NewPasswordField name="next" label="New password" />
      </SaveForm>
    </div>
  );
}
