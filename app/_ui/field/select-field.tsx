"use client";

import { Button, ListBox, ListBoxItem, Popover, Select, SelectValue } from "react-aria-components";
import { boxLook, FIELD, type FieldProps } from "./field-look.ts";
import { FieldLabel, FieldNotes } from "./field-notes.tsx";

export type Choice = { readonly value: string; readonly label: string; readonly note?: string; readonly isDisabled?: boolean };

export type SelectFieldProps = FieldProps & {
  readonly choices: readonly Choice[];
  readonly defaultValue?: string;
  readonly value?: string;
  readonly onChange?: (value: string) => void;
  readonly placeholder?: string;
};

const ITEM =
  "flex min-h-hand cursor-pointer flex-col justify-center border-b border-rule-soft px-3 py-1 last:border-b-0 " +
  "data-focused:bg-accent-wash data-selected:bg-accent data-selected:text-white data-disabled:cursor-not-allowed data-disabled:text-ink-soft";

export function SelectField(props: SelectFieldProps) {
  const { label, hint, problem, isRequired = false, isFilter = false, size, choices, defaultValue, value, onChange, placeholder, ...rest } = props;
  return (
    <Select
      {...rest}
      isRequired={isRequired}
      {...(problem ? { isInvalid: true } : {})}
      {...(defaultValue === undefined ? {} : { defaultValue })}
      {...(value === undefined ? {} : { value })}
      onChange={(key) => onChange?.(String(key))}
      placeholder={placeholder ?? "Choose one"}
      data-field={rest.name}
      className={FIELD}
    >
      <FieldLabel label={label} isRequired={isRequired || isFilter} />
      <Button className={`${boxLook(size)} flex cursor-pointer items-center justify-between gap-2 text-left`}>
        <SelectValue className="truncate data-placeholder:text-ink-soft">
          {({ isPlaceholder, defaultChildren, selectedText }) => (isPlaceholder ? defaultChildren : selectedText)}
        </SelectValue>
        <span aria-hidden className="h-2 w-2 shrink-0 -translate-y-0.5 rotate-45 border-b-2 border-r-2 border-ink" />
      </Button>
      <FieldNotes hint={hint} problem={problem} />
      <Popover className="min-w-(--trigger-width) border-2 border-ink bg-sheet">
        <ListBox items={choices} className="max-h-80 overflow-auto outline-none">
          {(choice) => (
            <ListBoxItem id={choice.value} textValue={choice.label} isDisabled={choice.isDisabled ?? false} className={ITEM}>
              <span>{choice.label}</span>
              {choice.note ? <span className="text-sm">{choice.note}</span> : null}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
}
