"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { choiceOf, textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { settleCountAction } from "./actions.ts";

const WAYS = [
  { value: "found", label: "Found after all", note: "the ledger stays as it is" },
  { value: "accepted", label: "Accept the count", note: "what is missing goes to lost, what is over comes in" },
] as const;

export function SettleLine({ projectId, countId, itemId, what }: { readonly projectId: string; readonly countId: string; readonly itemId: string; readonly what: string }) {
  const { submit, failure, isPending } = useAnswer((data) => settleCountAction({ projectId, countId, itemId, as: choiceOf(data, "as", ["found", "accepted"]), reason: textOf(data, "reason") }));
  return (
    <Dialog title={`Settle ${what}`} trigger={<Button>Settle</Button>}>
      <FieldForm action={submit} {...(failure ? { failure } : {})}>
        <ChoiceGroup name="as" label="How" choices={WAYS} defaultValue="found" />
        <TextField name="reason" label="Where, or why" maxLength={200} isRequired />
        <div className="flex justify-end"><Button type="submit" kind="primary" isPending={isPending}>Settle it</Button></div>
      </FieldForm>
    </Dialog>
  );
}
