"use client";

import { useEffect, useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";
import { NumberField } from "#app/_ui/field/number-field.tsx";
import { SelectField, type Choice } from "#app/_ui/field/select-field.tsx";
import { useAnswer } from "#app/_ui/form/use-answer.ts";
import { Notice } from "#app/_ui/message/notice.tsx";
import { PanelMarks } from "./panel-marks.tsx";
import { lockCountAction } from "./actions.ts";
import { askedOnce, dropCount, findCount, keepCount, NOTHING_COUNTED, type KeptCount } from "./kept-count.ts";

type Props = {
  readonly projectId: string; readonly places: readonly Choice[]; readonly items: readonly { readonly id: string; readonly name: string }[];
  /** By label, with the place the ledger has each at. */
  readonly panels: readonly { readonly itemId: string; readonly name: string; readonly placeId: string | null }[];
};
/** What the ledger says is not shown: a count that knows the answer is no count. Figures stay on this phone until they are locked. */
export function CountForm({ projectId, places, items, panels }: Props) {
  const [placeId, setPlaceId] = useState(places[0]?.value ?? "");
  const [count, setCount] = useState(NOTHING_COUNTED);
  const draft = count.lines;
  const key = `${projectId} ${placeId}`;
  useEffect(() => setCount(findCount(key)), [key]);
  const keep = (next: KeptCount) => {
    setCount(next);
    keepCount(key, next);
  };
  const enter = (itemId: string, counted: number) => {
    const others = Object.entries(draft).filter(([id]) => id !== itemId);
    keep({ ...count, lines: Object.fromEntries(Number.isFinite(counted) ? [...others, [itemId, counted] as const] : others) });
  };
  const { submit, value, failure, isPending } = useAnswer(async () => {
    const lines = [...items.map(({ id }) => id), ...panels.map(({ itemId }) => itemId)].flatMap((id) => { const counted = draft[id]; return counted === undefined ? [] : [{ itemId: id, counted }]; });
    const asked = askedOnce(count, lines, Date.now(), crypto.getRandomValues(new Uint8Array(10)));
    keep({ ...count, asked });
    const answer = await lockCountAction({ projectId, countId: asked.countId, placeId, lines });
    if (answer.ok) {
      dropCount(key);
      setCount(NOTHING_COUNTED);
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
        <p className="text-sm text-ink-soft">What stays empty was not counted. Enter 0 where none lies there. Figures stay on this phone until they are locked, which needs reception.</p>
        <Button type="submit" kind="primary" size="glove" isPending={isPending} isDisabled={Object.keys(draft).length === 0}>Lock this count</Button>
        {value && !isPending ? <Notice kind="done" title={value.differences === 0 ? "Locked: count and ledger agree." : `Locked: ${value.differences} ${value.differences === 1 ? "item differs" : "items differ"}, see below.`} /> : null}
      </FieldForm>
    </div>
  );
}
