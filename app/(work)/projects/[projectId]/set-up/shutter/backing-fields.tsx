"use client";

import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { FieldGrid } from "../_parts/field-grid.tsx";
import type { RuleFieldsProps } from "./rule-fields.ts";

const LAID = [
  { value: "edge", label: "On edge", note: "the depth stands off the ply" },
  { value: "flat", label: "Flat", note: "the width lies on the ply" },
] as const;

export function BackingFields({ rule: { backing, edgeProud, largestTimberCentres }, units }: RuleFieldsProps) {
  return (
    <Section title="Backing timber" note="Permissible stresses, with every factor in them">
      <div className="flex flex-col gap-4">
        <FieldGrid>
          <TextField name="shutterRule.backing.label" label="Name" defaultValue={backing.label} maxLength={80} isRequired />
          <LengthField name="shutterRule.backing.width" label="Width as sawn" units={units} places={1} defaultValueMm={backing.width} isRequired />
          <LengthField name="shutterRule.backing.depth" label="Depth as sawn" units={units} places={1} defaultValueMm={backing.depth} isRequired />
          <LengthField name="shutterRule.backing.stockLength" label="Stock length" units={units} defaultValueMm={backing.stockLength} isRequired />
          <QuantityField name="shutterRule.backing.modulus" label="Modulus E" unit="N/mm2" units={units} defaultValue={backing.modulus} isRequired />
          <QuantityField name="shutterRule.backing.bendingStress" label="Bending stress" unit="N/mm2" units={units} defaultValue={backing.bendingStress} isRequired />
          <QuantityField name="shutterRule.backing.shearStress" label="Shear stress" unit="N/mm2" units={units} defaultValue={backing.shearStress} isRequired />
          <QuantityField name="shutterRule.backing.density" label="Density" unit="kg/m3" units={units} defaultValue={backing.density} isRequired />
          <LengthField name="shutterRule.edgeProud" label="Edge timbers proud" units={units} hint="0 is flush with the panel's edge" defaultValueMm={edgeProud} isRequired />
          <LengthField name="shutterRule.largestTimberCentres" label="Widest centres" units={units} places={1} hint="Whatever the ply could span" defaultValueMm={largestTimberCentres} isRequired />
        </FieldGrid>
        <ChoiceGroup name="shutterRule.backing.orientation" label="Laid" choices={LAID} defaultValue={backing.orientation} />
        <TextField name="shutterRule.backing.source" label="Source of these figures" hint="Grade and standard, supplier, date" defaultValue={backing.source} maxLength={200} isRequired />
      </div>
    </Section>
  );
}
