"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { paths } from "#app/paths.ts";
import { enterNow } from "../enter.ts";
import { NewPasswordField } from "../new-password-field.tsx";
import { foundCompanyAction } from "./actions.ts";

export function FoundForm() {
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const [email, password] = [textOf(data, "email"), textOf(data, "password")];
    const founded = await foundCompanyAction({ companyName: textOf(data, "companyName"), name: textOf(data, "name"), email, password });
    if (founded.ok) await enterNow(email, password, paths.projects());
    return founded;
  });
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})}>
      <TextField name="companyName" label="Company" autoComplete="organization" maxLength={120} isRequired />
      <TextField name="name" label="Your name" autoComplete="name" maxLength={120} isRequired />
      <TextField name="email" label="E-mail" type="email" autoComplete="username" isRequired />
      <NewPasswordField name="password" label="Password" />
      <Button type="submit" kind="primary" size="glove" isPending={isPending}>Set up the company</Button>
    </FieldForm>
  );
}
