"use client";

import { useState } from "react";
import type { Result } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";

export type ReverseFormProps = {
  readonly projectId: string; readonly subjectId: string;
  /** What would be reversed: "delivery D-1042". */
  readonly what: string;
  readonly send: (data: FormData) => Promise<Result<unknown>>;
};

/** A mistake is taken back with a reason and stays in sight; nothing is edited. */
export function ReverseForm({ projectId, subjectId, what, send }: ReverseFormProps) {
  const [isOpen, setOpen] = useState(false);
  const answered = useAnswer(async (data) => {
    const answer = await send(data);
    if (answer.ok) setOpen(false);
    return answer;
  });
  return (
    <>
      <Button kind="danger" onPress={() => setOpen(true)}>Reverse {what}</Button>
      <Dialog title={`Reverse ${what}`} isOpen={isOpen} onOpenChange={setOpen}>
        <SaveForm answered={answered} label="Reverse it" done="Reversed.">
          <p>It stays on record as reversed, with your name and reason, and what it moved goes back. Enter it anew if it did happen otherwise.</p>
          <input type="hidden" name="projectId" value={projectId} />
          <input type="hidden" name="subjectId" value={subjectId} />
          <TextField name="reason" label="Reason" isRequired maxLength={300} autoFocus />
        </SaveForm>
      </Dialog>
    </>
  );
}
