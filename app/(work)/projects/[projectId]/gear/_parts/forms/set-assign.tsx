"use client";

import { useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { SelectField, type Choice } from "#app/_ui/field/select-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import type { Failure } from "#lib/kernel/result.ts";
import { assignSetAction, fittingColumnsAction, unassignSetAction } from "../actions.ts";

/** Offers the columns that the set closes and that have none yet, the lowest level first. */
export function SetAssign({ projectId, setId, name }: { readonly projectId: string; readonly setId: string; readonly name: string }) {
  const [columns, setColumns] = useState<readonly Choice[] | null>(null);
  const [refused, setRefused] = useState<Failure | null>(null);
  const open = async () => {
    const answer = await fittingColumnsAction({ projectId, setId });
    if (!answer.ok) return setRefused(answer.failure);
    setRefused(null);
    setColumns(answer.value.map(({ id, gridRef, level, size }) => ({ value: id, label: `${gridRef}, ${level}`, note: size })));
  };
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const answer = await assignSetAction({ projectId, setId, columnId: textOf(data, "column"), happenedAt: new Date().toISOString() });
    if (answer.ok) setColumns(null);
    return answer;
  });
  return (
    <div className="no-print mt-auto">
      <Button size="glove" wide onPress={() => void open()}>Assign to a column</Button>
      {refused ? <FailureNotice failure={refused} /> : null}
      <Dialog title={`Where ${name} goes next`} isOpen={columns !== null} onOpenChange={(isOpen) => { if (!isOpen) setColumns(null); }}>
        {columns?.length === 0
          ? <EmptyState title="No column left that it closes">Columns without a set, not stripped yet, whose four faces these panels close, would be offered here.</EmptyState>
          : (
            <FieldForm action={submit} {...(failure ? { failure } : {})}>
              <p className="text-ink-soft">Once it is assigned the column counts as cut; once stood, the panels are at the column.</p>
              <SelectField name="column" label="Column" choices={columns ?? []} size="glove" isRequired />
              <div className="flex justify-end"><Button type="submit" kind="primary" size="glove" isPending={isPending}>Assign</Button></div>
            </FieldForm>
          )}
      </Dialog>
    </div>
  );
}

export function SetOff({ projectId, assignmentId, column }: { readonly projectId: string; readonly assignmentId: string; readonly column: string }) {
  const { submit, failure, isPending } = useAnswer((data) => unassignSetAction({ projectId, assignmentId, reason: textOf(data, "reason") }));
  return (
    <div className="no-print">
      <Dialog title={`Take the set off ${column}`} trigger={<Button>Take off</Button>}>
        <FieldForm action={submit} {...(failure ? { failure } : {})}>
          <p>The cut that the set earned for {column} is withdrawn with it.</p>
          <TextField name="reason" label="Why" maxLength={200} isRequired />
          <div className="flex justify-end"><Button type="submit" kind="danger" isPending={isPending}>Take it off</Button></div>
        </FieldForm>
      </Dialog>
    </div>
  );
}
