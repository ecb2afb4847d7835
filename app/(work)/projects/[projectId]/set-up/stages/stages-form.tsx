"use client";

import { CheckField } from "#app/_ui/field/check-field.tsx";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { choiceOf, isTicked, numberOf } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { Section } from "#app/_ui/page/section.tsx";
import { changeProjectAction } from "../_parts/actions.ts";
import type { SetUp } from "../_parts/set-up-page.tsx";

export type StagesFormProps = Pick<SetUp, "project" | "progressRule"> & { readonly canEdit: boolean };

const PLUMBING = [
  { value: "before-pour", label: "Before the pour", note: "plumbed, then poured" },
  { value: "during-pour", label: "During the pour", note: "props set, plumbed as the concrete goes in" },
] as const;
const GATES = [
  { gate: "set-out checked", hint: "Asked before a column is stood" },
  { gate: "cage released", hint: "Asked before a column is stood round it" },
  { gate: "pre-pour released", hint: "Asked before a column is poured" },
  { gate: "strip released", hint: "Asked before a column is stripped" },
] as const;

const readRule = (data: FormData) => ({
  plumbing: choiceOf(data, "progressRule.plumbing", ["during-pour", "before-pour"]),
  stripAfterHours: numberOf(data, "progressRule.stripAfterHours"),
  gates: {
    "set-out checked": isTicked(data, "set-out checked"), "cage released": isTicked(data, "cage released"),
    "pre-pour released": isTicked(data, "pre-pour released"), "strip released": isTicked(data, "strip released"),
  },
});

export function StagesForm({ project, progressRule, canEdit }: StagesFormProps) {
  const { name, site, timeZone, units, currency, workingDays, startsOn } = project;
  const answered = useAnswer((data) => changeProjectAction({
    projectId: project.id, version: project.version, name, site, timeZone, units, currency, workingDays, startsOn, progressRule: readRule(data),
  }));
  return (
    <SaveForm answered={answered} label="Save" done="Saved." canEdit={canEdit} className="flex flex-col gap-6">
      <ChoiceGroup name="progressRule.plumbing" label="Columns are plumbed" choices={PLUMBING} defaultValue={progressRule.plumbing} hint="A last reading after the pour is asked for either way." />
      <div className="max-w-xs">
        <NumberField name="progressRule.stripAfterHours" label="Strip not before" unit="h" hint="Hours after the pour" defaultValue={progressRule.stripAfterHours} minValue={1} maxValue={240} isRequired />
      </div>
      <Section title="Gates of this project">
        <p className="mb-2 max-w-prose">
          A gate is somebody&rsquo;s say-so. Where one is asked for, going past it needs a reason, and the owner sees it.
        </p>
        {GATES.map(({ gate, hint }) => (
          <CheckField key={gate} name={gate} label={`${gate.charAt(0).toUpperCase()}${gate.slice(1)}`} hint={hint} defaultSelected={progressRule.gates[gate]} />
        ))}
      </Section>
    </SaveForm>
  );
}
