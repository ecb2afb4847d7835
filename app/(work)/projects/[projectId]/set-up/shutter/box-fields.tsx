"use client";

import { useState } from "react";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { FieldGrid } from "../_parts/field-grid.tsx";
import type { RuleFieldsProps } from "./rule-fields.ts";

const JOINTS = [
  { value: "two-over", label: "Two in, two over", note: "two faces at the column's size, two at size + 2 × ply" },
  { value: "pinwheel", label: "Pinwheel", note: "every face laps its neighbour on one side: size + ply" },
  { value: "fillet-corner", label: "Fillet corner", note: "all four at the column's size, closed by a fillet in each corner" },
] as const;
const PAIRS = [
  { value: "A-C", label: "A and C run over", note: "the faces along the width" },
  { value: "B-D", label: "B and D run over", note: "the faces along the depth" },
] as const;

export function BoxFields({ rule, units }: RuleFieldsProps) {
  const [joint, setJoint] = useState<string>(rule.joint);
  return (
    <Section title="The box">
      <div className="flex flex-col gap-5">
        <ChoiceGroup name="shutterRule.joint" label="Joint of the panels" choices={JOINTS} value={joint} onChange={setJoint} />
        {joint === "two-over"
          ? <ChoiceGroup name="shutterRule.overPair" label="Which pair runs over" choices={PAIRS} defaultValue={rule.overPair} />
          : <input type="hidden" name="shutterRule.overPair" value={rule.overPair} />}
        <FieldGrid>
          <LengthField name="shutterRule.filletLeg" label="Fillet leg" units={units} places={1} hint="Empty leaves the arris sharp" {...(rule.filletLeg === null ? {} : { defaultValueMm: rule.filletLeg })} />
          <LengthField name="shutterRule.kickerHeight" label="Kicker height" units={units} hint="The form stands on it" defaultValueMm={rule.kickerHeight} isRequired />
          <NumberField name="shutterRule.deflectionRatio" label="Deflection: span over" hint="270 stands for span / 270" defaultValue={rule.deflectionRatio} isRequired />
          <QuantityField name="shutterRule.twoPersonLift" label="Two-person lift" unit="kg" units={units} hint="Heavier panels get a warning" defaultValue={rule.twoPersonLift} isRequired />
        </FieldGrid>
        <div className="flex flex-wrap gap-x-8">
          <CheckField name="shutterRule.baseCleats" label="Cleats at the base" defaultSelected={rule.baseCleats} />
          <CheckField name="shutterRule.jointCleats" label="Cleats at sheet joints" defaultSelected={rule.jointCleats} />
        </div>
      </div>
    </Section>
  );
}
