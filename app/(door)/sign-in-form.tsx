"use client";

import { useActionState } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { enter } from "./enter.ts";

export type SignInFormProps = { readonly next: string; readonly email: string };

export function SignInForm({ next, email }: SignInFormProps) {
  const [failure, submit, isPending] = useActionState(
    async (_before: Failure | undefined, data: FormData): Promise<Failure | undefined> => {
      const refused = await enter(String(data.get("email") ?? ""), String(data.get("password") ?? ""));
      if (refused) return refused;
      // A full load, so that nothing read while signed out is shown again.
      window.location.assign(next);
      return undefined;
    },
    undefined,
  );
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})}>
      <TextField name="email" label="E-mail" type="email" defaultValue={email} autoComplete="username" isRequired />
      <TextField name="password" label="Password" type="password" autoComplete="current-password" isRequired />
      <Button type="submit" kind="primary" size="glove" isPending={isPending}>Sign in</Button>
    </FieldForm>
  );
}
