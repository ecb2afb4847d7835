"use client";

import { CheckField } from "#app/_ui/field/check-field.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import { choiceOf, isTicked, numberOf, numberOrNull } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { CEMENT_GROUPS, PRESSURE_METHODS } from "#lib/trade/engineering/pour-conditions.ts";
import { changePourConditionsAction } from "../_parts/actions.ts";
import { FieldGrid } from "../_parts/field-grid.tsx";
import type { SetUp } from "../_parts/set-up-page.tsx";

export type PourFormProps = {
  readonly projectId: string; readonly units: Units; readonly pour: SetUp["pourConditions"]; readonly canEdit: boolean;
};

const METHODS = [
  { value: "full-head", label: "Full liquid head", note: "no promise about the pour needed" },
  { value: "aci-347-si", label: "ACI 347, columns", note: "in SI units" },
  { value: "aci-347-us", label: "ACI 347, columns", note: "in US customary units" },
  { value: "ciria-108", label: "CIRIA Report 108", note: "in SI units" },
] as const;
const CEMENTS = [
  { value: "portland", label: "Portland cement", note: "no slag or fly ash" },
  { value: "blend-low", label: "Blended, low", note: "under 70 % slag or 40 % fly ash; other types" },
  { value: "blend-high", label: "Blended, high", note: "70 % slag or 40 % fly ash and over" },
] as const;
const PLACING = [
  { value: "from-top", label: "From the top" },
  { value: "pumped-from-base", label: "Pumped from the base" },
] as const;

const readPour = (data: FormData) => ({
  method: choiceOf(data, "pourConditions.method", PRESSURE_METHODS),
  concreteDensity: numberOf(data, "pourConditions.concreteDensity"),
  temperature: numberOf(data, "pourConditions.temperature"),
  riseRate: numberOf(data, "pourConditions.riseRate"),
  cement: choiceOf(data, "pourConditions.cement", CEMENT_GROUPS),
  retarder: isTicked(data, "pourConditions.retarder"),
  slump: numberOf(data, "pourConditions.slump"),
  vibrationDepth: numberOf(data, "pourConditions.vibrationDepth"),
  selfCompacting: isTicked(data, "pourConditions.selfCompacting"),
  externalVibration: isTicked(data, "pourConditions.externalVibration"),
  placing: choiceOf(data, "pourConditions.placing", ["from-top", "pumped-from-base"]),
  pourHeight: numberOrNull(data, "pourConditions.pourHeight"),
});

export function PourForm({ projectId, units, pour, canEdit }: PourFormProps) {
  const answered = useAnswer((data) => changePourConditionsAction({ projectId, pourConditions: readPour(data) }));
  return (
    <SaveForm answered={answered} label="Save the pour" done="Saved. Pressures follow it from now on." canEdit={canEdit}>
      <ChoiceGroup name="pourConditions.method" label="Pressure by" choices={METHODS} defaultValue={pour.method} />
      <FieldGrid>
        <QuantityField name="pourConditions.concreteDensity" label="Concrete density" unit="kN/m3" units={units} defaultValue={pour.concreteDensity} isRequired />
        <QuantityField name="pourConditions.temperature" label="Concrete temperature" unit="degC" units={units} hint="Of the concrete as placed, not of the air" defaultValue={pour.temperature} isRequired />
        <QuantityField name="pourConditions.riseRate" label="Rate of rise" unit="m/h" units={units} defaultValue={pour.riseRate} isRequired />
        <LengthField name="pourConditions.slump" label="Slump" units={units} defaultValueMm={pour.slump} isRequired />
        <LengthField name="pourConditions.vibrationDepth" label="Vibrator goes down" units={units} hint="Below the surface of the concrete" defaultValueMm={pour.vibrationDepth} isRequired />
        <LengthField name="pourConditions.pourHeight" label="Height of concrete" units={units} hint="Empty: to the top of the form" {...(pour.pourHeight === null ? {} : { defaultValueMm: pour.pourHeight })} />
      </FieldGrid>
      <ChoiceGroup name="pourConditions.cement" label="Cement" choices={CEMENTS} defaultValue={pour.cement} />
      <ChoiceGroup name="pourConditions.placing" label="Placed" choices={PLACING} defaultValue={pour.placing} />
      <div className="flex flex-wrap gap-x-8">
        <CheckField name="pourConditions.retarder" label="Retarder in the mix" hint="Any admixture that delays set, retarding superplasticizers too" defaultSelected={pour.retarder} />
        <CheckField name="pourConditions.selfCompacting" label="Self-compacting concrete" defaultSelected={pour.selfCompacting} />
        <CheckField name="pourConditions.externalVibration" label="Vibrated from outside" defaultSelected={pour.externalVibration} />
      </div>
    </SaveForm>
  );
}
