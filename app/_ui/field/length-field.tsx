"use client";

import { useContext, useState } from "react";
import { FormValidationContext, Input, TextField } from "react-aria-components";
import { parseLength } from "#app/_ui/value/feet-inches.ts";
import { quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { boxLook, FIELD, refusalOf, type FieldProps } from "./field-look.ts";
import { FieldLabel, FieldNotes } from "./field-notes.tsx";

export type LengthFieldProps = FieldProps & {
  readonly units: Units;
  readonly defaultValueMm?: number;
  /** Decimals of a millimetre that feet and inches are rounded to; figures typed in metric are posted as they are. */
  readonly places?: number;
  readonly onChangeMm?: (valueMm: number | undefined) => void;
};

function readMm(text: string, units: Units, places: number): number | undefined {
  const read = parseLength(text, units);
  return read === undefined ? undefined : Number(read.toFixed(units === "us" ? places : 4));
}

const plain = (valueMm: number | undefined, units: Units): string =>
  valueMm === undefined ? "" : units === "us" ? quantityText(valueMm, "mm", "us") : String(Math.round(valueMm * 10) / 10);

/**
 * A length typed as the project reads it; millimetres are posted under `name`. An entry left as it was is posted as it
 * was, without the rounding to a sixteenth of an inch that shows it; an unreadable one as typed, to be refused.
 */
export function LengthField(props: LengthFieldProps) {
  const { name, label, hint, problem, isRequired = false, isDisabled = false, size, units, defaultValueMm, places = 0, onChangeMm } = props;
  const shown = plain(defaultValueMm, units);
  const [text, setText] = useState(shown);
  const readText = (typed: string) => (typed === shown && defaultValueMm !== undefined ? defaultValueMm : readMm(typed, units, places));
  const read = readText(text);
  const wrong = text.trim() !== "" && read === undefined;
  const ownHint = units === "us" ? `Feet and inches: 9'-4 1/2"` : "Millimetres";
  const refused = problem ?? refusalOf(useContext(FormValidationContext), name);
  const isInvalid = wrong || refused !== undefined;
  return (
    <TextField
      value={text}
      onChange={(next) => { setText(next); onChangeMm?.(readText(next)); }}
      isRequired={isRequired}
      isDisabled={isDisabled}
      {...(isInvalid ? { isInvalid } : {})}
      data-field={name}
      className={FIELD}
    >
      <FieldLabel label={units === "us" ? label : `${label} (mm)`} isRequired={isRequired} />
      <Input inputMode={units === "us" ? "text" : "decimal"} className={`${boxLook(size)} text-right`} />
      {isDisabled ? null : <input type="hidden" name={name} value={read === undefined ? text : String(read)} />}
      <FieldNotes hint={hint ?? ownHint} problem={wrong ? `This is not a length. ${ownHint}.` : refused} />
    </TextField>
  );
}
