"use client";

import { useEffect, useState } from "react";
import { ChoiceGroup } from "#app/_ui/field/choice-group.tsx";
import { SuggestField } from "#app/_ui/field/suggest-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { WorkingDaysField } from "./working-days-field.tsx";

export type ProjectBasics = {
  readonly name: string; readonly site: string; readonly timeZone: string; readonly units: "metric" | "us";
  readonly currency: string; readonly workingDays: readonly number[]; readonly startsOn: string | null;
};

const UNITS = [
  { value: "metric", label: "Metric", note: "mm, kN, kPa, °C, m/h" },
  { value: "us", label: "US customary", note: "ft-in, lb, psf, °F, ft/h" },
] as const;

/** What a project is called, where it is, and how its figures are read. */
export function ProjectFields({ basics }: { readonly basics?: ProjectBasics }) {
  const [timeZone, setTimeZone] = useState(basics?.timeZone ?? "");
  // Server and browser know different lists, so these wait for the browser's own.
  const [known, setKnown] = useState<{ readonly zones: string[]; readonly currencies: string[] }>({ zones: [], currencies: [] });
  useEffect(() => {
    setKnown({ zones: Intl.supportedValuesOf("timeZone"), currencies: Intl.supportedValuesOf("currency") });
    setTimeZone((given) => given || Intl.DateTimeFormat().resolvedOptions().timeZone);
  }, []);
  return (
    <>
      <div className="grid gap-5 sm:grid-cols-2">
        <TextField name="name" label="Name" defaultValue={basics?.name ?? ""} maxLength={120} isRequired />
        <TextField name="site" label="Site" hint="Street and place, as on the dockets" defaultValue={basics?.site ?? ""} maxLength={200} isRequired />
        <SuggestField name="timeZone" label="Time zone of the site" hint="Region/City, as Pacific/Auckland; type to search" suggestions={known.zones} value={timeZone} onChange={setTimeZone} isRequired />
        <SuggestField name="currency" label="Currency" hint="Three letters of ISO 4217, as AUD" suggestions={known.currencies} defaultValue={basics?.currency ?? ""} isRequired />
      </div>
      <ChoiceGroup name="units" label="Units" choices={UNITS} defaultValue={basics?.units ?? "metric"} hint="Changes only how figures are entered and shown; it may be changed later." />
      <WorkingDaysField days={basics?.workingDays ?? [1, 2, 3, 4, 5]} />
      <div className="max-w-xs">
        <TextField name="startsOn" label="First day on site" type="date" defaultValue={basics?.startsOn ?? ""} />
      </div>
    </>
  );
}
