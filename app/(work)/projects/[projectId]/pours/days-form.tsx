"use client";

import { useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { moved, withoutDays, withWish, type PlannedColumn, type PlannedDays } from "./planned-column.ts";

export type DaysFormProps = {
  readonly selected: readonly PlannedColumn[]; readonly workingDays: readonly number[]; readonly isPending: boolean;
  readonly onSend: (days: readonly PlannedDays[], message: string) => void;
};
const NOTHING = { stoodOn: "", pouredOn: "", pour: "" };

/** Sets the days of the chosen columns; what is left empty keeps what each column has. */
export function DaysForm({ selected, workingDays, isPending, onSend }: DaysFormProps) {
  const [wish, setWish] = useState(NOTHING);
  const set = (part: Partial<typeof NOTHING>) => setWish((now) => ({ ...now, ...part }));
  const count = `${selected.length} ${selected.length === 1 ? "column" : "columns"}`;
  const off = selected.length === 0 || isPending;
  const isBlank = wish.stoodOn === "" && wish.pouredOn === "" && wish.pour.trim() === "";
  return (
    <div className="no-print z-10 border-2 sm:sticky sm:top-0 border-ink bg-wash p-3" role="group" aria-label="Days of the chosen columns">
      <div className="grid items-end gap-3 sm:grid-cols-[1fr_1fr_1fr_auto]">
        <TextField name="stoodOn" label="Stand on" type="date" isFilter value={wish.stoodOn} onChange={(stoodOn) => set({ stoodOn })} />
        <TextField name="pouredOn" label="Pour on" type="date" isFilter value={wish.pouredOn} onChange={(pouredOn) => set({ pouredOn })} />
        <TextField name="pour" label="Name of the pour" isFilter maxLength={40} value={wish.pour} onChange={(pour) => set({ pour })} placeholder="as Pour 7" />
        <Button kind="primary" size="glove" isDisabled={off || isBlank} isPending={isPending} onPress={() => onSend(selected.map((column) => withWish(column, wish)), `Days set for ${count}`)}>
          Set for {count}
        </Button>
      </div>
      <div className="mt-3 flex flex-wrap items-center gap-2">
        <Button isDisabled={off} onPress={() => onSend(selected.map((column) => moved(column, -1, workingDays)), `${count}: a working day earlier`)}>One working day earlier</Button>
        <Button isDisabled={off} onPress={() => onSend(selected.map((column) => moved(column, 1, workingDays)), `${count}: a working day later`)}>One working day later</Button>
        <Button isDisabled={off} onPress={() => onSend(selected.map(withoutDays), `Days cleared for ${count}`)}>Clear the days</Button>
        <p className="text-sm text-ink-soft">{selected.length === 0 ? "Choose columns in the table, or a group of them above." : "What is left empty stays as it is."}</p>
      </div>
    </div>
  );
}
