"use client";

import { useState } from "react";
import { QUERY_STATES, type QueryState } from "#lib/contracts/hire/invoices.ts";
import { addDays, toDay } from "#lib/kernel/days.ts";
import type { DifferenceReason } from "#lib/trade/hire/match/invoice.ts";
import { DIFFERENCE_REASONS } from "#lib/trade/hire/match/invoice.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { choiceOf, textOf } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { saveQueryAction } from "../../_parts/actions.ts";
import { QUERY_WORDS, REASON_WORDS } from "../../_parts/invoice-words.ts";

export type QueryFormProps = {
  readonly projectId: string; readonly invoiceId: string; readonly groupKey: string; readonly reason: DifferenceReason; readonly me: string; readonly today: string;
  readonly owners: readonly { readonly id: string; readonly name: string }[];
  readonly query: { readonly ownerId: string; readonly dueOn: string; readonly status: QueryState; readonly note: string | null } | null;
};
const DAYS_TO_ANSWER = 7;

/** Puts a difference in somebody's hands, or notes what came of it. */
export function QueryForm({ projectId, invoiceId, groupKey, reason, owners, me, query, today }: QueryFormProps) {
  const [isOpen, setOpen] = useState(false);
  const answered = useAnswer(async (data) => {
    const saved = await saveQueryAction({
      projectId, invoiceId, groupKey, reason: choiceOf(data, "reason", DIFFERENCE_REASONS), ownerId: textOf(data, "ownerId"), dueOn: textOf(data, "dueOn"),
      status: choiceOf(data, "status", QUERY_STATES), note: textOf(data, "note"),
    });
    if (saved.ok) setOpen(false);
    return saved;
  });
  return (
    <div className="no-print">
      <Button onPress={() => setOpen(true)}>{query === null ? "Open a query" : "Note what came of it"}</Button>
      <Dialog title="Query to the supplier" isOpen={isOpen} onOpenChange={setOpen}>
        <SaveForm answered={answered} label="Save the query" done="Saved.">
          <SelectField name="reason" label="Reason" choices={DIFFERENCE_REASONS.map((value) => ({ value, label: REASON_WORDS[value] }))} defaultValue={reason} />
          <SelectField name="ownerId" label="Followed up by" choices={owners.map(({ id, name }) => ({ value: id, label: name }))} defaultValue={query?.ownerId ?? me} />
          <TextField name="dueOn" label="Answer due on" type="date" isRequired defaultValue={query?.dueOn ?? addDays(toDay(today), DAYS_TO_ANSWER)} />
          <SelectField name="status" label="State" choices={QUERY_STATES.map((value) => ({ value, label: QUERY_WORDS[value] }))} defaultValue={query?.status ?? "open"} />
          <TextField name="note" label="Note" rows={3} maxLength={500} defaultValue={query?.note ?? ""} />
        </SaveForm>
      </Dialog>
    </div>
  );
}
