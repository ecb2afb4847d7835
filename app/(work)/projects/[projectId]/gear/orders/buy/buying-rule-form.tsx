"use client";

import type { BuyingRule } from "#lib/contracts/planning/orders.ts";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { SaveForm } from "#app/_ui/form/save-form.tsx";
import { numberOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { saveBuyingRuleAction } from "../_parts/actions.ts";

type Props = { readonly projectId: string; readonly rule: BuyingRule & { readonly isOwn: boolean }; readonly canEdit: boolean };

export function BuyingRuleForm({ projectId, rule, canEdit }: Props) {
  const answered = useAnswer((data) => saveBuyingRuleAction({ projectId, leadDays: numberOf(data, "leadDays"), makingDays: numberOf(data, "makingDays"), waste: Math.round(numberOf(data, "waste") * 100) }));
  return (
    <div className="flex flex-col gap-3">
      {rule.isOwn ? null : <p className="text-ink-soft">Usual figures to start from; put in your merchant’s and your own.</p>}
      <SaveForm answered={answered} label="Save" done="Saved; the days and counts above follow it." canEdit={canEdit} className="grid items-start gap-4 sm:grid-cols-3">
        <NumberField name="leadDays" label="Working days from order to delivery" defaultValue={rule.leadDays} minValue={0} maxValue={120} places={0} isRequired />
        <NumberField name="makingDays" label="Working days in the yard before it stands" hint="To cut and make it up" defaultValue={rule.makingDays} minValue={0} maxValue={60} places={0} isRequired />
        <NumberField name="waste" label="Over the plan" unit="%" hint="Sheets and lengths spoilt; rounded up once per size" defaultValue={rule.waste / 100} minValue={0} maxValue={100} places={2} isRequired />
      </SaveForm>
    </div>
  );
}
