"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import type { Material } from "#lib/contracts/planning/orders.ts";
import { uuidv7From } from "#lib/kernel/ids.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { QuantityField } from "#app/_ui/field/quantity-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { SuggestField } from "#app/_ui/field/suggest-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { numberOf, numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { paths } from "#app/paths.ts";
import { fromMinor, moneyPlaces, toMinor } from "../../_parts/money.ts";
import { placeOrderAction } from "../_parts/actions.ts";

type Row = { readonly key: string; readonly name: string; readonly material: Material; readonly price: number | null; readonly quantity: number | null };
type Props = { readonly projectId: string; readonly currency: string; readonly units: Units; readonly today: string; readonly wanted: string; readonly merchants: readonly string[]; readonly rows: readonly Row[] };

const USES = [{ value: "sheet", label: "Sheet" }, { value: "backing", label: "Backing timber" }, { value: "fillet", label: "Fillet" }] as const;

/** A size nobody has bought yet; nothing where its count is left empty. */
function otherSize(data: FormData): (Material & { quantity: number })[] {
  const quantity = numberOrNull(data, "other-quantity");
  if (quantity === null || quantity === 0) return [];
  const use = USES.find(({ value }) => value === textOf(data, "other-use"))?.value ?? "sheet";
  return [{ use, material: textOf(data, "other-material"), lengthMm: Math.round(numberOf(data, "other-length")), widthMm: use === "sheet" ? Math.round(numberOf(data, "other-width")) : null, quantity }];
}

export function OrderForm({ projectId, currency, units, today, wanted, merchants, rows }: Props) {
  const router = useRouter();
  const [orderId] = useState(() => uuidv7From(Date.now(), crypto.getRandomValues(new Uint8Array(10))));
  const priceOf = (data: FormData, name: string): number | null => { const price = numberOrNull(data, name); return price === null ? null : toMinor(price, currency); };
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const lines = rows.flatMap(({ material }, index) => {
      const quantity = numberOrNull(data, `n-${index}`);
      return quantity === null || quantity === 0 ? [] : [{ ...material, quantity, priceEach: priceOf(data, `price-${index}`) }];
    });
    const answer = await placeOrderAction({
      projectId, orderId, supplier: textOf(data, "supplier"), number: textOf(data, "number"), orderedOn: textOf(data, "orderedOn"), wantedOn: textOf(data, "wantedOn"), note: textOf(data, "note"),
      lines: [...lines, ...otherSize(data).map((line) => ({ ...line, priceEach: priceOf(data, "other-price") }))],
    });
    if (answer.ok) router.push(paths.gearOrder(projectId, answer.value.orderId));
    return answer;
  });
  const places = moneyPlaces(currency);
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})} className="flex flex-col gap-6">
      <div className="grid items-start gap-4 sm:grid-cols-2 lg:grid-cols-4">
        <SuggestField name="supplier" label="Merchant" suggestions={merchants} isRequired />
        <TextField name="number" label="Order number" hint="Your own, or the merchant's confirmation" maxLength={40} isRequired />
        <TextField name="orderedOn" label="Ordered on" type="date" defaultValue={today} isRequired />
        <TextField name="wantedOn" label="Wanted on" type="date" defaultValue={wanted} isRequired />
      </div>
      <fieldset className="min-w-0">
        <legend className="mb-2 font-semibold">Pieces; leave empty what is not on this order</legend>
        <ul className="border-2 border-ink bg-sheet">
          {rows.map(({ key, name, price, quantity }, index) => (
            <li key={key} className="border-b border-rule-soft last:border-b-0">
              <div role="group" aria-label={name} className="grid items-end gap-x-4 gap-y-2 p-3 sm:grid-cols-[1fr_9rem_12rem]">
                <p className="self-center font-semibold">{name}</p>
                <NumberField name={`n-${index}`} label="Pieces" isFilter minValue={0} places={0} {...(quantity === null ? {} : { defaultValue: quantity })} />
                <NumberField name={`price-${index}`} label="Each" unit={currency} isFilter minValue={0} places={places} {...(price === null ? {} : { defaultValue: fromMinor(price, currency) })} />
              </div>
            </li>
          ))}
        </ul>
      </fieldset>
      <details className="border-2 border-ink bg-sheet">
        <summary className="flex min-h-glove cursor-pointer items-center px-4 font-semibold hover:bg-accent-wash">Another size</summary>
        <div className="grid items-start gap-4 border-t border-rule-soft p-4 sm:grid-cols-2 lg:grid-cols-3">
          <SelectField name="other-use" label="What" choices={USES} defaultValue="sheet" isFilter />
          <TextField name="other-material" label="Called" hint="Film-faced ply 18 mm; Timber 95 × 47 mm" maxLength={80} />
          <QuantityField name="other-length" label="Length" unit="mm" units={units} isFilter />
          <QuantityField name="other-width" label="Width of a sheet" unit="mm" units={units} isFilter />
          <NumberField name="other-quantity" label="Pieces" isFilter minValue={0} places={0} />
          <NumberField name="other-price" label="Each" unit={currency} isFilter minValue={0} places={places} />
        </div>
      </details>
      <TextField name="note" label="Note to the merchant" maxLength={300} />
      <div><Button type="submit" kind="primary" size="glove" isPending={isPending}>Write the order down</Button></div>
    </FieldForm>
  );
}
