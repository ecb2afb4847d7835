"use client";

import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { FieldSet } from "../_parts/fields/field-set.tsx";
import { known } from "../_parts/fields/known.ts";
import { PourFields, type PressureGiven } from "../_parts/fields/pour-fields.tsx";

export function PressureFields({ given, units }: { readonly given: PressureGiven; readonly units: Units }) {
  return (
    <>
      <PourFields at="" given={given} units={units} withWithdrawn />
      <FieldSet legend="Batter">
        <QuantityField name="batter_mm_per_m" label="Leans inwards" unit="mm/m" units={units} hint="0 is upright" defaultValue={known(given.batter_mm_per_m)} isRequired />
      </FieldSet>
    </>
  );
}
