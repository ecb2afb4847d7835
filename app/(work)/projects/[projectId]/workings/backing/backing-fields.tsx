"use client";

import { useState } from "react";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { FieldSet, Wide } from "../_parts/fields/field-set.tsx";
import { known } from "../_parts/fields/known.ts";
import { PourFields, type PressureGiven } from "../_parts/fields/pour-fields.tsx";
import { RowList } from "../_parts/fields/row-list.tsx";
import { FormatFields, TimberFields } from "../_parts/fields/timber-fields.tsx";
import type { BackingGiven } from "./read-backing.ts";

export type BackingFieldsProps = { readonly given: BackingGiven; readonly units: Units; readonly projectPressure: PressureGiven };

const LOADS = [
  { value: "pressure", label: "Concrete pressure", note: "on the timber’s share of the face" },
  { value: "corners", label: "Load as entered", note: "straight lines between corners" },
] as const;

export function BackingFields({ given, units, projectPressure }: BackingFieldsProps) {
  return (
    <>
      <FieldSet legend="Beam">
        <LengthField name="length_mm" label="Length" hint="From the foot up" units={units} defaultValueMm={known(given.length_mm)} isRequired />
        <NumberField name="deflection_ratio" label="Deflection L /" defaultValue={known(given.deflection_ratio)} places={0} isRequired />
      </FieldSet>
      <RowList
        legend="Clamps" note="heights above the foot" items={given.supports_mm} fresh={() => Number.NaN}
        rowName={(index) => `clamp ${index + 1}`} addLabel="Add a clamp" least={2} most={60}
        row={(height, index) => <div className="col-span-full"><LengthField name={`supports_mm.${index}`} label={`Clamp ${index + 1}`} hint="" units={units} defaultValueMm={known(height)} isRequired /></div>}
      />
      <TimberFields given={given.timber} units={units} />
      <LoadFields load={given.load} units={units} projectPressure={projectPressure} />
      <FormatFields given={given.format} />
    </>
  );
}

type LoadFieldsProps = Pick<BackingFieldsProps, "units" | "projectPressure"> & { readonly load: BackingGiven["load"] };

function LoadFields({ load, units, projectPressure }: LoadFieldsProps) {
  const [kind, setKind] = useState<string>(load.kind);
  const pressure = load.kind === "pressure" ? load.pressure : projectPressure;
  const corners = load.kind === "corners" ? load.corners : [{ at_mm: 0, load_kN_per_m: Number.NaN }, { at_mm: Number.NaN, load_kN_per_m: 0 }];
  return (
    <>
      <FieldSet legend="Load">
        <Wide><ChoiceGroup name="load.kind" label="From" choices={LOADS} defaultValue={load.kind} onChange={setKind} /></Wide>
        {kind === "pressure" ? <LengthField name="load.share_mm" label="Carries" hint="Of the face" units={units} defaultValueMm={load.kind === "pressure" ? known(load.share_mm) : undefined} isRequired /> : null}
      </FieldSet>
      {kind === "pressure" ? <PourFields at="load.pressure." given={pressure} units={units} /> : (
        <RowList
          legend="Corners of the load" note="from the foot up" items={corners} fresh={() => ({ at_mm: Number.NaN, load_kN_per_m: Number.NaN })}
          rowName={(index) => `corner ${index + 1}`} addLabel="Add a corner" least={2} most={60}
          row={({ at_mm, load_kN_per_m }, index) => (
            <>
              <LengthField name={`load.corners.${index}.at_mm`} label="Height" hint="" units={units} defaultValueMm={known(at_mm)} isRequired />
              <QuantityField name={`load.corners.${index}.load_kN_per_m`} label="Load" unit="kN/m" units={units} defaultValue={known(load_kN_per_m)} isRequired />
            </>
          )}
        />
      )}
    </>
  );
}
