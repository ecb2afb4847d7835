"use client";

import { useContext, useState } from "react";
import { FieldError, FieldErrorContext, Label, Text } from "react-aria-components";
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
      <ProblemRoom problem={problem} />
    </>
  );
}

/**
 * The room of a problem that was just mended. A field is looked at again when the finger on the button takes the focus from
 * it: were its problem to give up its room then, the button would slip away from under the finger and not be pressed.
 */
function ProblemRoom({ problem }: { readonly problem: string | undefined }) {
  const found = useContext(FieldErrorContext);
  const shown = found?.isInvalid ? (problem ?? found.validationErrors.join(" ")) : "";
  const [last, setLast] = useState(shown);
  if (shown !== "" && shown !== last) setLast(shown);
  return shown === "" && last !== "" ? <span aria-hidden data-room={last} className={`${PROBLEM} invisible before:content-[attr(data-room)]`} /> : null;
}
