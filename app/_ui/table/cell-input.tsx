"use client";

import { useId } from "react";

export type CellInputProps = {
  /** Read out in place of a label: "Elevation of row 3". */
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** Dotted path under which the server names this cell. */
  readonly field: string;
  readonly place: CellPlace;
  readonly problem?: string | undefined;
  readonly isFigure?: boolean;
};

export type CellPlace = { readonly row: number; readonly column: string };

const BOX = "min-h-hand w-full border-2 bg-sheet px-2 hover:border-ink focus:border-accent disabled:border-transparent disabled:bg-transparent";

/** What arrow keys and Enter look for when they leave a cell. */
export const cellPlace = ({ row, column }: CellPlace) => ({ "data-row": row, "data-column": column });

export function CellInput({ label, value, onChange, field, place, problem, isFigure = false }: CellInputProps) {
  const noteId = useId();
  return (
    <div data-field={field}>
      <input
        aria-label={label}
        aria-invalid={problem ? true : undefined}
        aria-describedby={problem ? noteId : undefined}
        autoComplete="off"
        value={value}
        onChange={(event) => onChange(event.target.value)}
        {...cellPlace(place)}
        className={`${BOX} ${isFigure ? "text-right" : ""} ${problem ? "border-flag" : "border-edge"}`}
      />
      {problem ? <p id={noteId} className="mt-1 text-left text-sm font-semibold text-flag-deep">{problem}</p> : null}
    </div>
  );
}
