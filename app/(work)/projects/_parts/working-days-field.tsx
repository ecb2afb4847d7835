"use client";

import { CheckboxGroup } from "react-aria-components";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { FieldLabel, FieldNotes } from "#app/_ui/field/field-notes.tsx";

const DAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;

export function WorkingDaysField({ days }: { readonly days: readonly number[] }) {
  return (
    <CheckboxGroup name="workingDays" defaultValue={days.map(String)} data-field="workingDays" className="flex flex-col gap-1">
      <FieldLabel label="Working days" isRequired />
      <div className="flex flex-wrap gap-x-6">
        {DAYS.map((day, index) => <CheckField key={day} name="workingDays" value={String(index + 1)} label={day} />)}
      </div>
      <FieldNotes hint={undefined} problem={undefined} />
    </CheckboxGroup>
  );
}
