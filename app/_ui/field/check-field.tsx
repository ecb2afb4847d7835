"use client";

import { useContext } from "react";
import { Checkbox, FormValidationContext } from "react-aria-components";
import { HINT, PROBLEM, refusalOf, type FieldProps } from "./field-look.ts";

export type CheckFieldProps = FieldProps & {
  readonly value?: string;
  readonly defaultSelected?: boolean;
  readonly isSelected?: boolean;
  readonly isIndeterminate?: boolean;
  readonly onChange?: (isSelected: boolean) => void;
};

/** One yes or no. Posts `value` (or "on") when ticked and nothing otherwise. */
export function CheckField({ label, hint, problem, size, ...rest }: CheckFieldProps) {
  const refused = problem ?? refusalOf(useContext(FormValidationContext), rest.name);
  return (
    <div data-field={rest.name} className="flex flex-col gap-1">
      <Checkbox
        {...rest}
        {...(refused ? { isInvalid: true } : {})}
        className={`group flex cursor-pointer items-center gap-3 data-disabled:cursor-not-allowed data-disabled:text-ink-soft ${size === "glove" ? "min-h-glove text-lg" : "min-h-hand"}`}
      >
        {({ isSelected, isIndeterminate }) => (
          <>
            <span
              aria-hidden
              className="grid size-6 shrink-0 place-items-center border-2 border-ink bg-sheet group-data-focus-visible:outline-3 group-data-focus-visible:outline-offset-2 group-data-focus-visible:outline-accent group-data-invalid:border-flag"
            >
              <svg viewBox="0 0 20 20" className="size-5 stroke-accent" strokeWidth={3.5} fill="none">
                {isIndeterminate ? <path d="M4 10H16" /> : isSelected ? <path d="M3 10.5L8 16L17 3.5" /> : null}
              </svg>
            </span>
            <span>{label}</span>
          </>
        )}
      </Checkbox>
      {hint ? <p className={`${HINT} pl-9`}>{hint}</p> : null}
      {refused ? <p className={PROBLEM}>{refused}</p> : null}
    </div>
  );
}
