"use client";

import { useId } from "react";
import { Input, TextField } from "react-aria-components";
import { boxLook, FIELD, type FieldProps } from "./field-look.ts";
import { FieldLabel, FieldNotes } from "./field-notes.tsx";

export type SuggestFieldProps = FieldProps & {
  readonly suggestions: readonly string[];
  readonly value?: string;
  readonly defaultValue?: string;
  readonly onChange?: (value: string) => void;
};

/** A box to type in that offers what fits, for lists too long to look through. */
export function SuggestField({ label, hint, problem, isRequired = false, size, suggestions, ...rest }: SuggestFieldProps) {
  const listId = useId();
  return (
    <TextField {...rest} isRequired={isRequired} {...(problem ? { isInvalid: true } : {})} data-field={rest.name} className={FIELD}>
      <FieldLabel label={label} isRequired={isRequired} />
      <Input list={listId} autoComplete="off" spellCheck={false} className={boxLook(size)} />
      <datalist id={listId}>
        {suggestions.map((suggestion) => <option key={suggestion} value={suggestion} />)}
      </datalist>
      <FieldNotes hint={hint} problem={problem} />
    </TextField>
  );
}
