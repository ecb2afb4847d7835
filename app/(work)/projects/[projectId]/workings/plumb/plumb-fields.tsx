"use client";

import { useState } from "react";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { FieldSet, Wide } from "../_parts/fields/field-set.tsx";
import { known } from "../_parts/fields/known.ts";
import { RowList } from "../_parts/fields/row-list.tsx";
import { OWN, TOLERANCES } from "./plumb-words.ts";
import { FACES, type PlumbGiven } from "./read-plumb.ts";

type Reading = { readonly face: (typeof FACES)[number]; readonly along_mm: number; readonly bottom: number; readonly top: number };

const readingsOf = ({ bottom, top }: PlumbGiven): readonly Reading[] =>
  bottom.faces.map(({ face, along_mm, offset_mm }, index) => ({ face, along_mm, bottom: offset_mm, top: top.faces[index]?.offset_mm ?? Number.NaN }));

export function PlumbFields({ given, units }: { readonly given: PlumbGiven; readonly units: Units }) {
  const mm = (name: string, label: string, hint: string, value: number) => <QuantityField name={name} label={label} hint={hint} unit="mm" units={units} defaultValue={known(value)} isRequired />;
  return (
    <>
      <RowList
        legend="Offsets" note="out +, in −" items={readingsOf(given)} fresh={(last) => ({ face: last?.face ?? "A", along_mm: 0, bottom: Number.NaN, top: Number.NaN })}
        rowName={(index) => `reading ${index + 1}`} addLabel="Add a reading" least={2} most={20}
        row={({ face, along_mm, bottom, top }, index) => (
          <>
            <SelectField name={`bottom.faces.${index}.face`} label="Face" choices={FACES.map((value) => ({ value, label: value }))} defaultValue={face} isRequired />
            {mm(`bottom.faces.${index}.along_mm`, "Along", "", along_mm)}
            {mm(`bottom.faces.${index}.offset_mm`, "At the bottom", "", bottom)}
            {mm(`top.faces.${index}.offset_mm`, "At the top", "", top)}
          </>
        )}
      />
      <p className="text-sm text-ink-soft">
        Seen from above: A at the top, then B, C and D clockwise. “Along” counts from the middle of the face, to the right on A and C, up on B and D. Read
        two faces at right angles at least; two readings on one face tell the twist.
      </p>
      <FieldSet legend="Column and heights">
        <LengthField name="width_mm" label="Width" hint="Faces A, C" units={units} places={1} defaultValueMm={known(given.width_mm)} isRequired />
        <LengthField name="depth_mm" label="Depth" hint="Faces B, D" units={units} places={1} defaultValueMm={known(given.depth_mm)} isRequired />
        <LengthField name="form_height_mm" label="Form height" hint="" units={units} defaultValueMm={known(given.form_height_mm)} isRequired />
        <LengthField name="bottom.height_mm" label="Bottom read at" hint="Above the foot" units={units} defaultValueMm={known(given.bottom.height_mm)} isRequired />
        <LengthField name="top.height_mm" label="Top read at" hint="Above the foot" units={units} defaultValueMm={known(given.top.height_mm)} isRequired />
      </FieldSet>
      <DiagonalFields given={given} units={units} />
      <ToleranceFields tolerance={given.tolerance} units={units} />
    </>
  );
}

function DiagonalFields({ given, units }: { readonly given: PlumbGiven; readonly units: Units }) {
  const pair = (level: "bottom" | "top", label: string) => (
    <>
      <LengthField name={`${level}.diagonals.cd_to_ab_mm`} label={`${label}, CD to AB`} hint="" units={units} places={1} defaultValueMm={known(given[level].diagonals?.cd_to_ab_mm)} />
      <LengthField name={`${level}.diagonals.bc_to_da_mm`} label={`${label}, BC to DA`} hint="" units={units} places={1} defaultValueMm={known(given[level].diagonals?.bc_to_da_mm)} />
    </>
  );
  return <FieldSet legend="Diagonals" note="inside, for the square">{pair("bottom", "Bottom")}{pair("top", "Top")}</FieldSet>;
}

function ToleranceFields({ tolerance, units }: { readonly tolerance: PlumbGiven["tolerance"]; readonly units: Units }) {
  const [rule, setRule] = useState<string>(tolerance.kind === "own" ? OWN : tolerance.rule);
  return (
    <FieldSet legend="Allowed lean">
      <Wide><SelectField name="tolerance.rule" label="By" choices={TOLERANCES} defaultValue={rule} onChange={setRule} isRequired /></Wide>
      {rule === OWN ? <LengthField name="tolerance.limit_mm" label="Over the whole height" hint="" units={units} places={1} defaultValueMm={tolerance.kind === "own" ? known(tolerance.limit_mm) : undefined} isRequired /> : null}
    </FieldSet>
  );
}
