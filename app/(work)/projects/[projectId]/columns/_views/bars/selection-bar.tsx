"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";

export type SelectionBarProps = {
  readonly count: number;
  /** How many of them the filter or the level leaves out of sight. */
  readonly hidden: number;
  readonly canSelect: boolean;
  readonly hasLast: boolean;
  /** The only column selected: its name and its page. */
  readonly only: { readonly name: string; readonly href: string } | null;
  readonly onAll: () => void;
  readonly onLast: () => void;
  readonly onClear: () => void;
};

/** Selecting in bulk; single columns are selected where they are drawn. */
export function SelectionBar({ count, hidden, canSelect, hasLast, only, onAll, onLast, onClear }: SelectionBarProps) {
  return (
    <div role="group" aria-label="Selection" className="no-print flex flex-wrap items-center gap-3">
      <p aria-live="polite" className="min-w-28 font-semibold">
        {count === 0 ? "None selected" : `${count} selected`}
        {hidden > 0 ? <span className="text-flag-deep">, {hidden} of them out of sight</span> : null}
      </p>
      <Button isDisabled={!canSelect} onPress={onAll}>Select all shown</Button>
      <span className={hasLast ? "contents" : "hidden sm:contents"}><Button isDisabled={!hasLast} onPress={onLast}>Same as last</Button></span>
      <span className={count > 0 ? "contents" : "hidden sm:contents"}><Button isDisabled={count === 0} onPress={onClear}>Clear</Button></span>
      {only ? <ButtonLink href={only.href}>Open {only.name}</ButtonLink> : null}
    </div>
  );
}
