"use client";

import { useContext, useState } from "react";
import { FormValidationContext, Group, Input, NumberField } from "react-aria-components";
import type { Units } from "../value/format-quantity.ts";
import { quantityEdge, type TypedUnit } from "../value/quantity-edge.ts";
import { FIELD, refusalOf, type FieldProps } from "./field-look.ts";
import { FieldLabel, FieldNotes } from "./field-notes.tsx";

export type QuantityFieldProps = FieldProps & {
  /** The unit the number is kept and posted in. */
  readonly unit: TypedUnit;
  readonly units: Units;
  readonly defaultValue?: number;
};

const GROUP =
  "flex items-stretch border-2 border-edge bg-sheet hover:border-ink data-focus-within:border-accent data-invalid:border-flag data-disabled:bg-wash";

/** A number typed in the project's units and posted in ours. Left as it was, it is posted as it was, without a rounding. */
export function QuantityField(props: QuantityFieldProps) {
  const { name, label, hint, problem, isRequired = false, isDisabled = false, unit, units, defaultValue } = props;
  const edge = quantityEdge(unit, units);
  const [typed, setTyped] = useState<number | undefined>(undefined);
  const kept = typed === undefined ? defaultValue : Number.isNaN(typed) ? undefined : Number(edge.toKept(typed).toPrecision(9));
  const refused = problem ?? refusalOf(useContext(FormValidationContext), name);
  return (
    <NumberField
      {...(defaultValue === undefined ? {} : { defaultValue: Number(edge.toTyped(defaultValue).toFixed(edge.places)) })}
      onChange={setTyped}
      isRequired={isRequired}
      isDisabled={isDisabled}
      {...(refused ? { isInvalid: true } : {})}
      formatOptions={{ useGrouping: false, maximumFractionDigits: edge.places }}
      data-field={name}
      className={FIELD}
    >
      <FieldLabel label={`${label} (${edge.unit})`} isRequired={isRequired} />
      <Group className={GROUP}>
        <Input className="min-h-10 w-full min-w-0 bg-transparent px-3 text-right" />
      </Group>
      <input type="hidden" name={name} value={kept === undefined ? "" : String(kept)} />
      <FieldNotes hint={hint} problem={refused} />
    </NumberField>
  );
}
