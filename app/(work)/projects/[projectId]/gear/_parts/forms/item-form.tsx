"use client";

import type { Family } from "#lib/trade/gear/ledger.ts";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { numberOf, numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { fromMinor, moneyPlaces, toMinor } from "../money.ts";
import { saveItemAction } from "../actions.ts";

type Kept = {
  readonly id: string; readonly family: Family; readonly name: string; readonly clampKindId: string | null; readonly barsEach: number | null; readonly wedgesEach: number | null; readonly lossPrice: number | null;
};

export function ItemForm({ projectId, item, currency }: { readonly projectId: string; readonly item: Kept; readonly currency: string }) {
  const isSet = item.family === "clamp set";
  const answered = useAnswer((data) => {
    const price = numberOrNull(data, "lossPrice");
    return saveItemAction({
      projectId, itemId: item.id, family: item.family === "panel" ? "other" : item.family, name: isSet && item.clampKindId ? item.name : textOf(data, "name"), clampKindId: item.clampKindId,
      ...(isSet ? { barsEach: numberOf(data, "barsEach"), wedgesEach: numberOf(data, "wedgesEach") } : {}), lossPrice: price === null ? null : toMinor(price, currency),
    });
  });
  return (
    <SaveForm answered={answered} label="Save" done="Saved." className="grid gap-4 sm:grid-cols-2 lg:grid-cols-4">
      {isSet && item.clampKindId ? null : <TextField name="name" label="Name" defaultValue={item.name} maxLength={80} isRequired />}
      {isSet ? <NumberField name="barsEach" label="Bars in one" defaultValue={item.barsEach ?? 4} minValue={1} maxValue={8} places={0} isRequired /> : null}
      {isSet ? <NumberField name="wedgesEach" label="Wedges that lock one" hint="Counted apart; ticks take them along" defaultValue={item.wedgesEach ?? 4} minValue={0} maxValue={16} places={0} isRequired /> : null}
      <NumberField name="lossPrice" label="Price when lost" unit={currency} minValue={0} places={moneyPlaces(currency)} {...(item.lossPrice === null ? {} : { defaultValue: fromMinor(item.lossPrice, currency) })} />
    </SaveForm>
  );
}
