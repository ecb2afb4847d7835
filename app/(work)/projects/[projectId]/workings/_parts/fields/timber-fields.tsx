"use client";

import { useState } from "react";
import { EN_338_CLASSES } from "#lib/trade/engineering/backing/timber-choice.ts";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { FieldSet, Wide } from "./field-set.tsx";
import { known } from "./known.ts";
import { FRESH_VALUES, NDS_FACTORS, TIMBER_CHOICES, type FormatGiven, type TimberGiven, type TimberKind } from "./timber-words.ts";

type Values = TimberGiven["values"];
const AT = "timber.values.";

/** One backing timber: its section as laid, and what it may be stressed to. */
export function TimberFields({ given, units }: { readonly given: TimberGiven; readonly units: Units }) {
  const [kind, setKind] = useState<TimberKind>(given.values.kind);
  const values: Values = given.values.kind === kind ? given.values : FRESH_VALUES[kind];
  return (
    <FieldSet legend="Backing timber">
      <LengthField name="timber.breadth_mm" label="Breadth" hint="Along the ply" units={units} defaultValueMm={known(given.breadth_mm)} isRequired />
      <LengthField name="timber.depth_mm" label="Depth" hint="Off the ply" units={units} defaultValueMm={known(given.depth_mm)} isRequired />
      <Wide>
        <SelectField name={`${AT}kind`} label="Stresses by" choices={TIMBER_CHOICES} defaultValue={given.values.kind} onChange={(value) => setKind(TIMBER_CHOICES.find((choice) => choice.value === value)?.value ?? kind)} isRequired />
      </Wide>
      <ValueFields key={kind} values={values} units={units} />
    </FieldSet>
  );
}

function ValueFields({ values, units }: { readonly values: Values; readonly units: Units }) {
  switch (values.kind) {
    case "own":
      return (
        <>
          <Stress name="bending_stress_N_per_mm2" label="Bending stress" value={values.bending_stress_N_per_mm2} units={units} />
          <Stress name="shear_stress_N_per_mm2" label="Shear stress" value={values.shear_stress_N_per_mm2} units={units} />
          <Stress name="modulus_N_per_mm2" label="Modulus E" value={values.modulus_N_per_mm2} units={units} />
        </>
      );
    case "en-338":
      return (
        <>
          <SelectField name={`${AT}strength_class`} label="Class" choices={EN_338_CLASSES.map((value) => ({ value, label: value }))} defaultValue={values.strength_class} isRequired />
          <Factor name="k_mod" label="k_mod" value={values.k_mod} />
          <Factor name="gamma_M" label="γ_M" value={values.gamma_M} />
        </>
      );
    case "nds":
      return (
        <>
          <TableStresses values={values} units={units} what="F_b" shear="F_v" />
          {NDS_FACTORS.map(([name, label]) => <Factor key={name} name={`factors.${name}`} label={label} value={values.factors[name]} />)}
        </>
      );
    case "bs-5268":
      return (
        <>
          <TableStresses values={values} units={units} what="Bending, grade" shear="Shear, grade" />
          <Factor name="wet.bending" label="K2 bending" value={values.wet.bending} />
          <Factor name="wet.shear" label="K2 shear" value={values.wet.shear} />
          <Factor name="wet.modulus" label="K2 modulus" value={values.wet.modulus} />
          <Factor name="duration" label="K3 duration" value={values.duration} />
          <Factor name="load_sharing" label="K8 sharing" value={values.load_sharing} />
          <Wide><CheckField name={`${AT}depth_factor_in_shear`} label="K7 on shear too" defaultSelected={values.depth_factor_in_shear} /></Wide>
        </>
      );
  }
}

type TableProps = { readonly values: Extract<Values, { bending_N_per_mm2: number }>; readonly units: Units; readonly what: string; readonly shear: string };

function TableStresses({ values, units, what, shear }: TableProps) {
  return (
    <>
      <Stress name="bending_N_per_mm2" label={what} value={values.bending_N_per_mm2} units={units} />
      <Stress name="shear_N_per_mm2" label={shear} value={values.shear_N_per_mm2} units={units} />
      <Stress name="modulus_N_per_mm2" label="Modulus E" value={values.modulus_N_per_mm2} units={units} />
    </>
  );
}

type EntryProps = { readonly name: string; readonly label: string; readonly value: number };

const Stress = ({ name, label, value, units }: EntryProps & { readonly units: Units }) =>
  <QuantityField name={`${AT}${name}`} label={label} unit="N/mm2" units={units} defaultValue={known(value)} isRequired />;

const Factor = ({ name, label, value }: EntryProps) => <NumberField name={`${AT}${name}`} label={label} defaultValue={known(value)} isRequired />;

const FORMATS = [
  { value: "permissible-stress", label: "Permissible stress", note: "loads as they are" },
  { value: "partial-factor", label: "Partial factors", note: "loads times a factor" },
] as const;

/** One safety format for load and strength; the two are never mixed. */
export function FormatFields({ given }: { readonly given: FormatGiven }) {
  const [kind, setKind] = useState<string>(given.kind);
  return (
    <FieldSet legend="Safety format">
      <Wide><ChoiceGroup name="format.kind" label="Against" choices={FORMATS} defaultValue={given.kind} onChange={setKind} /></Wide>
      {kind === "partial-factor" ? (
        <NumberField name="format.load_factor" label="Load factor" hint="Of the project's code" defaultValue={given.kind === "partial-factor" ? known(given.load_factor) : undefined} isRequired />
      ) : null}
    </FieldSet>
  );
}
