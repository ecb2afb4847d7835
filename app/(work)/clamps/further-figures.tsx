"use client";

import { useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { SPAN_LINES, type ClampKind } from "./clamp-kind.ts";

export type FurtherFiguresProps = { readonly kind?: ClampKind; readonly units: Units };

/** What some hirers state over and above one capacity; each figure given is checked on every clamp of a layout. */
export function FurtherFigures({ kind, units }: FurtherFiguresProps) {
  const lines = kind?.capacityBySpan ?? [];
  const [shown, setShown] = useState(lines.length);
  const given = (value: number | undefined) => (value === undefined ? {} : { defaultValue: value });
  return (
    <fieldset className="flex flex-col gap-3 border-2 border-edge p-3">
      <legend className="px-1 font-semibold">Where the hirer states more (may stay empty)</legend>
      <div className="grid items-start gap-4 sm:grid-cols-3">
        <QuantityField name="wedgeCapacity" label="Pull on one wedge" hint="One wedged corner" unit="kN" units={units} {...given(kind?.wedgeCapacity)} />
        <QuantityField name="armModulus" label="Arm: section modulus" hint="About the axis it bends" unit="cm3" units={units} {...given(kind?.arm?.sectionModulus)} />
        <QuantityField name="armStress" label="Arm: stress allowed" hint="Permissible, in bending" unit="N/mm2" units={units} {...given(kind?.arm?.stress)} />
      </div>
      {Array.from({ length: shown }, (_, line) => (
        <div key={line} className="grid items-start gap-4 sm:grid-cols-2">
          <LengthField name={`span-${line}`} label="Between the wedges, up to" units={units} {...(lines[line] ? { defaultValueMm: lines[line].span } : {})} />
          <QuantityField name={`load-${line}`} label="Load of one side there" unit="kN" units={units} {...given(lines[line]?.load)} />
        </div>
      ))}
      <p className="text-sm text-ink-soft">
        Loads by span: a span between two lines takes the load of the longer one; a column wider than the last line is refused.
      </p>
      {shown < SPAN_LINES ? <div><Button onPress={() => setShown(shown + 1)}>Add a load by span</Button></div> : null}
    </fieldset>
  );
}
