"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import type { TermsVersion } from "#lib/contracts/hire/terms.ts";
import { amountFigure } from "#lib/kernel/money.ts";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { textOf } from "#app/_ui/form/read-form.ts";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { Section } from "#app/_ui/page/section.tsx";
import { useRows } from "#app/_ui/table/use-rows.ts";
import { paths } from "#app/paths.ts";
import { addTermsAction } from "../../_parts/actions.ts";
import { LADDER_WORDS, START_WORDS, STOP_WORDS } from "../../_parts/terms-words.ts";
import { RatesTable } from "./rates-table.tsx";
import { percentOf, ratesOf, ruleOf, toRateRow } from "./terms-entry.ts";

export type TermsFormProps = {
  readonly project: { readonly id: string; readonly currency: string }; readonly supplierId: string; readonly today: string;
  readonly items: readonly { readonly id: string; readonly name: string }[]; readonly latest: TermsVersion | null;
};
const GRID = "grid items-start gap-x-5 gap-y-4 sm:grid-cols-2 lg:grid-cols-4";
const WEEKDAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];
const choices = <Key extends string>(words: Readonly<Record<Key, string>>) => (Object.entries(words) as [Key, string][]).map(([value, label]) => ({ value, label: label.charAt(0).toUpperCase() + label.slice(1) }));

export function TermsForm({ project: { id: projectId, currency }, supplierId, today, items, latest }: TermsFormProps) {
  const router = useRouter();
  const [stop, setStop] = useState<string>(latest?.stop.by ?? "collection");
  const [ladder, setLadder] = useState<string>(latest?.ladder.kind ?? "day-and-week");
  const { rows, change } = useRows(items, (item) => toRateRow(item, latest?.rates ?? [], currency));
  const answered = useAnswer(async (data) => {
    const added = await addTermsAction({ projectId, supplierId, validFrom: textOf(data, "validFrom"), currency: textOf(data, "currency"), rule: ruleOf(data, currency), rates: ratesOf(rows, currency) });
    if (added.ok) router.push(paths.hirePart(projectId, "terms"));
    return added;
  });
  const money = (name: "deliveryCharge" | "collectionCharge" | "failedCollectionCharge" | "docketMinimum", label: string, hint?: string) => (
    <TextField name={name} label={`${label} (${currency})`} inputMode="decimal" defaultValue={latest && latest[name] > 0 ? amountFigure(latest[name], currency) : ""} {...(hint ? { hint } : {})} />
  );
  const rungs = latest?.ladder;
  return (
    <SaveForm answered={answered} label="Put the terms in force" done="Entered.">
      <div className={GRID}>
        <TextField name="validFrom" label="In force from" type="date" isRequired defaultValue={latest ? "" : today} {...(latest ? { hint: `after ${latest.validFrom}` } : {})} />
        <TextField name="currency" label="Currency" isRequired maxLength={3} defaultValue={currency} />
      </div>
      <Section title="First and last day">
        <div className={GRID}>
          <SelectField isFilter name="start" label="First day" choices={choices(START_WORDS)} defaultValue={latest?.start ?? "day-delivered"} />
          <SelectField isFilter name="stop" label="Hire ends with" choices={choices(STOP_WORDS)} value={stop} onChange={setStop} />
          {stop === "notice" ? <NumberField name="noticeDays" label="Days of notice" minValue={0} maxValue={60} places={0} defaultValue={latest?.stop.noticeDays ?? 7} isRequired /> : null}
          {stop === "notice" ? <SelectField isFilter name="noticeCount" label="Counted in" choices={[{ value: "working", label: "Working days" }, { value: "calendar", label: "Days of the calendar" }]} defaultValue={latest?.stop.noticeCount ?? "working"} /> : null}
          <CheckField name="isLastDayCharged" label="The last day is charged in full" defaultSelected={latest?.stop.isLastDayCharged ?? true} />
        </div>
      </Section>
      <Section title="Days and rates">
        <div className={GRID}>
          <SelectField isFilter name="ladder" label="Rate ladder" choices={choices(LADDER_WORDS)} value={ladder} onChange={setLadder} />
          {ladder === "week-ladder" ? <TextField name="steps" label="Steps of the first week (%)" hint="after 1, 2, 3 … days, as 40, 60, 75, 100" isRequired defaultValue={rungs?.kind === "week-ladder" ? rungs.steps.map((step) => step / 100).join(", ") : ""} /> : null}
          {ladder === "week-ladder" ? <NumberField name="laterDay" label="Each day after it" unit="%" isRequired minValue={0} maxValue={100} places={2} {...(rungs?.kind === "week-ladder" ? { defaultValue: rungs.laterDay / 100 } : {})} /> : null}
          {ladder === "month" ? <NumberField name="monthDays" label="Days of a month" hint="empty: those of the month itself" minValue={1} maxValue={31} places={0} {...(rungs?.kind === "month" && rungs.monthDays !== null ? { defaultValue: rungs.monthDays } : {})} /> : null}
          <SelectField isFilter name="charged" label="Charged days" choices={[{ value: "every-day", label: "Every day, weekends too" }, { value: "working-days", label: "Working days only" }]} defaultValue={latest?.charged ?? "every-day"} />
          <CheckField name="areHolidaysCharged" label="Holidays are charged" defaultSelected={latest?.areHolidaysCharged ?? true} />
          <TextField name="holidays" label="Supplier's holidays" hint="days as 2027-01-26, apart by commas" rows={2} defaultValue={latest?.holidays.join(", ") ?? ""} />
        </div>
        <fieldset className="mt-4">
          <legend className="font-semibold">Days the supplier works</legend>
          <div className="flex flex-wrap gap-x-5">{WEEKDAYS.map((name, index) => <CheckField key={name} name="weekday" value={String(index + 1)} label={name} defaultSelected={latest ? latest.workingWeekdays.includes(index + 1) : index < 5} />)}</div>
        </fieldset>
      </Section>
      <Section title="Beside the hire">
        <div className={GRID}>
          {money("deliveryCharge", "Delivery")}
          {money("collectionCharge", "Collection")}
          {money("failedCollectionCharge", "Failed collection")}
          {money("docketMinimum", "Least hire of a docket", "empty where there is none")}
          <NumberField name="missingShare" label="Missing gear stays on hire at" unit="%" hint="until settled; empty: hire ends with the report" minValue={0} maxValue={100} places={2} {...(percentOf(latest?.missingShare ?? null) === undefined ? {} : { defaultValue: percentOf(latest?.missingShare ?? null) })} />
          <NumberField name="standDownShare" label="Stand-down at" unit="%" hint="where agreed in writing; empty: none granted" minValue={0} maxValue={100} places={2} {...(percentOf(latest?.standDownShare ?? null) === undefined ? {} : { defaultValue: percentOf(latest?.standDownShare ?? null) })} />
        </div>
      </Section>
      <Section title="Rates and prices a piece" note={`in ${currency}; items without a rate are left out`}>
        <RatesTable rows={rows} failure={answered.failure} onChange={change} />
      </Section>
    </SaveForm>
  );
}
