"use client";

import type { ReturnSettings } from "#lib/contracts/hire/returns.ts";
import { amountFigure } from "#lib/kernel/money.ts";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { orderPlanAction } from "./actions.ts";

export type ShownYard = { readonly supplierId: string; readonly supplier: string; readonly pieces: number; readonly hasTerms: boolean };
export type PlanSettingsProps = {
  readonly projectId: string; readonly currency: string; readonly settings: ReturnSettings; readonly label: string; readonly yards: readonly ShownYard[];
  readonly items: readonly { readonly id: string; readonly name: string; readonly kg: number | null }[];
};
const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** What a plan goes by, as it was set for the last one. */
export function PlanSettings({ projectId, currency, settings, yards, items, label }: PlanSettingsProps) {
  const answered = useAnswer(orderPlanAction);
  return (
    <SaveForm answered={answered} label={label} done="The plan is being computed.">
      <input type="hidden" name="projectId" value={projectId} />
      <input type="hidden" name="currency" value={currency} />
      {settings.suppliers.map((truck) => {
        const yard = yards.find(({ supplierId }) => supplierId === truck.supplierId);
        return yard ? <YardFields key={yard.supplierId} yard={yard} truck={truck} currency={currency} /> : null;
      })}
      <div className="grid gap-4 sm:grid-cols-2 lg:grid-cols-4">
        <TextField name="handling" label={`Handling of a piece, each way (${currency})`} defaultValue={amountFigure(settings.handling, currency)} isRequired />
        <NumberField name="lossPercentMonth" label="Lost in a month on site" unit="%" defaultValue={settings.lossPercentMonth} isRequired places={2} />
        <NumberField name="floatPercent" label="Float over what columns need" unit="%" defaultValue={settings.floatPercent} isRequired places={1} />
        <NumberField name="cleaningDays" label="Cleaning after stripping" unit="days" defaultValue={settings.cleaningDays} isRequired places={0} />
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
                <NumberField name={`kg-${id}`} label={name} unit="kg" {...(kg === null ? { hint: "Not known yet: trucks are filled by it." } : { defaultValue: kg })} isRequired places={0} />
              </div>
            ))}
          </div>
        </fieldset>
      ) : null}
    </SaveForm>
  );
}

type YardFieldsProps = { readonly yard: ShownYard; readonly truck: ReturnSettings["suppliers"][number]; readonly currency: string };

function YardFields({ yard: { supplierId, supplier, pieces, hasTerms }, truck, currency }: YardFieldsProps) {
  return (
    <fieldset className="border-2 border-edge px-3 pb-3">
      <legend className="px-1 font-semibold">{supplier} <span className="font-normal text-ink-soft">{pieces.toLocaleString("en")} {pieces === 1 ? "piece" : "pieces"} on hire{hasTerms ? "" : ", no terms entered"}</span></legend>
      <input type="hidden" name="supplier" value={supplierId} />
      <CheckField name={`in-${supplierId}`} label="In this plan" defaultSelected={truck.isIn} isDisabled={!hasTerms} />
      <div className="grid gap-4 sm:grid-cols-2 lg:grid-cols-4">
        <TextField name={`tripCost-${supplierId}`} label={`A trip costs (${currency})`} defaultValue={amountFigure(truck.tripCost, currency)} isRequired hint="One trip brings and takes." />
        <NumberField name={`truckKg-${supplierId}`} label="A truck carries" unit="kg" defaultValue={truck.truckKg} isRequired places={0} />
        <NumberField name={`leadDays-${supplierId}`} label="From ordering more to having it" unit="days" defaultValue={truck.leadDays} isRequired places={0} />
      </div>
    </fieldset>
  );
}
