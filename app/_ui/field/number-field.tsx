"use client";

import { Group, Input, NumberField as AriaNumberField } from "react-aria-components";
import { FIELD, type FieldProps } from "./field-look.ts";
import { FieldLabel, FieldNotes } from "./field-notes.tsx";

export type NumberFieldProps = FieldProps & {
  /** Shown after the figure: mm, kPa, °C. The figure itself is posted without it. */
  readonly unit?: string;
  readonly defaultValue?: number;
  readonly value?: number;
  readonly onChange?: (value: number) => void;
  readonly minValue?: number;
  readonly maxValue?: number;
  readonly step?: number;
  /** Most decimal places kept. */
  readonly places?: number;
};

const GROUP =
  "flex items-stretch border-2 border-edge bg-sheet hover:border-ink data-focus-within:border-accent data-invalid:border-flag data-disabled:bg-wash";

export function NumberField(props: NumberFieldProps) {
  const { label, hint, problem, isRequired = false, isFilter = false, size = "hand", unit, places = 3, ...rest } = props;
  const tall = size === "glove" ? "min-h-glove text-lg" : "min-h-hand";
  return (
    <AriaNumberField
      {...rest}
      isRequired={isRequired}
      {...(problem ? { isInvalid: true } : {})}
      formatOptions={{ useGrouping: false, maximumFractionDigits: places }}
      data-field={rest.name}
      className={FIELD}
    >
      <FieldLabel label={unit ? `${label} (${unit})` : label} isRequired={isRequired || isFilter} />
      <Group className={GROUP}>
        <Input className={`w-full min-w-0 bg-transparent px-3 text-right ${tall}`} />
        {unit ? (
          <span aria-hidden className="flex min-w-12 items-center justify-center border-l border-rule-soft bg-wash px-2 text-ink-soft">
            {unit}
          </span>
        ) : null}
      </Group>
      <FieldNotes hint={hint} problem={problem} />
    </AriaNumberField>
  );
}
