"use client";

import type { ReactNode } from "react";
import { Button } from "../control/button.tsx";
import { FieldForm } from "../field/field-form.tsx";
import { Notice } from "../message/notice.tsx";
import type { Answered } from "./use-answer.ts";

export type SaveFormProps = {
  readonly answered: Answered<unknown>;
  /** Reads "Save", "Add 12 columns". */
  readonly label: string;
  /** Said once the server has taken it. */
  readonly done: ReactNode;
  /** A person whose role does not cover this sees the entries and cannot change them. */
  readonly canEdit?: boolean;
  readonly className?: string;
  readonly children: ReactNode;
};

/** A form with one button below it, and what came of pressing it beside the button. */
export function SaveForm({ answered, label, done, canEdit = true, className = "flex flex-col gap-5", children }: SaveFormProps) {
  const { failure, isDone, isPending, submit } = answered;
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})}>
      <fieldset disabled={!canEdit} className={`min-w-0 ${className}`}>{children}</fieldset>
      {canEdit ? (
        <div className="flex flex-wrap items-center gap-4">
          <Button type="submit" kind="primary" isPending={isPending}>{label}</Button>
          {isDone && !isPending ? <div className="grow"><Notice kind="done">{done}</Notice></div> : null}
        </div>
      ) : null}
    </FieldForm>
  );
}
