"use client";

import { FieldError, Label, Text } from "react-aria-components";
import { HINT, LABEL, PROBLEM } from "./field-look.ts";

/** The label above a box, saying when the field may stay empty. */
export function FieldLabel({ label, isRequired }: { readonly label: string; readonly isRequired: boolean }) {
  return (
    <Label className={LABEL}>
      {label}
      {isRequired ? null : <span className="font-normal text-ink-soft"> (may stay empty)</span>}
    </Label>
  );
}

/** Hint and problem below a box; without a problem of ours the browser's or the server's own is shown. */
export function FieldNotes({ hint, problem }: { readonly hint: string | undefined; readonly problem: string | undefined }) {
  return (
    <>
      {hint ? <Text slot="description" className={HINT}>{hint}</Text> : null}
      <FieldError className={PROBLEM}>{problem}</FieldError>
    </>
  );
}
