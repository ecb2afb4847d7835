"use client";

import { LengthField } from "#app/_ui/field/length-field.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { FieldGrid } from "../_parts/field-grid.tsx";
import type { RuleFieldsProps } from "./rule-fields.ts";

const FIELDS = [
  ["firstMin", "Lowest clamp, not under", "Above the foot of the form"],
  ["firstMax", "Lowest clamp, not over", "Above the foot of the form"],
  ["topMax", "Top clamp, not more than", "Below the top of the form"],
  ["smallestGap", "Smallest gap", "So that wedges can be driven"],
  ["largestGap", "Largest gap", "Whatever the timbers could span"],
  ["module", "Heights rounded to", "Steps that are easily measured"],
] as const;

export function ClampSpacingFields({ rule: { clampSpacing }, units }: RuleFieldsProps) {
  return (
    <Section title="Where clamps may sit" note="Within these the pressure decides">
      <FieldGrid>
        {FIELDS.map(([key, label, hint]) => (
          <LengthField key={key} name={`shutterRule.clampSpacing.${key}`} label={label} hint={hint} units={units} places={1} defaultValueMm={clampSpacing[key]} isRequired />
        ))}
      </FieldGrid>
    </Section>
  );
}
