"use client";

import type { ReturnSettings } from "#lib/contracts/hire/returns.ts";
import { amountFigure } from "#lib/kernel/money.ts";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { orderPlanAction } from "./actions.ts";

export type PlanSettingsProps = {
  readonly projectId: string; readonly supplierId: string; readonly currency: string; readonly settings: ReturnSettings; readonly label: string;
  readonly items: readonly { readonly id: string; readonly name: string; readonly kg: number }[];
};
const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** What a plan goes by, as it was set for the last one. */
export function PlanSettings({ projectId, supplierId, currency, settings, items, label }: PlanSettingsProps) {
  const answered = useAnswer(orderPlanAction);
  return (
    <SaveForm answered={answered} label={label} done="The plan is being computed.">
      <input type="hidden" name="projectId" value={projectId} />
      <input type="hidden" name="supplierId" value={supplierId} />
      <input type="hidden" name="currency" value={currency} />
      <div className="grid gap-4 sm:grid-cols-2 lg:grid-cols-4">
        <TextField name="tripCost" label={`A trip costs (${currency})`} defaultValue={amountFigure(settings.tripCost, currency)} isRequired hint="One trip brings and takes." />
        <NumberField name="truckKg" label="A truck carries" unit="kg" defaultValue={settings.truckKg} isRequired places={0} />
        <TextField name="handling" label={`Handling of a piece, each way (${currency})`} defaultValue={amountFigure(settings.handling, currency)} isRequired />
        <NumberField name="lossPercentMonth" label="Lost in a month on site" unit="%" defaultValue={settings.lossPercentMonth} isRequired places={2} />
        <NumberField name="floatPercent" label="Float over what columns need" unit="%" defaultValue={settings.floatPercent} isRequired places={1} />
        <NumberField name="cleaningDays" label="Cleaning after stripping" unit="days" defaultValue={settings.cleaningDays} isRequired places={0} />
        <NumberField name="leadDays" label="From ordering more to having it" unit="days" defaultValue={settings.leadDays} isRequired places={0} />
      </div>
      <fieldset>
        <legend className="mb-1 text-sm font-semibold">Days on which a truck may come</legend>
        <div className="flex flex-wrap gap-x-5">
          {DAYS.map((day, index) => <CheckField key={day} name="weekday" value={String(index + 1)} label={day} defaultSelected={settings.weekdays.includes(index + 1)} />)}
        </div>
      </fieldset>
      {items.length > 0 ? (
        <fieldset>
          <legend className="mb-1 text-sm font-semibold">Weight of a piece</legend>
          <div className="grid gap-4 sm:grid-cols-2 lg:grid-cols-4">
            {items.map(({ id, name, kg }) => (
              <div key={id}>
                <input type="hidden" name="item" value={id} />
                <NumberField name={`kg-${id}`} label={name} unit="kg" defaultValue={kg} isRequired places={0} />
              </div>
            ))}
          </div>
        </fieldset>
      ) : null}
    </SaveForm>
  );
}
