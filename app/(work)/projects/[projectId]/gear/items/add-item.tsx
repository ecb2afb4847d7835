"use client";

import { useState } from "react";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { choiceOf, numberOf, numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { saveItemAction } from "../_parts/actions.ts";
import { FAMILY_WORDS } from "../_parts/item-words.ts";
import { moneyPlaces, toMinor } from "../_parts/money.ts";

const FAMILIES = ["prop", "wedge", "clamp bar", "clamp set", "other"] as const;
type Props = { readonly projectId: string; readonly currency: string; readonly kinds: readonly { readonly id: string; readonly name: string }[] };

/** A clamp set is counted by its kind, so that ticks know which clamps a column takes. */
export function AddItem({ projectId, currency, kinds }: Props) {
  const [family, setFamily] = useState<string>(FAMILIES[0]);
  const isSet = family === "clamp set";
  const answered = useAnswer((data) => {
    const price = numberOrNull(data, "lossPrice");
    const kindId = textOf(data, "kind");
    return saveItemAction({
      projectId, family: choiceOf(data, "family", FAMILIES), name: isSet ? (kinds.find(({ id }) => id === kindId)?.name ?? textOf(data, "name")) : textOf(data, "name"), clampKindId: isSet && kindId !== "" ? kindId : null,
      ...(isSet ? { barsEach: numberOf(data, "barsEach"), wedgesEach: numberOf(data, "wedgesEach") } : {}), lossPrice: price === null ? null : toMinor(price, currency),
    });
  });
  return (
    <div className="border-2 border-ink bg-sheet p-4">
      <h3 className="mb-3 font-semibold">Add an item</h3>
      <SaveForm answered={answered} label="Add the item" done="Added; take in what there is of it under Where it is." className="grid items-start gap-4 sm:grid-cols-2 lg:grid-cols-4">
        <SelectField name="family" label="What it is" choices={FAMILIES.map((value) => ({ value, label: FAMILY_WORDS[value] }))} value={family} onChange={setFamily} isRequired />
        {isSet && kinds.length > 0
          ? <SelectField name="kind" label="Clamp kind" choices={kinds.map(({ id, name }) => ({ value: id, label: name }))} defaultValue={kinds[0]?.id ?? ""} isRequired />
          : <TextField name="name" label="Name" hint={isSet ? "Every clamp kind of the set-up has its item; this one is counted apart" : "As the crew calls it, with its size"} maxLength={80} isRequired />}
        {isSet ? <NumberField name="barsEach" label="Bars in one" defaultValue={4} minValue={1} maxValue={8} places={0} isRequired /> : null}
        {isSet ? <NumberField name="wedgesEach" label="Wedges that lock one" defaultValue={4} minValue={0} maxValue={16} places={0} isRequired /> : null}
        <NumberField name="lossPrice" label="Price when lost" unit={currency} minValue={0} places={moneyPlaces(currency)} />
      </SaveForm>
    </div>
  );
}
