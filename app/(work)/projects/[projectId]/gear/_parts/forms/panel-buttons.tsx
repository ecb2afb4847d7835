"use client";

import { useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { LengthField } from "#app/_ui/field/length-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { SelectField, type Choice } from "#app/_ui/field/select-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { numberOf, numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { makePanelsAction, saveFormSetAction } from "../actions.ts";
import { moneyPlaces, toMinor } from "../money.ts";

type Free = { readonly itemId: string; readonly name: string; readonly widthMm: number; readonly heightMm: number };
type Props = { readonly projectId: string; readonly racks: readonly Choice[]; readonly free: readonly Free[]; readonly units: Units; readonly currency: string };

/** New panels, and sets out of those that are in none. */
export function PanelButtons(props: Props) {
  const [open, setOpen] = useState<"panels" | "set" | null>(null);
  const close = () => setOpen(null);
  return (
    <div className="no-print flex flex-wrap gap-3">
      <Button size="glove" kind="primary" onPress={() => setOpen("panels")}>Make panels</Button>
      {props.free.length > 0 ? <Button size="glove" onPress={() => setOpen("set")}>Make a set</Button> : null}
      <Dialog title="Make panels" isOpen={open === "panels"} onOpenChange={(isOpen) => setOpen(isOpen ? "panels" : null)}><MakePanels {...props} onDone={close} /></Dialog>
      <Dialog title="Make a set" isOpen={open === "set"} onOpenChange={(isOpen) => setOpen(isOpen ? "set" : null)}><MakeSet {...props} onDone={close} /></Dialog>
    </div>
  );
}

function MakePanels({ projectId, racks, units, currency, onDone }: Props & { readonly onDone: () => void }) {
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const money = (name: string): number => toMinor(numberOrNull(data, name) ?? 0, currency);
    const answer = await makePanelsAction({
      projectId, happenedAt: new Date().toISOString(), placeId: textOf(data, "place"), count: numberOf(data, "count"), widthMm: numberOf(data, "width"), heightMm: numberOf(data, "height"),
      thicknessMm: numberOf(data, "thickness"), filmFaces: textOf(data, "faces") === "1" ? 1 : 2, sheetBatch: textOf(data, "batch"), sheetCost: money("sheet"), labourCost: money("labour"), sundryCost: money("sundry"),
    });
    if (answer.ok) onDone();
    return answer;
  });
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})}>
      <div className="grid items-start gap-4 sm:grid-cols-2">
        <NumberField name="count" label="How many alike" defaultValue={1} minValue={1} maxValue={100} places={0} isRequired />
        <SelectField name="place" label="They are at" choices={racks} defaultValue={racks[0]?.value ?? ""} isRequired />
        <LengthField name="width" label="Width of the ply" units={units} isRequired />
        <LengthField name="height" label="Height of the ply" units={units} isRequired />
        <LengthField name="thickness" label="Thickness, measured" units={units} isRequired />
        <SelectField name="faces" label="Film" choices={[{ value: "2", label: "On both faces" }, { value: "1", label: "On one face" }]} defaultValue="2" isRequired />
        <TextField name="batch" label="Batch of the sheets" maxLength={80} />
        <NumberField name="sheet" label="Sheet, for one" unit={currency} minValue={0} places={moneyPlaces(currency)} />
        <NumberField name="labour" label="Making, for one" unit={currency} minValue={0} places={moneyPlaces(currency)} />
        <NumberField name="sundry" label="Fillet and nails, for one" unit={currency} minValue={0} places={moneyPlaces(currency)} />
      </div>
      <div className="flex justify-end"><Button type="submit" kind="primary" size="glove" isPending={isPending}>Make them</Button></div>
    </FieldForm>
  );
}

const FACES = ["A", "B", "C", "D"] as const;

function MakeSet({ projectId, free, onDone }: Props & { readonly onDone: () => void }) {
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const panels = FACES.flatMap((face) => (textOf(data, face) === "" ? [] : [{ face, itemId: textOf(data, face) }]));
    const answer = await saveFormSetAction({ projectId, name: textOf(data, "name"), panels });
    if (answer.ok) onDone();
    return answer;
  });
  const choices = free.map(({ itemId, name, widthMm, heightMm }) => ({ value: itemId, label: name, note: `${Math.round(widthMm)} × ${Math.round(heightMm)} mm` }));
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})}>
      <TextField name="name" label="Name" hint="As painted on the back: S-7" maxLength={40} isRequired />
      <p className="text-ink-soft">A and C close the column&apos;s width, B and D its depth.</p>
      <div className="grid gap-4 sm:grid-cols-2">
        {FACES.map((face) => <SelectField key={face} name={face} label={`Face ${face}`} choices={choices} size="glove" isRequired />)}
      </div>
      <div className="flex justify-end"><Button type="submit" kind="primary" size="glove" isPending={isPending}>Make the set</Button></div>
    </FieldForm>
  );
}
