"use client";

import { LengthField } from "#app/_ui/field/length-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { FieldSet } from "../../_parts/fields/field-set.tsx";
import { known } from "../../_parts/fields/known.ts";
import { PourFields } from "../../_parts/fields/pour-fields.tsx";
import { RowList } from "../../_parts/fields/row-list.tsx";
import { FormatFields, TimberFields } from "../../_parts/fields/timber-fields.tsx";
import type { ClampLayoutGiven } from "../read-clamp-layout.ts";
import { ClampFields } from "./clamp-fields.tsx";
import { LayoutFields, type Spacing } from "./layout-fields.tsx";

export type ClampLayoutFieldsProps = {
  readonly given: ClampLayoutGiven;
  readonly units: Units;
  /** Of the answer, to start a list of measured heights from. */
  readonly foundHeights: readonly number[];
  /** The project's rule, to start a search from. */
  readonly spacing: Spacing;
};

export function ClampLayoutFields({ given, units, foundHeights, spacing }: ClampLayoutFieldsProps) {
  return (
    <>
      <LayoutFields given={given.layout} units={units} foundHeights={foundHeights} spacing={spacing} />
      <PourFields at="pressure." given={given.pressure} units={units} />
      <SideFields sides={given.sides} units={units} />
      <ClampFields clamp={given.clamp} units={units} />
      <TimberFields given={given.timber} units={units} />
      <FieldSet legend="Load on the timber">
        <LengthField name="share_mm" label="Carries" hint="Of the face" units={units} defaultValueMm={known(given.share_mm)} isRequired />
        <NumberField name="deflection_ratio" label="Deflection L /" defaultValue={known(given.deflection_ratio)} places={0} isRequired />
      </FieldSet>
      <FormatFields given={given.format} />
      <RowList
        legend="Highest rate of rise" note="for these concrete temperatures" items={given.rise_rate_temperatures_degC ?? []} fresh={(last) => (last ?? 10) + 5}
        rowName={(index) => `temperature ${index + 1}`} addLabel="Add a temperature" least={0} most={20}
        row={(temperature, index) => <QuantityField name={`rise_rate_temperatures_degC.${index}`} label="Concrete" unit="degC" units={units} defaultValue={known(temperature)} isRequired />}
      />
    </>
  );
}

function SideFields({ sides, units }: { readonly sides: ClampLayoutGiven["sides"]; readonly units: Units }) {
  const field = (name: keyof ClampLayoutGiven["sides"], part: "side_mm" | "wedge_span_mm", label: string, hint: string) =>
    <LengthField name={`sides.${name}.${part}`} label={label} hint={hint} units={units} places={1} defaultValueMm={known(sides[name][part])} isRequired />;
  return (
    <FieldSet legend="Column" note="concrete sides, and the clamp's arm">
      {field("across", "side_mm", "Width", "Faces A, C")}
      {field("across", "wedge_span_mm", "Wedge to wedge", "Over A, C")}
      {field("along", "side_mm", "Depth", "Faces B, D")}
      {field("along", "wedge_span_mm", "Wedge to wedge", "Over B, D")}
    </FieldSet>
  );
}
