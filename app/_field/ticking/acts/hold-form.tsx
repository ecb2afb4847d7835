"use client";

import { useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import type { ActFormProps } from "./act-dialog.tsx";

/** Stops work on a column until the hold is lifted. */
export function HoldForm({ onAct, mayLift }: ActFormProps & { readonly mayLift: boolean }) {
  const [reason, setReason] = useState("");
  return (
    <form
      className="flex flex-col gap-4"
      onSubmit={(event) => { event.preventDefault(); if (reason.trim() !== "") onAct({ kind: "held" }, reason.trim()); }}
    >
      <TextField name="reason" label="Why, and what has to happen first" size="glove" rows={2} maxLength={300} value={reason} onChange={setReason} isRequired />
      <Button type="submit" kind="danger" size="glove" wide isDisabled={reason.trim() === ""}>Put on hold</Button>
      {mayLift ? (
        <div className="border-t-2 border-ink pt-4">
          <Button size="glove" wide onPress={() => onAct({ kind: "hold-lifted" }, reason.trim() || null)}>Lift the hold</Button>
        </div>
      ) : null}
    </form>
  );
}
