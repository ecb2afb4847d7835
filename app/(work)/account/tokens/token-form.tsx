"use client";

import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { numberOf, textOf } from "#app/_ui/form/read-form.ts";
import { ShownOnce } from "#app/_ui/message/shown-once.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { createTokenAction } from "../actions.ts";

const TERMS = [
  { value: "30", label: "30 days" },
  { value: "90", label: "90 days" },
  { value: "365", label: "A year" },
] as const;

export function TokenForm() {
  const answered = useAnswer(async (data) => {
    const name = textOf(data, "name");
    const created = await createTokenAction({ name, days: numberOf(data, "days") });
    return created.ok ? { ok: true, value: { token: created.value.token, name } } : created;
  });
  return (
    <div className="flex flex-col gap-5">
      <SaveForm answered={answered} label="Make a token" done="The token is below.">
        <div className="max-w-lg"><TextField name="name" label="Name of the token" hint="Where it will be used: Pressure spreadsheet" maxLength={60} autoComplete="off" isRequired /></div>
        <ChoiceGroup name="days" label="Runs out after" choices={TERMS} defaultValue="90" />
      </SaveForm>
      {answered.value ? (
        <ShownOnce
          key={answered.value.token} title={`Copy the token ${answered.value.name}. It is shown only now.`} label="The token" text={answered.value.token} copyLabel="Copy the token"
          note="Whoever holds it acts as you, so keep it where you would keep a password."
        />
      ) : null}
    </div>
  );
}
