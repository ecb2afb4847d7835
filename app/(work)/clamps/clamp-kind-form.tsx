"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { saveClampKindAction } from "./actions.ts";
import { readClampKind, type ClampKind } from "./clamp-kind.ts";
import { FurtherFigures } from "./further-figures.tsx";

export type ClampKindFormProps = { readonly kind?: ClampKind; readonly units: Units; readonly onDone: () => void };

const STANDING = [
  { value: "stated", label: "Stated by the hirer", note: "checked against the document named above" },
  { value: "example", label: "Example", note: "only to try things out" },
] as const;

const known = (value: number | undefined) => (value === undefined ? {} : { defaultValueMm: value });

export function ClampKindForm({ kind, units, onDone }: ClampKindFormProps) {
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const saved = await saveClampKindAction(readClampKind(data, kind?.id));
    if (saved.ok) onDone();
    return saved;
  });
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})}>
      <TextField name="name" label="Name" hint="As on the hirer's dockets" defaultValue={kind?.name ?? ""} maxLength={80} isRequired />
      <div className="grid items-start gap-4 sm:grid-cols-2">
        <LengthField name="minSize" label="Fits over, from" hint="Outside of the backing timbers" units={units} {...known(kind?.minSize)} isRequired />
        <LengthField name="maxSize" label="Fits over, up to" hint="Outside of the backing timbers" units={units} {...known(kind?.maxSize)} isRequired />
        <QuantityField name="sideCapacity" label="Capacity of one side" hint="Force one face may put on one clamp" unit="kN" units={units} {...(kind ? { defaultValue: kind.sideCapacity } : {})} isRequired />
        <QuantityField name="weight" label="Weight of one clamp" hint="All bars and wedges of it" unit="kg" units={units} {...(kind ? { defaultValue: kind.weight } : {})} isRequired />
        <LengthField name="barLength" label="Bar length" units={units} {...known(kind?.barLength)} isRequired />
        <LengthField name="barDepth" label="Bar depth on plan" units={units} {...known(kind?.barDepth)} isRequired />
        <LengthField name="barThickness" label="Bar thickness, seen from the side" units={units} {...known(kind?.barThickness)} isRequired />
      </div>
      <FurtherFigures {...(kind ? { kind } : {})} units={units} />
      <TextField name="source" label="Source of these figures" hint="Hirer, document, date" defaultValue={kind && !kind.isExample ? kind.source : ""} maxLength={200} isRequired />
      <ChoiceGroup name="standing" label="These figures are" choices={STANDING} {...(kind ? { defaultValue: kind.isExample ? "example" : "stated" } : {})} />
      <div className="flex flex-wrap justify-end gap-3">
        <Button onPress={onDone}>Leave it as it is</Button>
        <Button type="submit" kind="primary" isPending={isPending}>Save the clamp kind</Button>
      </div>
    </FieldForm>
  );
}
