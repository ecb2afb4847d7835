"use client";

import { LengthField } from "#app/_ui/field/length-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { FieldGrid } from "../_parts/field-grid.tsx";
import type { RuleFieldsProps } from "./rule-fields.ts";

export function PlyFields({ rule: { ply }, units }: RuleFieldsProps) {
  return (
    <Section title="Ply" note="Permissible values in the direction in which it spans: across the backing timbers">
      <div className="flex flex-col gap-4">
        <FieldGrid>
          <TextField name="shutterRule.ply.label" label="Name" defaultValue={ply.label} maxLength={80} isRequired />
          <LengthField name="shutterRule.ply.thickness" label="Thickness" units={units} places={1} hint="As measured, not as named" defaultValueMm={ply.thickness} isRequired />
          <LengthField name="shutterRule.ply.sheetLength" label="Sheet length" units={units} defaultValueMm={ply.sheetLength} isRequired />
          <LengthField name="shutterRule.ply.sheetWidth" label="Sheet width" units={units} defaultValueMm={ply.sheetWidth} isRequired />
          <QuantityField name="shutterRule.ply.bendingStiffness" label="Bending stiffness EI" unit="kN.m2/m" units={units} defaultValue={ply.bendingStiffness} isRequired />
          <QuantityField name="shutterRule.ply.momentCapacity" label="Moment capacity" unit="kN.m/m" units={units} defaultValue={ply.momentCapacity} isRequired />
          <QuantityField name="shutterRule.ply.shearCapacity" label="Shear capacity" unit="kN/m" units={units} defaultValue={ply.shearCapacity} isRequired />
          <QuantityField name="shutterRule.ply.density" label="Density" unit="kg/m3" units={units} defaultValue={ply.density} isRequired />
        </FieldGrid>
        <TextField name="shutterRule.ply.source" label="Source of these figures" hint="Supplier, document, date; the form set's sheet prints it" defaultValue={ply.source} maxLength={200} isRequired />
      </div>
    </Section>
  );
}
