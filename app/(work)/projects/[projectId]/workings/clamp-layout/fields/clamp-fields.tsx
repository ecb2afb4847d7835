"use client";

import { LengthField } from "#app/_ui/field/length-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { FieldSet } from "../../_parts/fields/field-set.tsx";
import { known } from "../../_parts/fields/known.ts";
import { RowList } from "../../_parts/fields/row-list.tsx";
import type { ClampLayoutGiven } from "../read-clamp-layout.ts";

/** What the hirer states of the clamp; arm and wedge are checked only where their figures are given. */
export function ClampFields({ clamp, units }: { readonly clamp: ClampLayoutGiven["clamp"]; readonly units: Units }) {
  return (
    <>
      <FieldSet legend="Clamp" note="as its hirer states it">
        <QuantityField name="clamp.side_capacity_kN" label="One side may put on it" unit="kN" units={units} defaultValue={known(clamp.side_capacity_kN)} isRequired />
        <QuantityField name="clamp.wedge_capacity_kN" label="Wedge pull" unit="kN" units={units} defaultValue={known(clamp.wedge_capacity_kN)} />
        <QuantityField name="clamp.arm.section_modulus_cm3" label="Arm modulus W" unit="cm3" units={units} defaultValue={known(clamp.arm?.section_modulus_cm3)} />
        <QuantityField name="clamp.arm.stress_N_per_mm2" label="Arm stress" unit="N/mm2" units={units} defaultValue={known(clamp.arm?.stress_N_per_mm2)} />
      </FieldSet>
      <RowList
        legend="Loads by span" note="where the hirer lists them" items={clamp.capacity_by_span ?? []} fresh={() => ({ span_mm: Number.NaN, load_kN: Number.NaN })}
        rowName={(index) => `line ${index + 1}`} addLabel="Add a line" least={0} most={40}
        row={({ span_mm, load_kN }, index) => (
          <>
            <LengthField name={`clamp.capacity_by_span.${index}.span_mm`} label="Span" hint="" units={units} defaultValueMm={known(span_mm)} isRequired />
            <QuantityField name={`clamp.capacity_by_span.${index}.load_kN`} label="Load" unit="kN" units={units} defaultValue={known(load_kN)} isRequired />
          </>
        )}
      />
    </>
  );
}
