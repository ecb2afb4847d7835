"use client";

import { useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { readGridEntry, type GridRun } from "./grid-entry.ts";

export type GridQuickEntryProps = {
  readonly label: string; readonly example: string; readonly units: Units; readonly onRun: (run: GridRun) => void;
};

/** One line of text for a whole row of grid lines. */
export function GridQuickEntry({ label, example, units, onRun }: GridQuickEntryProps) {
  const [text, setText] = useState("");
  const [isWrong, setWrong] = useState(false);
  const shown = units === "us" ? example.replace(/at .*/, "at 24'-0\"") : example;
  const take = () => {
    const run = readGridEntry(text, units);
    setWrong(run === undefined);
    if (!run) return;
    onRun(run);
    setText("");
  };
  return (
    <div
      className="flex items-start gap-2"
      onKeyDown={(event) => {
        if (event.key !== "Enter" || !(event.target instanceof HTMLInputElement)) return;
        event.preventDefault();
        take();
      }}
    >
      <div className="grow">
        <TextField
          name="run" label={label} value={text} onChange={(next) => { setText(next); setWrong(false); }}
          hint={`As ${shown}; or one spacing for each gap, with commas between`}
          {...(isWrong ? { problem: `Write names, "at" and a spacing, as ${shown}.` } : {})}
        />
      </div>
      <div className="pt-7"><Button onPress={take} isDisabled={text.trim() === ""}>Add</Button></div>
    </div>
  );
}
