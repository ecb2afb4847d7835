"use client";

import { useRouter } from "next/navigation";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { Notice } from "#app/_ui/message/notice.tsx";
import { paths } from "#app/paths.ts";
import { removeColumnsAction } from "../../actions.ts";
import type { StoredColumn } from "./stored-column.ts";

export function RemoveColumn({ stored }: { readonly stored: Pick<StoredColumn, "projectId" | "columnId" | "name" | "isStood" | "stage"> }) {
  return (
    <Dialog title={`Remove ${stored.name}?`} trigger={<Button kind="danger">Remove</Button>}>
      {(close) => stored.isStood
        ? <Notice title={`It is ${stored.stage ?? "stood"} already.`}>A column that has been stood cannot be removed. Set it back to cut first, with the reason.</Notice>
        : <RemoveForm stored={stored} onClose={close} />}
    </Dialog>
  );
}

type RemoveFormProps = { readonly stored: Pick<StoredColumn, "projectId" | "columnId">; readonly onClose: () => void };

function RemoveForm({ stored: { projectId, columnId }, onClose }: RemoveFormProps) {
  const router = useRouter();
  const answered = useAnswer(async (data) => {
    const removed = await removeColumnsAction({ projectId, columnIds: [columnId], reason: textOf(data, "reason") });
    if (removed.ok) router.replace(paths.columns(projectId));
    return removed;
  });
  return (
    <FieldForm action={answered.submit} {...(answered.failure ? { failure: answered.failure } : {})}>
      <p>It leaves the schedule, the plan and every count. What was recorded on it is kept.</p>
      <TextField name="reason" label="Why it is removed" rows={2} maxLength={300} isRequired />
      <div className="flex flex-wrap justify-end gap-3">
        <Button onPress={onClose}>Leave it as it is</Button>
        <Button type="submit" kind="danger" isPending={answered.isPending}>Remove the column</Button>
      </div>
    </FieldForm>
  );
}
