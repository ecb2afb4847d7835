"use client";

import type { HTMLAttributes } from "react";
import { Input, TextArea, TextField as AriaTextField } from "react-aria-components";
import { boxLook, FIELD, type FieldProps } from "./field-look.ts";
import { FieldLabel, FieldNotes } from "./field-notes.tsx";

export type TextFieldProps = FieldProps & {
  readonly type?: "text" | "email" | "password" | "search" | "tel" | "url" | "date" | "time" | "datetime-local";
  readonly defaultValue?: string;
  readonly value?: string;
  readonly onChange?: (value: string) => void;
  readonly autoComplete?: string;
  readonly inputMode?: HTMLAttributes<HTMLInputElement>["inputMode"];
  readonly placeholder?: string;
  readonly maxLength?: number;
  readonly minLength?: number;
  readonly pattern?: string;
  /** More than one row makes a box for several lines. */
  readonly rows?: number;
  readonly autoFocus?: boolean;
};

export function TextField({ label, hint, problem, isRequired = false, isFilter = false, size, rows = 1, placeholder, ...rest }: TextFieldProps) {
  const blank = placeholder === undefined ? {} : { placeholder };
  return (
    <AriaTextField
      {...rest}
      isRequired={isRequired}
      {...(problem ? { isInvalid: true } : {})}
      data-field={rest.name}
      className={FIELD}
    >
      <FieldLabel label={label} isRequired={isRequired || isFilter} />
      {rows > 1
        ? <TextArea rows={rows} {...blank} className={`${boxLook(size)} py-2`} />
        : <Input {...blank} className={boxLook(size)} />}
      <FieldNotes hint={hint} problem={problem} />
    </AriaTextField>
  );
}
