"use client";

import { useEffect, useState } from "react";
import { uuidv7From } from "#lib/kernel/ids.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { SelectField, type Choice } from "#app/_ui/field/select-field.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { Notice } from "#app/_ui/message/notice.tsx";
import { PanelMarks } from "./panel-marks.tsx";
import { lockCountAction } from "./actions.ts";

type Props = {
  readonly projectId: string; readonly places: readonly Choice[]; readonly items: readonly { readonly id: string; readonly name: string }[];
  /** By label, with the place the ledger has each at. */
  readonly panels: readonly { readonly itemId: string; readonly name: string; readonly placeId: string | null }[];
};
type Draft = Readonly<Record<string, number>>;
const STORE = "shutterwright count ";

function kept(key: string): Draft {
  try {
    const draft: unknown = JSON.parse(localStorage.getItem(STORE + key) ?? "{}");
    return typeof draft === "object" && draft !== null ? (draft as Draft) : {};
  } catch {
    return {};
  }
}

/** What the ledger says is not shown: a count that knows the answer is no count. Figures stay on this phone until they are locked. */
export function CountForm({ projectId, places, items, panels }: Props) {
  const [placeId, setPlaceId] = useState(places[0]?.value ?? "");
  const [draft, setDraft] = useState<Draft>({});
  const key = `${projectId} ${placeId}`;
  useEffect(() => setDraft(kept(key)), [key]);
  const enter = (itemId: string, counted: number) => {
    const next = Object.fromEntries([...Object.entries(draft).filter(([id]) => id !== itemId), ...(Number.isFinite(counted) ? [[itemId, counted] as const] : [])]);
    setDraft(next);
    localStorage.setItem(STORE + key, JSON.stringify(next));
  };
  const { submit, value, failure, isPending } = useAnswer(async () => {
    const lines = [...items.map(({ id }) => id), ...panels.map(({ itemId }) => itemId)].flatMap((id) => { const counted = draft[id]; return counted === undefined ? [] : [{ itemId: id, counted }]; });
    const answer = await lockCountAction({ projectId, countId: uuidv7From(Date.now(), crypto.getRandomValues(new Uint8Array(10))), placeId, lines });
    if (answer.ok) {
      localStorage.removeItem(STORE + key);
      setDraft({});
    }
    return answer;
  });
  return (
    <div className="no-print">
      <FieldForm action={submit} {...(failure ? { failure } : {})}>
        <SelectField name="place" label="Place" choices={places} value={placeId} onChange={setPlaceId} size="glove" isFilter />
        <div className="grid grid-cols-2 gap-3 lg:grid-cols-4">
          {items.map(({ id, name }) => <NumberField key={`${placeId} ${id}`} name={id} label={name} value={draft[id] ?? Number.NaN} onChange={(counted) => enter(id, counted)} minValue={0} places={0} size="glove" isFilter />)}
        </div>
        {panels.length > 0 ? <PanelMarks key={placeId} panels={panels} placeId={placeId} draft={draft} onMark={enter} /> : null}
        <p className="text-sm text-ink-soft">What stays empty was not counted. Enter 0 where none lies there.</p>
        <Button type="submit" kind="primary" size="glove" isPending={isPending} isDisabled={Object.keys(draft).length === 0}>Lock this count</Button>
        {value && !isPending ? <Notice kind="done" title={value.differences === 0 ? "Locked: count and ledger agree." : `Locked: ${value.differences} ${value.differences === 1 ? "item differs" : "items differ"}, see below.`} /> : null}
      </FieldForm>
    </div>
  );
}
