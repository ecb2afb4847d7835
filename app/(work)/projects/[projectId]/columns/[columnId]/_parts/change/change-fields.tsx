"use client";

import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { HEADS } from "../../../../set-up/_parts/heads.ts";
import { SHAPES, toShape, type Shape } from "../../../../set-up/marks/mark-row.ts";
import type { StoredColumn } from "./stored-column.ts";

export type ChangeFieldsProps = {
  readonly base: StoredColumn;
  readonly shape: Shape;
  readonly onShape: (shape: Shape) => void;
  readonly isReasonAsked: boolean;
};

/** A field whose starting value changes begins anew; the others keep what was typed. */
export function ChangeFields({ base, shape, onShape, isReasonAsked }: ChangeFieldsProps) {
  const { units, widthMm, depthMm, headedBy, formHeightMm, concrete, remarks } = base;
  return (
    <>
      <ChoiceGroup name="shape" label="Section" choices={SHAPES} value={shape} onChange={(value) => onShape(toShape(value))} />
      <div className="grid gap-4 sm:grid-cols-2">
        <LengthField key={`width ${widthMm}`} name="widthMm" label={shape === "circle" ? "Diameter" : "Width"} units={units} places={1} defaultValueMm={widthMm} isRequired />
        {shape === "circle" ? null : <LengthField key={`depth ${depthMm}`} name="depthMm" label="Depth" units={units} places={1} defaultValueMm={depthMm} isRequired />}
      </div>
      <ChoiceGroup key={headedBy} name="headedBy" label="Headed by" choices={HEADS} defaultValue={headedBy} />
      <LengthField
        key={`height ${formHeightMm ?? ""}`} name="formHeightMm" label="Form height" units={units} hint="Empty: storey height less what is over it and the kicker"
        {...(formHeightMm === null ? {} : { defaultValueMm: formHeightMm })}
      />
      <TextField key={`concrete ${concrete ?? ""}`} name="concrete" label="Concrete" defaultValue={concrete ?? ""} maxLength={40} />
      <TextField key={`remarks ${remarks ?? ""}`} name="remarks" label="Remarks" defaultValue={remarks ?? ""} rows={2} maxLength={300} />
      <TextField name="reason" label="Reason for the change" rows={2} maxLength={300} isRequired={isReasonAsked} />
    </>
  );
}
