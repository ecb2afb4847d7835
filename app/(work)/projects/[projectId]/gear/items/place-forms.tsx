"use client";

import { useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { choiceOf, textOf } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { savePlaceAction } from "../_parts/actions.ts";
import { PLACE_WORDS } from "../_parts/item-words.ts";

const KINDS = ["truck", "rack", "cleaning bay", "yard"] as const;

export function AddPlace({ projectId }: { readonly projectId: string }) {
  const answered = useAnswer((data) => savePlaceAction({ projectId, kind: choiceOf(data, "kind", KINDS), name: textOf(data, "name") }));
  return (
    <div className="border-2 border-ink bg-sheet p-4">
      <h3 className="mb-3 font-semibold">Add a place</h3>
      <SaveForm answered={answered} label="Add the place" done="Added." className="grid items-start gap-4 sm:grid-cols-2 lg:grid-cols-4">
        <SelectField name="kind" label="What it is" choices={KINDS.map((value) => ({ value, label: PLACE_WORDS[value] }))} defaultValue="truck" size="glove" isRequired />
        <TextField name="name" label="Name" hint="Of several bays, what is stripped goes to the first by name" maxLength={60} size="glove" isRequired />
      </SaveForm>
    </div>
  );
}

type Place = { readonly id: string; readonly name: string; readonly kind: (typeof KINDS)[number] };
export function RenamePlace({ projectId, place }: { readonly projectId: string; readonly place: Place }) {
  const [isOpen, setOpen] = useState(false);
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const answer = await savePlaceAction({ projectId, placeId: place.id, kind: place.kind, name: textOf(data, "name") });
    if (answer.ok) setOpen(false);
    return answer;
  });
  return (
    <Dialog title={`Rename ${place.name}`} isOpen={isOpen} onOpenChange={setOpen} trigger={<Button>Rename</Button>}>
      <FieldForm action={submit} {...(failure ? { failure } : {})}>
        <TextField name="name" label="Name" defaultValue={place.name} maxLength={60} isRequired />
        <div className="flex justify-end"><Button type="submit" kind="primary" isPending={isPending}>Rename it</Button></div>
      </FieldForm>
    </Dialog>
  );
}
