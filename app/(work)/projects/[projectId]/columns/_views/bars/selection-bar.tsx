"use client";

import { Button } from "#app/_ui/control/button.tsx";

export type SelectionBarProps = {
  readonly count: number;
  readonly shownIds: readonly string[];
  /** The selection before this one. */
  readonly last: ReadonlySet<string>;
  readonly onSelect: (ids: ReadonlySet<string>) => void;
  readonly onClear: () => void;
};

/** Selecting in bulk; single columns are selected where they are drawn. */
export function SelectionBar({ count, shownIds, last, onSelect, onClear }: SelectionBarProps) {
  return (
    <div role="group" aria-label="Selection" className="no-print flex flex-wrap items-center gap-3">
      <p aria-live="polite" className="min-w-28 font-semibold">{count === 0 ? "None selected" : `${count} selected`}</p>
      <Button isDisabled={shownIds.length === 0} onPress={() => onSelect(new Set(shownIds))}>Select all shown</Button>
      <Button isDisabled={last.size === 0} onPress={() => onSelect(last)}>Same as last</Button>
      <Button isDisabled={count === 0} onPress={onClear}>Clear</Button>
    </div>
  );
}
