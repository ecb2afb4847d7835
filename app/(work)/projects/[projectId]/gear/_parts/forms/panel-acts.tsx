"use client";

import { useState } from "react";
import type { RestDoubt, RestRule } from "#lib/trade/gear/panel-rests.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { Dialog } from "#app/_ui/control/dialog.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { SuggestField } from "#app/_ui/field/suggest-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { numberOrNull, textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { recordPanelEventAction, withdrawPanelEventAction } from "../actions.ts";
import { moneyPlaces, toMinor } from "../money.ts";
import { CutDownForm } from "./cut-down-form.tsx";

type Panel = { readonly itemId: string; readonly name: string; readonly widthMm: number; readonly heightMm: number; readonly restDoubt: RestDoubt | null; readonly isDamaged: boolean; readonly mayTurn: boolean; readonly isDemoted: boolean };
type Props = { readonly projectId: string; readonly panel: Panel; readonly saw: RestRule; readonly units: Units; readonly currency: string };
type Act = "damaged" | "repaired" | "turned" | "demoted" | "scrapped";

const ACTS: Readonly<Record<Act, { readonly label: string; readonly title: string; readonly amount: string | null; readonly reasons: readonly string[] }>> = {
  damaged: { label: "Damaged", title: "Put aside until it is repaired", amount: null, reasons: ["Corner broken out", "Hole in the face", "Film torn", "Edge split", "Backing timber loose"] },
  repaired: { label: "Repaired", title: "What was repaired", amount: "What it cost", reasons: ["Hole plugged and filled", "Edge cut back and sealed", "Film patched"] },
  turned: { label: "Turned", title: "Turned to its other face", amount: null, reasons: [] },
  demoted: { label: "Demote", title: "Only for hidden faces from now on", amount: null, reasons: ["Film worn", "Edges swollen", "Patched too often"] },
  scrapped: { label: "Scrap", title: "Out of use for good", amount: "What it still brought", reasons: ["Delaminated", "Film worn", "Swollen edges", "Split", "Size no longer needed", "Blown out"] },
};

/** What can befall a panel; each entry stays on record, a mistake is withdrawn. */
export function PanelActs(props: Props) {
  const { panel } = props;
  const [open, setOpen] = useState<Act | "cut down" | null>(null);
  const close = () => setOpen(null);
  const acts: readonly Act[] = [...(panel.isDamaged ? [] : (["damaged"] as const)), "repaired", ...(panel.mayTurn ? (["turned"] as const) : []), ...(panel.isDemoted ? [] : (["demoted"] as const)), "scrapped"];
  return (
    <div className="no-print flex flex-wrap gap-3">
      {acts.map((act) => <Button key={act} size="glove" kind={act === "scrapped" ? "danger" : "plain"} onPress={() => setOpen(act)}>{ACTS[act].label}</Button>)}
      <Button size="glove" onPress={() => setOpen("cut down")}>Cut down</Button>
      <Dialog title={open === null || open === "cut down" ? `Cut ${panel.name} down` : `${panel.name}: ${ACTS[open].title.toLowerCase()}`} isOpen={open !== null} onOpenChange={(isOpen) => { if (!isOpen) close(); }}>
        {open === null ? null : open === "cut down" ? <CutDownForm {...props} onDone={close} /> : <ActForm {...props} act={open} onDone={close} />}
      </Dialog>
    </div>
  );
}

function ActForm({ projectId, panel, currency, act, onDone }: Props & { readonly act: Act; readonly onDone: () => void }) {
  const { amount: amountLabel, reasons, label } = ACTS[act];
  const { submit, failure, isPending } = useAnswer(async (data) => {
    const told = { projectId, itemId: panel.itemId, happenedAt: new Date().toISOString(), reason: textOf(data, "reason") };
    const amount = toMinor(numberOrNull(data, "amount") ?? 0, currency);
    const answer = await recordPanelEventAction(act === "repaired" || act === "scrapped" ? { ...told, kind: act, amount } : { ...told, kind: act });
    if (answer.ok) onDone();
    return answer;
  });
  return (
    <FieldForm action={submit} {...(failure ? { failure } : {})}>
      <SuggestField name="reason" label={act === "repaired" ? "What was done" : "Why"} suggestions={reasons} size="glove" isRequired={act === "damaged" || act === "demoted" || act === "scrapped"} />
      {amountLabel ? <NumberField name="amount" label={amountLabel} unit={currency} minValue={0} places={moneyPlaces(currency)} size="glove" /> : null}
      <div className="flex justify-end"><Button type="submit" kind={act === "scrapped" ? "danger" : "primary"} size="glove" isPending={isPending}>{label}</Button></div>
    </FieldForm>
  );
}

export function WithdrawEntry({ projectId, eventId, what }: { readonly projectId: string; readonly eventId: string; readonly what: string }) {
  const { submit, failure, isPending } = useAnswer((data) => withdrawPanelEventAction({ projectId, eventId, reason: textOf(data, "reason") }));
  return (
    <div className="no-print">
      <Dialog title={`Withdraw: ${what}`} trigger={<Button>Withdraw</Button>}>
        <FieldForm action={submit} {...(failure ? { failure } : {})}>
          <TextField name="reason" label="Why" maxLength={200} isRequired />
          <div className="flex justify-end"><Button type="submit" kind="danger" isPending={isPending}>Withdraw it</Button></div>
        </FieldForm>
      </Dialog>
    </div>
  );
}
