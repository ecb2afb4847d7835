"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { reverseMovementAction } from "../actions.ts";

/** A movement is never edited: it is mirrored, and says why. */
export function TakeBack({ projectId, movementId, what }: { readonly projectId: string; readonly movementId: string; readonly what: string }) {
  const { submit, failure, isPending } = useAnswer((data) => reverseMovementAction({ projectId, movementId, reason: textOf(data, "reason") }));
  return (
    <div className="no-print">
      <Dialog title={`Take back: ${what}`} trigger={<Button>Take back</Button>}>
        <FieldForm action={submit} {...(failure ? { failure } : {})}>
          <p>The gear goes back to where it was, as if this had not happened. Both entries stay on record.</p>
          <TextField name="reason" label="Why" maxLength={300} isRequired />
          <div className="flex justify-end"><Button type="submit" kind="danger" isPending={isPending}>Take it back</Button></div>
        </FieldForm>
      </Dialog>
    </div>
  );
}
