"use client";

import { useState } from "react";
import type { z } from "zod";
import type { pressureShape } from "#lib/contracts/workings/pressure.ts";
import type { AnyPressureMethod } from "#lib/trade/engineering/pour-conditions.ts";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { FieldSet, Half, Wide } from "./field-set.tsx";
import { known } from "./known.ts";
import { CEMENTS, classesOf, methodChoices, PLACING, READ_BY } from "./pour-words.ts";

export type PressureGiven = z.input<typeof pressureShape>;
export type PourFieldsProps = {
  /** What stands before each name: empty, or "pressure." where the pour is part of a larger input. */
  readonly at: string;
  readonly given: PressureGiven;
  readonly units: Units;
  /** Withdrawn editions may be compared, not built by. */
  readonly withWithdrawn?: boolean;
};

/** The pour and the form it goes into; only what the chosen method reads is in sight. */
export function PourFields({ at, given: { pour, form }, units, withWithdrawn = false }: PourFieldsProps) {
  const [method, setMethod] = useState<AnyPressureMethod>(pour.method);
  const reads = READ_BY[method];
  const choices = methodChoices(withWithdrawn);
  const choose = (value: string) => setMethod(choices.find((choice) => choice.value === value)?.value ?? method);
  return (
    <>
      <FieldSet legend="Form and method">
        <Wide><SelectField name={`${at}pour.method`} label="Pressure by" choices={choices} defaultValue={pour.method} onChange={choose} isRequired /></Wide>
        <LengthField name={`${at}form.height_mm`} label="Form height" units={units} hint="" defaultValueMm={known(form.height_mm)} isRequired />
        <LengthField name={`${at}pour.pour_height_mm`} label="Concrete height" units={units} hint="Empty: to the top" defaultValueMm={known(pour.pour_height_mm)} />
        <Half isShown={reads.includes("side")}><LengthField name={`${at}form.largest_side_mm`} label="Largest side" units={units} hint="On plan" places={1} defaultValueMm={known(form.largest_side_mm)} isRequired /></Half>
      </FieldSet>
      <FieldSet legend="Pour">
        <QuantityField name={`${at}pour.concrete_density_kN_per_m3`} label="Density" unit="kN/m3" units={units} defaultValue={known(pour.concrete_density_kN_per_m3)} isRequired />
        <Half isShown={reads.includes("rate")}><QuantityField name={`${at}pour.rise_rate_m_per_h`} label="Rate of rise" unit="m/h" units={units} defaultValue={known(pour.rise_rate_m_per_h)} isRequired /></Half>
        <Half isShown={reads.includes("temperature")}><QuantityField name={`${at}pour.temperature_degC`} label="Concrete temp." unit="degC" units={units} hint="As placed" defaultValue={known(pour.temperature_degC)} isRequired /></Half>
        <Half isShown={reads.includes("slump")}><LengthField name={`${at}pour.slump_mm`} label="Slump" units={units} hint="" defaultValueMm={known(pour.slump_mm)} isRequired /></Half>
        <Half isShown={reads.includes("vibration")}><LengthField name={`${at}pour.vibration_depth_mm`} label="Vibrator depth" units={units} hint="Below the surface" defaultValueMm={known(pour.vibration_depth_mm)} isRequired /></Half>
        {reads.includes("consistency") ? (
          <SelectField key={method} name={`${at}pour.consistency`} label="Consistency class" choices={classesOf(method).map((value) => ({ value, label: value }))} {...consistencyOf(method, pour.consistency)} isRequired />
        ) : null}
        {reads.includes("setting-end") ? <NumberField name={`${at}pour.setting_end_h`} label="Setting end tE" unit="h" hint="By the supplier; 5 to 20 h" defaultValue={known(pour.setting_end_h)} isRequired /> : null}
        <Wide isShown={reads.includes("cement")}><SelectField name={`${at}pour.cement`} label="Cement" choices={CEMENTS} defaultValue={pour.cement} isRequired /></Wide>
        <Wide><SelectField name={`${at}pour.placing`} label="Placed" choices={PLACING} defaultValue={pour.placing} isRequired /></Wide>
        <Wide isShown={reads.includes("retarder")}><CheckField name={`${at}pour.retarder`} label="Retarder in the mix" hint="Retarding superplasticizers too" defaultSelected={pour.retarder} /></Wide>
        <Wide isShown={reads.includes("self-compacting")}><CheckField name={`${at}pour.self_compacting`} label="Self-compacting concrete" defaultSelected={pour.self_compacting} /></Wide>
        <Wide isShown={reads.includes("external")}><CheckField name={`${at}pour.external_vibration`} label="Vibrated from outside" defaultSelected={pour.external_vibration} /></Wide>
      </FieldSet>
    </>
  );
}

const consistencyOf = (method: AnyPressureMethod, given: PressureGiven["pour"]["consistency"]) =>
  given && classesOf(method).includes(given) ? { defaultValue: given } : {};
