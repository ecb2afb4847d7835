"use client";

import { useContext, useState } from "react";
import { FormValidationContext, TextArea, TextField } from "react-aria-components";
import { boxLook, FIELD, refusalOf } from "#app/_ui/field/field-look.ts";
import { FieldLabel, FieldNotes } from "#app/_ui/field/field-notes.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { quantityEdge } from "#app/_ui/value/quantity-edge.ts";
import { hourlyText, readHourlyText } from "./hourly-text.ts";

export type HourlyFieldProps = { readonly name: string; readonly given: readonly (number | null)[]; readonly units: Units };

/** A record of temperatures, typed or pasted; posted in degrees Celsius, one to an hour, with nothing between two commas for a gap. */
export function HourlyField({ name, given, units }: HourlyFieldProps) {
  const edge = quantityEdge("degC", units);
  const shown = hourlyText(given.map((temperature) => (temperature === null ? null : edge.toTyped(temperature))), 1);
  const [text, setText] = useState(shown);
  const read = readHourlyText(text);
  const kept = text === shown ? given : read.map((temperature) => (temperature === null ? null : Number(edge.toKept(temperature).toPrecision(6))));
  const unread = read.filter((temperature) => temperature !== null && Number.isNaN(temperature)).length;
  const gaps = read.filter((temperature) => temperature === null).length;
  const refused = refusalOf(useContext(FormValidationContext), name);
  const problem = unread > 0 ? `${unread} of these are no temperatures.` : refused;
  return (
    <TextField value={text} onChange={setText} isRequired {...(problem ? { isInvalid: true } : {})} data-field={name} className={`${FIELD} col-span-full`}>
      <FieldLabel label={`Hourly temperatures (${edge.unit})`} isRequired />
      <TextArea rows={6} spellCheck={false} className={`${boxLook()} py-2 font-mono text-sm`} />
      <input type="hidden" name={name} value={kept.map((temperature) => (temperature === null ? "" : String(temperature))).join(",")} />
      <FieldNotes hint={`From the end of the pour, the mean of each hour; paste a logger’s column as it is. “gap” where it has none. ${read.length} hours read${gaps > 0 ? `, ${gaps} of them gaps` : ""}.`} problem={problem} />
    </TextField>
  );
}
