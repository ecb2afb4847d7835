"use client";

import { NumberField } from "#app/_ui/field/number-field.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { NO_COUNT, type Counts } from "./docket-fields.ts";
import type { OfferedItem } from "./offered.ts";

export type ItemCountsProps = {
  readonly items: readonly OfferedItem[]; readonly counts: Counts; readonly word: string; readonly hasShort: boolean; readonly hasCondition: boolean;
  readonly onChange: (itemId: string, part: Partial<Counts[string]>) => void;
};

/** A block for each item: the count large, what was wrong with it beside. Items left empty are not on the docket. */
export function ItemCounts({ items, counts, word, hasShort, hasCondition, onChange }: ItemCountsProps) {
  if (items.length === 0) return <EmptyState title="Nothing to count">Nothing of this supplier is on hire, or its terms name no item yet.</EmptyState>;
  return (
    <fieldset className="flex min-w-0 flex-col gap-3">
      <legend className="mb-2 font-semibold">Pieces; leave empty what is not on this docket</legend>
      {items.map(({ id, name, expected }) => {
        const own = counts[id] ?? NO_COUNT;
        const field = (key: keyof Counts[string], label: string) => (
          <NumberField
            key={key} name={`${key}-${id}`} label={label} size="glove" isFilter minValue={0} places={0}
            {...(Number.isNaN(own[key]) ? {} : { value: own[key] })} onChange={(value) => onChange(id, { [key]: value })}
          />
        );
        return (
          <div key={id} role="group" aria-label={name} className="border-2 border-ink bg-sheet p-3">
            <p className="mb-2 flex flex-wrap justify-between gap-2 text-lg font-semibold">{name}{expected === null ? null : <span className="font-normal text-ink-soft">{expected.toLocaleString("en")} expected</span>}</p>
            <div className="grid grid-cols-2 gap-3 sm:grid-cols-4">
              {field("quantity", word)}
              {hasShort ? field("short", "Short") : null}
              {hasCondition ? [field("damaged", "Damaged"), field("dirty", "Dirty")] : null}
            </div>
          </div>
        );
      })}
    </fieldset>
  );
}
