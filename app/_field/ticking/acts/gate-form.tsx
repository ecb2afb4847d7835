"use client";

import { useState } from "react";
import { GATES, type Gate } from "#lib/trade/progress/stages.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import type { ActFormProps } from "./act-dialog.tsx";

/** Somebody's say-so: given, or taken back with a reason. */
export function GateForm({ onAct }: ActFormProps) {
  const [taking, setTaking] = useState<Gate | null>(null);
  const [reason, setReason] = useState("");
  if (taking !== null) {
    return (
      <form
        className="flex flex-col gap-4"
        onSubmit={(event) => { event.preventDefault(); if (reason.trim() !== "") onAct({ kind: "gate-revoked", gate: taking }, reason.trim()); }}
      >
        <TextField name="reason" label={`Why “${taking}” is taken back`} size="glove" rows={2} maxLength={300} value={reason} onChange={setReason} isRequired autoFocus />
        <Button type="submit" kind="danger" size="glove" wide isDisabled={reason.trim() === ""}>Take it back</Button>
        <Button size="glove" wide onPress={() => setTaking(null)}>Back to the gates</Button>
      </form>
    );
  }
  return (
    <ul className="flex flex-col gap-2">
      {GATES.map((gate) => (
        <li key={gate} className="grid grid-cols-[1fr_auto] gap-2">
          <Button size="glove" wide onPress={() => onAct({ kind: "gate-released", gate }, null)}>{gate}</Button>
          <Button size="glove" onPress={() => setTaking(gate)}>Take back<span className="sr-only">: {gate}</span></Button>
        </li>
      ))}
    </ul>
  );
}
