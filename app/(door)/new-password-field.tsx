"use client";

import { TextField } from "#app/_ui/field/text-field.tsx";

export type NewPasswordFieldProps = { readonly name: string; readonly label: string };

export function NewPasswordField({ name, label }: NewPasswordFieldProps) {
  return (
    <TextField
      name={name}
      label={label}
      type="password"
      autoComplete="new-password"
      hint="At least 10 characters; a few words in a row are easier to keep than signs."
      minLength={10}
      maxLength={200}
      isRequired
    />
  );
}
