"use client";

import { useState } from "react";
import type { Result } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { SelectField, type Choice } from "#app/_ui/field/select-field.tsx";
import { numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";

export type Countable = { readonly id: string; readonly name: string; /** What lies at the places, where it is known. */ readonly at?: Readonly<Record<string, number>> };
type Sent = { readonly from: string; readonly to: string; readonly lines: { itemId: string; quantity: number }[] };
type Props = {
  readonly items: readonly Countable[];
  readonly from?: readonly Choice[];
  /** Left out where what moves leaves the ledger, or goes where it always goes. */
  readonly to?: readonly Choice[];
  readonly toLabel?: string;
  readonly label: string;
  readonly send: (sent: Sent) => Promise<Result<unknown>>;
  readonly onDone: () => void;
};

/** How many pieces of which items, from where to where; what is left empty does not move. */
export function PiecesForm({ items, from, to, toLabel = "To", label, send, onDone }: Props) {
  const [source, setSource] = useState(from?.[0]?.value ?? "");
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const lines = items.flatMap(({ id }) => {
      const quantity = numberOrNull(data, `pieces-${id}`);
      return quantity === null || quantity === 0 ? [] : [{ itemId: id, quantity }];
    });
    const answer = await send({ from: source, to: textOf(data, "to"), lines });
    if (answer.ok) onDone();
    return answer;
  });
  const shown = from ? items.filter(({ at }) => (at?.[source] ?? 0) > 0) : items;
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})}>
      {from ? <SelectField name="from" label="From" choices={from} value={source} onChange={setSource} size="glove" isFilter /> : null}
      {to ? <SelectField name="to" label={toLabel} choices={to} defaultValue={to[0]?.value ?? ""} size="glove" isRequired /> : null}
      {shown.length === 0 ? <p className="text-ink-soft">Nothing lies here.</p> : null}
      <div className="grid gap-3 sm:grid-cols-2">
        {shown.map(({ id, name, at }) => (
          <NumberField key={`${source} ${id}`} name={`pieces-${id}`} label={name} {...(from ? { hint: `${at?.[source] ?? 0} here` } : {})} minValue={0} places={0} size="glove" isFilter />
        ))}
      </div>
      <div className="flex justify-end"><Button type="submit" kind="primary" size="glove" isPending={isPending} isDisabled={shown.length === 0}>{label}</Button></div>
    </FieldForm>
  );
}
