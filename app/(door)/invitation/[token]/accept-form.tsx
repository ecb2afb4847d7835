"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { paths } from "#app/paths.ts";
import { enterNow } from "../../enter.ts";
import { NewPasswordField } from "../../new-password-field.tsx";
import { acceptInvitationAction } from "./actions.ts";

export type AcceptFormProps = { readonly token: string; readonly email: string; readonly setsNewPassword?: boolean };

export function AcceptForm({ token, email, setsNewPassword = false }: AcceptFormProps) {
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const password = textOf(data, "password");
    const accepted = await acceptInvitationAction({ token, name: setsNewPassword ? email : textOf(data, "name"), password });
    if (accepted.ok) await enterNow(email, password, paths.projects());
    return accepted;
  });
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})}>
      <input type="hidden" name="username" autoComplete="username" value={email} readOnly />
      {setsNewPassword ? null : <TextField name="name" label="Your name" autoComplete="name" maxLength={120} isRequired />}
      <NewPasswordField name="password" label="Choose a password" />
      <Button type="submit" kind="primary" size="glove" isPending={isPending}>{setsNewPassword ? "Set the password" : "Join"}</Button>
    </FieldForm>
  );
}
