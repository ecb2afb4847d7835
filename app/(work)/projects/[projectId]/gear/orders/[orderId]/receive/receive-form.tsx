"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import { uuidv7From } from "#lib/kernel/ids.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { SelectField, type Choice } from "#app/_ui/field/select-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { paths } from "#app/paths.ts";
import { receiveOrderAction } from "../../_parts/actions.ts";

type Line = { readonly itemId: string; readonly name: string; readonly open: number; readonly quantity: number };
type Props = { readonly projectId: string; readonly orderId: string; readonly today: string; readonly places: readonly Choice[]; readonly lines: readonly Line[] };

/** The same receipt sent twice, as with a weak connection, is kept once: its id is made here. */
export function ReceiveForm({ projectId, orderId, today, places, lines }: Props) {
  const router = useRouter();
  const [receiptId] = useState(() => uuidv7From(Date.now(), crypto.getRandomValues(new Uint8Array(10))));
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const counted = lines.map(({ itemId }) => ({ itemId, taken: numberOrNull(data, `taken-${itemId}`) ?? 0, short: numberOrNull(data, `short-${itemId}`) ?? 0, refused: numberOrNull(data, `refused-${itemId}`) ?? 0 }));
    const answer = await receiveOrderAction({
      projectId, orderId, receiptId, number: textOf(data, "number"), receivedOn: textOf(data, "receivedOn"), placeId: textOf(data, "place"), reason: textOf(data, "reason"),
      lines: counted.filter(({ taken, short, refused }) => taken + short + refused !== 0),
    });
    if (answer.ok) router.push(paths.gearOrder(projectId, orderId));
    return answer;
  });
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})} className="flex flex-col gap-5">
      <div className="grid items-start gap-4 sm:grid-cols-3">
        <TextField name="number" label="Docket number" hint="As on the merchant’s docket" maxLength={40} size="glove" isRequired />
        <TextField name="receivedOn" label="Came on" type="date" defaultValue={today} size="glove" isRequired />
        <SelectField name="place" label="Put down at" choices={places} defaultValue={places[0]?.value ?? ""} size="glove" isRequired />
      </div>
      <fieldset className="flex min-w-0 flex-col gap-3">
        <legend className="mb-1 font-semibold">Pieces; leave empty what did not come</legend>
        <p className="text-sm text-ink-soft">Short: on the docket and not on the truck. Sent back: damaged and not taken.</p>
        {lines.map(({ itemId, name, open, quantity }) => (
          <div key={itemId} role="group" aria-label={name} className="border-2 border-ink bg-sheet p-3">
            <p className="mb-2 flex flex-wrap justify-between gap-2 text-lg font-semibold">{name}<span className="font-normal text-ink-soft">{open} of {quantity} to come</span></p>
            <div className="grid grid-cols-3 gap-3">
              <NumberField name={`taken-${itemId}`} label="Taken" isFilter minValue={0} places={0} size="glove" />
              <NumberField name={`short-${itemId}`} label="Short" isFilter minValue={0} places={0} size="glove" />
              <NumberField name={`refused-${itemId}`} label="Sent back" isFilter minValue={0} places={0} size="glove" />
            </div>
          </div>
        ))}
      </fieldset>
      <TextField name="reason" label="Why more came, or what was wrong" maxLength={300} size="glove" />
      <div><Button type="submit" kind="primary" size="glove" wide isPending={isPending}>Take it in</Button></div>
    </FieldForm>
  );
}
