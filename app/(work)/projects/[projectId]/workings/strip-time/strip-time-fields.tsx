"use client";

import { useState } from "react";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { FieldSet, Wide } from "../_parts/fields/field-set.tsx";
import { known } from "../_parts/fields/known.ts";
import { HourlyField } from "./hourly-field.tsx";
import type { AgeGiven, RuleGiven, StripTimeGiven } from "./read-strip-time.ts";
import { AGES, HARDENING, RULES } from "./strip-time-words.ts";

const MEASURED = [{ value: "air", label: "Air" }, { value: "concrete", label: "Concrete" }] as const;

export function StripTimeFields({ given, units }: { readonly given: StripTimeGiven; readonly units: Units }) {
  const [kind, setKind] = useState<string>(given.rule.kind);
  return (
    <>
      <FieldSet legend="Rule">
        <Wide><SelectField name="rule.kind" label="Strip by" choices={RULES} defaultValue={given.rule.kind} onChange={setKind} isRequired /></Wide>
        <RuleFields key={kind} kind={kind} rule={given.rule} units={units} />
      </FieldSet>
      <FieldSet legend="Temperature record">
        <Wide><ChoiceGroup name="measured" label="Measured in the" choices={MEASURED} defaultValue={given.measured} /></Wide>
        <HourlyField name="hourly_degC" given={given.hourly_degC} units={units} />
      </FieldSet>
    </>
  );
}

type RuleFieldsProps = { readonly kind: string; readonly rule: RuleGiven; readonly units: Units };

function RuleFields({ kind, rule, units }: RuleFieldsProps) {
  const hours = "hours_h" in rule && rule.kind === kind ? known(rule.hours_h) : undefined;
  switch (kind) {
    case "is-456":
      return <NumberField name="rule.hours_h" label="Hours" unit="h" hint="16 to 24, by the engineer" defaultValue={hours} isRequired />;
    case "project-hours":
      return (
        <>
          <NumberField name="rule.hours_h" label="Hours" unit="h" defaultValue={hours} isRequired />
          <QuantityField name="rule.least_temperature_degC" label="Not under" hint="Colder hours do not count" unit="degC" units={units} defaultValue={known(rule.kind === kind ? rule.least_temperature_degC : null)} />
        </>
      );
    case "maturity":
      return (
        <>
          <QuantityField name="rule.datum_degC" label="Datum" unit="degC" units={units} defaultValue={known(rule.kind === kind ? rule.datum_degC : null)} isRequired />
          <QuantityField name="rule.required_degC_h" label="Asked for" hint="By tests" unit="degC.h" units={units} defaultValue={known(rule.kind === kind ? rule.required_degC_h : null)} isRequired />
        </>
      );
    case "equivalent-age":
      return <AgeFields age={rule.kind === kind ? rule.age : { kind: "en-1992" }} required={rule.kind === kind ? rule.required_h : null} units={units} />;
    case "strength":
      return <StrengthFields rule={rule.kind === kind ? rule : null} units={units} />;
    default:
      return null;
  }
}

function AgeFields({ age, required, units }: { readonly age: AgeGiven; readonly required: number | null; readonly units: Units }) {
  const [kind, setKind] = useState<string>(age.kind);
  return (
    <>
      <NumberField name="rule.required_h" label="Asked for" unit="h" defaultValue={known(required)} isRequired />
      <Wide><SelectField name="rule.age.kind" label="Hours count by" choices={AGES} defaultValue={age.kind} onChange={setKind} isRequired /></Wide>
      {kind === "arrhenius" ? <NumberField name="rule.age.activation_energy_kJ_per_mol" label="Activation energy" unit="kJ/mol" defaultValue={age.kind === "arrhenius" ? known(age.activation_energy_kJ_per_mol) : undefined} isRequired /> : null}
      {kind === "astm-c1074" ? <NumberField name="rule.age.q_K" label="Q" unit="K" defaultValue={age.kind === "astm-c1074" ? known(age.q_K) : undefined} isRequired /> : null}
      {kind === "en-1992" ? null : <QuantityField name="rule.age.reference_degC" label="Reference" unit="degC" units={units} defaultValue={age.kind === "en-1992" ? undefined : known(age.reference_degC)} isRequired />}
    </>
  );
}

function StrengthFields({ rule, units }: { readonly rule: Extract<RuleGiven, { kind: "strength" }> | null; readonly units: Units }) {
  const stress = (name: string, label: string, hint: string, value: number | undefined) =>
    <QuantityField name={`rule.${name}`} label={label} hint={hint} unit="N/mm2" units={units} defaultValue={known(value)} isRequired />;
  return (
    <>
      {stress("mean_strength_28_N_per_mm2", "Mean strength", "At 28 days", rule?.mean_strength_28_N_per_mm2)}
      {stress("stress_on_release_N_per_mm2", "Stress on release", "By the designer", rule?.stress_on_release_N_per_mm2)}
      {stress("least_strength_N_per_mm2", "Least strength", "Of the project", rule?.least_strength_N_per_mm2)}
      <SelectField name="rule.hardening" label="Cement class" choices={HARDENING} defaultValue={rule?.hardening ?? "N"} isRequired />
    </>
  );
}
