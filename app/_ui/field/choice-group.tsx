"use client";

import { Radio, RadioGroup } from "react-aria-components";
import { FIELD, type FieldProps } from "./field-look.ts";
import { FieldLabel, FieldNotes } from "./field-notes.tsx";
import type { Choice } from "./select-field.tsx";

export type ChoiceGroupProps = FieldProps & {
  readonly choices: readonly Choice[];
  readonly defaultValue?: string;
  readonly value?: string;
  readonly onChange?: (value: string) => void;
};

const BOX =
  "group flex grow basis-0 cursor-pointer items-center gap-3 border-2 border-edge bg-sheet px-3 py-2 hover:border-ink " +
  "data-selected:border-accent data-selected:bg-accent-wash data-invalid:border-flag data-disabled:cursor-not-allowed data-disabled:text-ink-soft " +
  "data-focus-visible:outline-3 data-focus-visible:outline-offset-2 data-focus-visible:outline-accent";

/** A few choices, all in sight, each a box to press. */
export function ChoiceGroup({ label, hint, problem, isRequired = true, size, choices, ...rest }: ChoiceGroupProps) {
  return (
    <RadioGroup {...rest} isRequired={isRequired} {...(problem ? { isInvalid: true } : {})} data-field={rest.name} className={FIELD}>
      <FieldLabel label={label} isRequired={isRequired} />
      <div className="flex flex-wrap gap-2">
        {choices.map((choice) => (
          <Radio
            key={choice.value}
            value={choice.value}
            isDisabled={choice.isDisabled ?? false}
            className={`${BOX} ${size === "glove" ? "min-h-glove min-w-40 text-lg" : "min-h-hand min-w-32"}`}
          >
            <span aria-hidden className="grid size-5 shrink-0 place-items-center rounded-full border-2 border-ink bg-sheet">
              <span className="size-2.5 rounded-full bg-accent opacity-0 group-data-selected:opacity-100" />
            </span>
            <span className="flex flex-col">
              <span>{choice.label}</span>
              {choice.note ? <span className="text-sm text-ink-soft">{choice.note}</span> : null}
            </span>
          </Radio>
        ))}
      </div>
      <FieldNotes hint={hint} problem={problem} />
    </RadioGroup>
  );
}
