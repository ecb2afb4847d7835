"use client";

import type { ColumnsSheet } from "#lib/contracts/columns-sheet.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { isFiltering, NO_FILTER, STAGE_FILTERS, type ColumnFilter } from "../sheet/column-filter.ts";
import { FindField } from "./find-field.tsx";

export type FilterBarProps = {
  readonly sheet: Pick<ColumnsSheet, "marks" | "gridLines">;
  readonly filter: ColumnFilter;
  readonly onFilter: (filter: ColumnFilter) => void;
};

/** The select knows no empty value, so "all" stands for it. */
const ALL = "all";
const asChoices = (every: string, items: readonly { readonly value: string; readonly label: string }[]) => [{ value: ALL, label: every }, ...items];

export function FilterBar({ sheet, filter, onFilter }: FilterBarProps) {
  const change = (part: Partial<ColumnFilter>) => onFilter({ ...filter, ...part });
  const given = (value: string): string => (value === ALL ? "" : value);
  const stages = STAGE_FILTERS.filter(({ value }) => value !== "");
  const fields = (
    <search aria-label="Filter the columns" className="grid grid-cols-2 items-end gap-3 sm:grid-cols-3 lg:grid-cols-[repeat(4,minmax(0,1fr))_auto_auto]">
      <SelectField
        name="stage" isFilter label="Stage" choices={asChoices("Every stage", stages)} value={filter.stage === "" ? ALL : filter.stage}
        onChange={(value) => change({ stage: STAGE_FILTERS.find((known) => known.value === given(value))?.value ?? "" })}
      />
      <SelectField
        name="mark" isFilter label="Mark" choices={asChoices("Every mark", sheet.marks.map(({ id, name }) => ({ value: id, label: name })))}
        value={filter.markId === "" ? ALL : filter.markId} onChange={(value) => change({ markId: given(value) })}
      />
      <SelectField
        name="line" isFilter label="Grid line" choices={asChoices("Every grid line", sheet.gridLines.map(({ id, name }) => ({ value: id, label: name })))}
        value={filter.gridLineId === "" ? ALL : filter.gridLineId} onChange={(value) => change({ gridLineId: given(value) })}
      />
      <FindField text={filter.text} onFind={(text) => change({ text })} />
      <CheckField name="flagged" label="Queried or held" isSelected={filter.flagged} onChange={(flagged) => change({ flagged })} />
      <Button isDisabled={!isFiltering(filter)} onPress={() => onFilter(NO_FILTER)}>Show all</Button>
    </search>
  );
  // Folded away on a phone, where the columns matter more than the ways to narrow them down.
  return (
    <>
      <details className="no-print sm:hidden" open={isFiltering(filter)}>
        <summary className="flex min-h-glove cursor-pointer items-center border-2 border-ink bg-sheet px-4 font-semibold">Filter{isFiltering(filter) ? ": on" : ""}</summary>
        <div className="mt-3">{fields}</div>
      </details>
      <div className="no-print hidden sm:block">{fields}</div>
    </>
  );
}
