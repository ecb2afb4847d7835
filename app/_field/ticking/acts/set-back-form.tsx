"use client";

import { useState } from "react";
import { CAUSES, hasDone, STAGES, type Cause, type Stage } from "#lib/trade/progress/stages.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import type { ActFormProps } from "./act-dialog.tsx";

const CAUSE_NOTES: Readonly<Record<Cause, string>> = { ours: "rework", others: "another trade or an instruction", weather: "wind or rain" };
const NOTHING = "nothing";

const asStage = (text: string): Stage | null => STAGES.find((stage) => stage === text) ?? null;

/** Work that came undone: opened up, bumped, clamps off for access. */
export function SetBackForm({ onAct, done }: ActFormProps & { /** Stages any of the columns has. */ readonly done: number }) {
  const [to, setTo] = useState("");
  const [cause, setCause] = useState("");
  const [reason, setReason] = useState("");
  const chosen = CAUSES.find((each) => each === cause);
  const stages = STAGES.slice(0, -1).filter((stage) => hasDone(done, stage));
  return (
    <form
      className="flex flex-col gap-4"
      onSubmit={(event) => {
        event.preventDefault();
        if (chosen !== undefined && to !== "") onAct({ kind: "set-back", to: asStage(to), cause: chosen }, reason.trim() || null);
      }}
    >
      <ChoiceGroup
        name="to" label="It is back at" size="glove" value={to} onChange={setTo}
        choices={[{ value: NOTHING, label: "nothing" }, ...stages.map((stage) => ({ value: stage, label: stage }))]}
      />
      <ChoiceGroup name="cause" label="Caused by" size="glove" value={cause} onChange={setCause} choices={CAUSES.map((each) => ({ value: each, label: each, note: CAUSE_NOTES[each] }))} />
      <TextField name="reason" label="What happened" size="glove" rows={2} maxLength={300} value={reason} onChange={setReason} />
      <Button type="submit" kind="danger" size="glove" wide isDisabled={chosen === undefined || to === ""}>Set back</Button>
    </form>
  );
}
