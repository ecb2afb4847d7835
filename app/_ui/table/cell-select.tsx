"use client";

import { cellPlace, type CellPlace } from "./cell-input.tsx";

export type CellSelectProps<Value extends string> = {
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly { readonly value: Value; readonly label: string }[];
  readonly onChange: (value: Value) => void;
  readonly place: CellPlace;
};

export function CellSelect<Value extends string>({ label, value, choices, onChange, place }: CellSelectProps<Value>) {
  return (
    <select
      aria-label={label}
      value={value}
      onChange={(event) => {
        const chosen = choices.find((choice) => choice.value === event.target.value);
        if (chosen) onChange(chosen.value);
      }}
      {...cellPlace(place)}
      className="min-h-hand w-full border-2 border-edge bg-sheet px-2 hover:border-ink focus:border-accent disabled:border-transparent disabled:bg-transparent"
    >
      {choices.map((choice) => <option key={choice.value} value={choice.value}>{choice.label}</option>)}
    </select>
  );
}
