"use client";

import { startTransition, useEffect, useRef, type FormEvent, type ReactNode } from "react";
import { Form } from "react-aria-components";
import type { Failure } from "#lib/kernel/result.ts";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { FormProblems, problemsByField } from "#app/_ui/message/form-problems.tsx";

export type FieldFormProps = {
  /** A server action, or the dispatch of `useActionState`. */
  readonly action: (data: FormData) => void | Promise<void>;
  /** The failure of the last answer, if it failed. */
  readonly failure?: Failure;
  readonly className?: string;
  readonly children: ReactNode;
};

/** A form that shows what the server refused, at the field and above, and keeps what was typed. */
export function FieldForm({ action, failure, className = "flex flex-col gap-4", children }: FieldFormProps) {
  // Without this React empties the fields after every action, refused ones too. `action` remains for pages whose script has not loaded.
  const send = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const submitter = (event.nativeEvent as SubmitEvent).submitter;
    const data = new FormData(event.currentTarget, submitter);
    startTransition(() => action(data));
  };
  return (
    <Form action={action} onSubmit={send} validationErrors={problemsByField(failure)} className={className}>
      {failure?.kind === "invalid" ? <FormProblems problems={failure.problems} /> : null}
      {failure && failure.kind !== "invalid" ? <FormFailure failure={failure} /> : null}
      {children}
    </Form>
  );
}

/** Comes into sight and takes the focus, since the button pressed may stand far below it. */
function FormFailure({ failure }: { readonly failure: Failure }) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => box.current?.focus(), [failure]);
  return <div ref={box} tabIndex={-1}><FailureNotice failure={failure} /></div>;
}
