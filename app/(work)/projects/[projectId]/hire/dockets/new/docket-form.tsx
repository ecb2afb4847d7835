"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import { readAmount } from "#lib/kernel/money.ts";
import type { DocketKind } from "#lib/contracts/hire/dockets.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { TextField } from "#app/_ui/field/text-field.tsx";
import { isTicked, numberOf, textOf } from "#app/_ui/form/read-form.ts";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { paths } from "#app/paths.ts";
import { writeDocketAction } from "../../_parts/actions.ts";
import { PhotoPicker } from "../photo-picker.tsx";
import { sendPhotos } from "../send-photos.ts";
import { ASKED, countedLines, NO_COUNT, type Counts } from "./docket-fields.ts";
import { ItemCounts } from "./item-counts.tsx";
import type { Draft } from "./kept-draft.ts";
import type { OfferedItem } from "./offered.ts";
import { useKeptEntry } from "./use-kept-entry.ts";

export type DocketFormProps = {
  readonly kind: DocketKind; readonly today: string; readonly now: string; readonly supplier: { readonly id: string; readonly name: string };
  readonly project: { readonly id: string; readonly timeZone: string; readonly currency: string };
  readonly items: readonly OfferedItem[]; readonly answersId: string | null;
  readonly answerable: readonly { readonly id: string; readonly number: string; readonly on: string }[];
  /** Under which the entry is kept on the phone while it is filled in; null: not yet. */
  readonly draftKey: string | null;
  readonly draft: Draft | null;
};

/** One form for every paper of the chain; at the gate its targets suit a gloved thumb. */
export function DocketForm({ kind, today, now, supplier, project, items, answersId, answerable, draftKey, draft }: DocketFormProps) {
  const router = useRouter();
  const asked = ASKED[kind];
  const [counts, setCounts] = useState<Counts>(draft?.counts ?? {});
  const [photos, setPhotos] = useState<readonly File[]>(draft?.photos ?? []);
  const { box, note, sent, isKept } = useKeptEntry(draftKey, counts, photos);
  const filled = (name: string, otherwise: string): string => draft?.fields[name] ?? otherwise;
  const answered = useAnswer(async (data) => {
    const written = await writeDocketAction({ timeZone: project.timeZone, time: textOf(data, "time"), given: givenBy(data, kind, countedLines(counts), project, supplier.id) });
    if (written.ok) {
      sent();
      await sendPhotos(project.id, written.value.docketId, photos);
      router.push(paths.hireDocket(project.id, written.value.docketId));
    }
    return written;
  });
  const size = "glove" as const;
  return (
    <div ref={box} onInput={note}>
      <FieldForm action={answered.submit} {...(answered.failure ? { failure: answered.failure } : {})} className="flex flex-col gap-5">
        <p className="lettering">{supplier.name}</p>
        <div className="grid items-start gap-4 sm:grid-cols-2 lg:grid-cols-4">
          <TextField name="number" label={asked.number} {...(asked.numberHint ? { hint: asked.numberHint } : {})} defaultValue={filled("number", "")} isRequired maxLength={40} size={size} />
          <TextField name="on" label={kind === "stand-down" ? "First day" : "Day"} type="date" isRequired defaultValue={filled("on", today)} size={size} />
          <TextField name="time" label="Time" type="time" isRequired defaultValue={filled("time", now)} size={size} />
          {asked.until ? <TextField name="until" label="Last day" type="date" isRequired defaultValue={filled("until", today)} size={size} /> : null}
          {asked.name ? <TextField name="name" label={asked.name} defaultValue={filled("name", "")} isRequired={asked.isNameRequired ?? false} maxLength={80} size={size} /> : null}
          {asked.answers ? (
            <SelectField
              name="answers" label={asked.answers} size={size} defaultValue={filled("answers", answersId ?? "")} isRequired={kind === "yard-count" || kind === "settlement"}
              choices={[{ value: "", label: "none" }, ...answerable.map(({ id, number, on }) => ({ value: id, label: number, note: on }))]}
            />
          ) : null}
          {asked.dispatched ? <TextField name="dispatchedOn" label="Left the depot on" type="date" defaultValue={filled("dispatchedOn", "")} hint="where the terms charge from there" size={size} /> : null}
          {kind === "stand-down" ? <NumberField name="percent" label="Charged at" unit="%" isRequired minValue={0} maxValue={100} places={2} {...(draft?.fields["percent"] ? { defaultValue: Number(draft.fields["percent"]) } : {})} size={size} /> : null}
          {kind === "stand-down" ? <SelectField name="itemId" label="Item" defaultValue={filled("itemId", "")} choices={[{ value: "", label: "everything on hire" }, ...items.map(({ id, name }) => ({ value: id, label: name }))]} size={size} /> : null}
          {asked.amount ? <TextField name="amount" label={`Amount (${project.currency})`} inputMode="decimal" defaultValue={filled("amount", "")} isRequired size={size} /> : null}
        </div>
        {asked.counts ? (
          <ItemCounts items={items} counts={counts} word={asked.countWord ?? "Pieces"} hasShort={asked.short ?? false} hasCondition={asked.condition ?? false}
            onChange={(id, part) => setCounts((before) => ({ ...before, [id]: { ...NO_COUNT, ...before[id], ...part } }))} />
        ) : null}
        {asked.trip ? <CheckField name="bySupplier" label={asked.trip} defaultSelected={draft === null || draft.fields["bySupplier"] !== undefined} size={size} /> : null}
        {asked.photos ? <PhotoPicker photos={photos} onChange={setPhotos} /> : null}
        <TextField name="note" label="Note" rows={2} maxLength={500} defaultValue={filled("note", "")} />
        <div><Button type="submit" kind="primary" size={size} isPending={answered.isPending}>{asked.verb}</Button></div>
        {isKept ? <p role="status" className="text-sm text-ink-soft">Kept on this phone until it is sent, photos too. Without reception leave it here and send it later.</p> : null}
      </FieldForm>
    </div>
  );
}

function givenBy(data: FormData, kind: DocketKind, lines: ReturnType<typeof countedLines>, project: DocketFormProps["project"], supplierId: string): Record<string, unknown> {
  const answers = textOf(data, "answers") || null;
  const dispatchedOn = textOf(data, "dispatchedOn") || null;
  const head = { projectId: project.id, supplierId, kind, number: textOf(data, "number"), on: textOf(data, "on"), name: textOf(data, "name"), note: textOf(data, "note") };
  const plain = lines.map(({ itemId, quantity }) => ({ itemId, quantity }));
  switch (kind) {
    case "delivery": return { ...head, orderId: answers, dispatchedOn, bySupplier: isTicked(data, "bySupplier"), lines };
    case "return": return { ...head, callId: answers, bySupplier: isTicked(data, "bySupplier"), lines };
    case "yard-count": return { ...head, answersId: answers ?? "", lines };
    case "settlement": return { ...head, answersId: answers ?? "" };
    case "stand-down": return { ...head, until: textOf(data, "until"), share: Math.round(numberOf(data, "percent") * 100), itemId: textOf(data, "itemId") || null };
    case "credit": return { ...head, answersId: answers, amount: readAmount(textOf(data, "amount"), project.currency) ?? Number.NaN };
    case "failed-collection": return head;
    default: return { ...head, lines: plain };
  }
}
