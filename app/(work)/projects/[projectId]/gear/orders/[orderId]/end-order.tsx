"use client";

import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { endOrderAction } from "../_parts/actions.ts";

const WORDS = {
  cancelled: { button: "Cancel the order", note: "Nothing of it has come. It stays on record as cancelled, and no longer counts as to come.", send: "Cancel it" },
  closed: { button: "The rest will not come", note: "What has come stays received; what is still open no longer counts as to come.", send: "Close it" },
} as const;

export function EndOrder({ projectId, orderId, number, kind }: { readonly projectId: string; readonly orderId: string; readonly number: string; readonly kind: keyof typeof WORDS }) {
  const { submit, failure, isPending } = useAnswer((data) => endOrderAction({ projectId, orderId, kind, reason: textOf(data, "reason") }));
  const words = WORDS[kind];
  return (
    <div className="no-print">
      <Dialog title={`${words.button}: ${number}`} trigger={<Button kind="danger">{words.button}</Button>}>
        <FieldForm action={submit} {...(failure ? { failure } : {})}>
          <p>{words.note}</p>
          <TextField name="reason" label="Why" maxLength={300} isRequired />
          <div className="flex justify-end"><Button type="submit" kind="danger" isPending={isPending}>{words.send}</Button></div>
        </FieldForm>
      </Dialog>
    </div>
  );
}
