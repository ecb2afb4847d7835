"use client";

import { useState } from "react";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { FieldSet, Wide } from "../../_parts/fields/field-set.tsx";
import { known } from "../../_parts/fields/known.ts";
import { RowList } from "../../_parts/fields/row-list.tsx";
import type { ClampLayoutGiven } from "../read-clamp-layout.ts";

type Layout = ClampLayoutGiven["layout"];
export type Spacing = Extract<Layout, { kind: "fewest" }>["spacing"];
export type LayoutFieldsProps = { readonly given: Layout; readonly units: Units; readonly foundHeights: readonly number[]; readonly spacing: Spacing };

const MODES = [
  { value: "fewest", label: "Find the fewest", note: "heights by the rule below" },
  { value: "measured", label: "Check my layout", note: "heights as they stand" },
] as const;

const RULES: readonly (readonly [keyof Spacing, string, string])[] = [
  ["first_min_mm", "Lowest, from", "Above the foot"], ["first_max_mm", "Lowest, up to", "Above the foot"],
  ["smallest_gap_mm", "Gap, from", ""], ["largest_gap_mm", "Gap, up to", ""],
  ["top_max_mm", "Top clamp within", "Of the top of the form"], ["module_mm", "Steps of", "Heights are multiples"],
];

/** Two questions: where should clamps go, and do those that stand there hold? */
export function LayoutFields({ given, units, foundHeights, spacing }: LayoutFieldsProps) {
  const [kind, setKind] = useState<string>(given.kind);
  const rule = given.kind === "fewest" ? given.spacing : spacing;
  const heights = given.kind === "measured" ? given.heights_mm : foundHeights;
  return (
    <>
      <FieldSet legend="What to do">
        <Wide><ChoiceGroup name="layout.kind" label="Clamps" choices={MODES} defaultValue={given.kind} onChange={setKind} size="glove" /></Wide>
        {kind === "fewest" ? RULES.map(([name, label, hint]) => (
          <LengthField key={name} name={`layout.spacing.${name}`} label={label} hint={hint} units={units} defaultValueMm={known(rule[name])} isRequired />
        )) : null}
      </FieldSet>
      {kind === "measured" ? (
        <RowList
          legend="Clamps as they stand" note="centres above the foot" items={heights.length === 0 ? [Number.NaN, Number.NaN] : heights} fresh={() => Number.NaN}
          rowName={(index) => `clamp ${index + 1}`} addLabel="Add a clamp" least={2} most={60}
          row={(height, index) => (
            <div className="col-span-full"><LengthField name={`layout.heights_mm.${index}`} label={`Clamp ${index + 1}`} hint="" units={units} size="glove" defaultValueMm={known(height)} isRequired /></div>
          )}
        />
      ) : null}
    </>
  );
}
