"use client";

import { useState } from "react";
import { objectionToCut, type PanelSize } from "#lib/trade/gear/panel-life.ts";
import { panelRests, type RestDoubt, type RestRule } from "#lib/trade/gear/panel-rests.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { numberOf, numberOrNull } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { cutDownPanelAction } from "../actions.ts";
import { moneyPlaces, toMinor } from "../money.ts";
import { keptOf, RestChecks } from "./rest-checks.tsx";

type Panel = PanelSize & { readonly itemId: string; readonly name: string; readonly restDoubt: RestDoubt | null };
type Props = { readonly projectId: string; readonly panel: Panel; readonly saw: RestRule; readonly units: Units; readonly currency: string; readonly onDone: () => void };
type Entered = { readonly [key in "firstWidth" | "firstHeight" | "secondWidth" | "secondHeight"]?: number | undefined };

/** The pieces as far as they are typed. */
function piecesOf({ firstWidth, firstHeight, secondWidth, secondHeight }: Entered): [PanelSize, ...PanelSize[]] | null {
  const piece = (widthMm: number | undefined, heightMm: number | undefined): PanelSize | null => (widthMm !== undefined && heightMm !== undefined && widthMm > 0 && heightMm > 0 ? { widthMm, heightMm } : null);
  const [first, second] = [piece(firstWidth, firstHeight), piece(secondWidth, secondHeight)];
  if (!first || (!second && (secondWidth !== undefined || secondHeight !== undefined))) return null;
  return second ? [first, second] : [first];
}

/** Which pieces a panel is cut into, and what is left of it. */
export function CutDownForm({ projectId, panel, saw, units, currency, onDone }: Props) {
  const [entered, setEntered] = useState<Entered>({ firstHeight: panel.heightMm });
  const pieces = piecesOf(entered);
  const rests = pieces && objectionToCut(panel, pieces, saw.kerfMm) === null ? panelRests(panel, pieces, saw) : [];
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const piece = (which: "first" | "second") => ({ widthMm: numberOf(data, `${which}Width`), heightMm: numberOf(data, `${which}Height`) });
    const isOne = numberOrNull(data, "secondWidth") === null && numberOrNull(data, "secondHeight") === null;
    const answer = await cutDownPanelAction({
      projectId, itemId: panel.itemId, happenedAt: new Date().toISOString(), pieces: isOne ? [piece("first")] : [piece("first"), piece("second")], rests: keptOf(data, rests),
      brought: toMinor(numberOrNull(data, "brought") ?? 0, currency),
    });
    if (answer.ok) onDone();
    return answer;
  });
  const length = (name: keyof Entered) => ({ name, units, onChangeMm: (valueMm: number | undefined) => { setEntered((before) => ({ ...before, [name]: valueMm })); } });
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})}>
      <p>{panel.name} ends, and one or two smaller panels begin where it lies. This does not go the other way.</p>
      <div className="grid items-start gap-4 sm:grid-cols-2">
        <LengthField {...length("firstWidth")} label="Width" isRequired />
        <LengthField {...length("firstHeight")} label="Height" defaultValueMm={panel.heightMm} isRequired />
        <LengthField {...length("secondWidth")} label="Width of a second piece" />
        <LengthField {...length("secondHeight")} label="Height of a second piece" />
        <NumberField name="brought" label="Worth carried over" hint="Taken off this panel's cost and shared by the pieces" unit={currency} minValue={0} places={moneyPlaces(currency)} />
      </div>
      <RestChecks rests={rests} doubt={panel.restDoubt} units={units} />
      <div className="flex justify-end"><Button type="submit" kind="primary" size="glove" isPending={isPending}>Cut it down</Button></div>
    </FieldForm>
  );
}
