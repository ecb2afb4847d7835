"use client";

import { useState } from "react";
import { FACE_GRAINS, PLY_THICKNESSES } from "#lib/trade/engineering/sheathing/apa-sections.ts";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { FieldSet, Wide } from "../_parts/fields/field-set.tsx";
import { known } from "../_parts/fields/known.ts";
import type { SheathingGiven } from "./read-sheathing.ts";
import { GRADES, GRAINS } from "./sheathing-words.ts";

const KINDS = [
  { value: "own", label: "Supplier’s values", note: "permissible, per width" },
  { value: "apa", label: "US form plywood", note: "APA section properties" },
] as const;
const SPANS = [{ value: "1", label: "1" }, { value: "2", label: "2" }, { value: "3", label: "3 or more" }] as const;

export function SheathingFields({ given, units }: { readonly given: SheathingGiven; readonly units: Units }) {
  return (
    <>
      <FieldSet legend="Strip">
        <QuantityField name="pressure_kPa" label="Pressure" hint="At its lowest point" unit="kPa" units={units} defaultValue={known(given.pressure_kPa)} isRequired />
        <LengthField name="centres_mm" label="Centres" hint="Of the timbers" units={units} defaultValueMm={known(given.centres_mm)} isRequired />
        <LengthField name="support_width_mm" label="Timber width" hint="" units={units} defaultValueMm={known(given.support_width_mm)} isRequired />
        <LengthField name="overhang_mm" label="Overhang" hint="Loaded, past the last centre" units={units} defaultValueMm={known(given.overhang_mm)} isRequired />
        <SelectField name="spans" label="Spans" choices={SPANS} defaultValue={String(given.spans)} isRequired />
        <NumberField name="deflection_ratio" label="Deflection L /" defaultValue={known(given.deflection_ratio)} places={0} isRequired />
      </FieldSet>
      <BoardFields board={given.board} units={units} />
    </>
  );
}

function BoardFields({ board, units }: { readonly board: SheathingGiven["board"]; readonly units: Units }) {
  const [kind, setKind] = useState<string>(board.kind);
  const own = board.kind === "own" ? board : null;
  const apa = board.kind === "apa" ? board : null;
  return (
    <FieldSet legend="Board" note="in the direction in which it spans">
      <Wide><ChoiceGroup name="board.kind" label="By" choices={KINDS} defaultValue={board.kind} onChange={setKind} /></Wide>
      {kind === "own" ? (
        <>
          <QuantityField name="board.bending_stiffness_kN_m2_per_m" label="Stiffness EI" unit="kN.m2/m" units={units} defaultValue={known(own?.bending_stiffness_kN_m2_per_m)} isRequired />
          <QuantityField name="board.moment_capacity_kN_m_per_m" label="Moment" unit="kN.m/m" units={units} defaultValue={known(own?.moment_capacity_kN_m_per_m)} isRequired />
          <QuantityField name="board.shear_capacity_kN_per_m" label="Shear" unit="kN/m" units={units} defaultValue={known(own?.shear_capacity_kN_per_m)} isRequired />
        </>
      ) : (
        <>
          <SelectField name="board.thickness" label="Thickness (in)" choices={PLY_THICKNESSES.map((value) => ({ value, label: value }))} defaultValue={apa?.thickness ?? "3/4"} isRequired />
          <SelectField name="board.grade" label="Grade" choices={GRADES} defaultValue={apa?.grade ?? "class-i"} isRequired />
          <Wide><SelectField name="board.grain" label="Face grain" choices={FACE_GRAINS.map((value) => ({ value, label: GRAINS[value] }))} defaultValue={apa?.grain ?? "across"} isRequired /></Wide>
          <Wide><CheckField name="board.reused" label="Used again and again" hint="Then without the short-load factor" defaultSelected={apa?.reused ?? true} /></Wide>
        </>
      )}
    </FieldSet>
  );
}
